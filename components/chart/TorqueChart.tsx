import type { JSX } from 'preact';
import { ChartView } from './ChartView';
import { torqueChart, type TorqueChartModel } from './torqueModel';

interface Props {
  model: TorqueChartModel;
  source: { text: string; href?: string };
  refusal?: string;
  id?: string;
}

/** Torque and tooth load against chamfer length. */
export function TorqueChart({ model, ...rest }: Props): JSX.Element {
  return <ChartView chart={torqueChart(model)} {...rest} />;
}

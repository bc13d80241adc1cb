import type { JSX } from 'preact';
import { ChartView } from './ChartView';
import { depthChart, type DepthChartModel } from './depthModel';

interface Props {
  model: DepthChartModel;
  source: { text: string; href?: string };
  refusal?: string;
  id?: string;
}

/** Thread depth against hole depth. */
export function DepthChart({ model, ...rest }: Props): JSX.Element {
  return <ChartView chart={depthChart(model)} {...rest} />;
}

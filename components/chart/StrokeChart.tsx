import type { JSX } from 'preact';
import { ChartView } from './ChartView';
import { strokeChart, type StrokeChartModel } from './strokeModel';

interface Props {
  model: StrokeChartModel;
  source: { text: string; href?: string };
}

/** Torque along the stroke. */
export function StrokeChart({ model, source }: Props): JSX.Element {
  return <ChartView chart={strokeChart(model)} source={source} />;
}

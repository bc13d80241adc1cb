import type { ComponentChildren, ComponentProps } from 'preact';
import type { ChartView } from '../chart/ChartView';
import { useLate } from './useLate';

interface Props extends ComponentProps<typeof ChartView> {
  /** The chart is as it was drawn while the page was built, and stands in `children`. */
  still: boolean;
  children?: ComponentChildren;
}

const loadChart = () => import('../chart/ChartView').then(({ ChartView }) => ({ ChartView }));

/** The live chart of a lesson. What draws it is fetched at the first change, not with the page. */
export function LateChart({ still, children, ...chart }: Props) {
  const late = useLate(loadChart, !still);
  if (late && !still) return <late.ChartView {...chart} />;
  // Beside a number that is none, no old chart may stand, not even while the new one is on its way.
  return still || !chart.refusal ? <>{children}</> : null;
}

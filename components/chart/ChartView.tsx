import type { JSX } from 'preact';
import { nameOf, PictureView } from '../drawing/PictureView';
import { DataTable } from './DataTable';
import { FigureFrame } from './FigureFrame';
import { chartTable } from './table';
import type { Chart } from './types';
import { xyChart } from './xyChart';

interface Props {
  chart: Chart;
  source: { text: string; href?: string };
  refusal?: string | undefined;
  id?: string;
}

/**
 * A chart with all that belongs to it. It is drawn twice, for a phone and for a page, and the style
 * sheet shows the one that suits the figure's own width, so that words keep their size.
 */
export function ChartView({ chart, source, refusal, id }: Props): JSX.Element {
  const name = id ?? nameOf(chart.title + chart.subtitle);
  return (
    <FigureFrame
      title={chart.title}
      subtitle={chart.subtitle}
      bands={chart.bands}
      source={source}
      refusal={refusal}
    >
      <div class="fig-fit">
        <PictureView picture={xyChart(chart, 'narrow')} id={`${name}-n`} class="fig-narrow" />
        <PictureView picture={xyChart(chart, 'wide')} id={`${name}-w`} class="fig-wide" />
      </div>
      <DataTable table={chartTable(chart)} name={name} />
    </FigureFrame>
  );
}

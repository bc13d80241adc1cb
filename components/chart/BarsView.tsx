import type { JSX } from 'preact';
import { nameOf, PictureView } from '../drawing/PictureView';
import { say } from '../words/say';
import { barsPicture, type Bars } from './bars';
import { DataTable } from './DataTable';
import { FigureFrame } from './FigureFrame';
import type { Table } from './table';
import { CHART } from '../words/en/charts/shared';

interface Props {
  bars: Bars;
  source: { text: string; href?: string };
}

/** The numbers of the bars, in the order they are drawn. */
export function barsTable({ axis, rows, rowsAre }: Bars): Table {
  const { label: series, unit } = axis;
  const middle = rows.some(({ mid }) => mid !== undefined);
  return {
    head: [
      rowsAre,
      say(CHART.low, { series, unit }),
      ...(middle ? [say(CHART.mid, { series, unit })] : []),
      say(CHART.high, { series, unit }),
    ],
    rows: rows.map(({ label, low, mid, high }) => [
      label,
      axis.write(low),
      ...(middle ? [mid === undefined ? '' : axis.write(mid)] : []),
      axis.write(high),
    ]),
  };
}

/** Level bars with all that belongs to them, laid out for a phone and for a page. */
export function BarsView({ bars, source }: Props): JSX.Element {
  const name = nameOf(bars.title + bars.subtitle);
  return (
    <FigureFrame title={bars.title} subtitle={bars.subtitle} bands={bars.bands} source={source}>
      <div class="fig-fit">
        <PictureView picture={barsPicture(bars, 'narrow')} id={`${name}-n`} class="fig-narrow" />
        <PictureView picture={barsPicture(bars, 'wide')} id={`${name}-w`} class="fig-wide" />
      </div>
      <DataTable table={barsTable(bars)} name={name} />
    </FigureFrame>
  );
}

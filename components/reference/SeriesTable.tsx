/** A series in one table: each thread with its limits and drill, a line each. */

import { Scroll } from '../calculators/Scroll';
import { limitIn } from './limits';
import { TABLES } from '../words/en/reference';
import { fill } from '../words/template';
import { threadHref } from '../words/thread-address';
import type { Series } from './series';
import { rowsOf } from './table';
import type { TableRow } from './tableRow';

function pair(min: number | null, max: number | null, row: TableRow): string {
  if (min === null) return '–';
  return max === null
    ? limitIn(min, row.unit)
    : `${limitIn(min, row.unit)}–${limitIn(max, row.unit)}`;
}

/** Where a drill stands in the class, as a mark behind it: nothing when it is surely inside. */
const MARKS: Record<string, string> = { risk: ' †', outside: ' ‡' };

export function SeriesTable({ series }: { series: Series }) {
  const rows = rowsOf(series.threads);
  const unit = rows[0]?.unit ?? 'mm';
  const pipe = series.threads[0]?.system === 'pipe';
  const usual = rows.at(-1)?.class;
  const listed = rows.some((row) => row.listed !== '');
  return (
    <Scroll label={series.title}>
      <table class="facts">
        <thead>
          <tr>
            <th scope="col">{TABLES.thread}</th>
            <th scope="col">{fill(TABLES.hole, { unit }, unit)}</th>
            <th scope="col">{fill(TABLES.pitch, { unit }, unit)}</th>
            {pipe && <th scope="col">{TABLES.gauge}</th>}
            <th scope="col">{TABLES.drill}</th>
            {!pipe && <th scope="col">{TABLES.percent}</th>}
            {listed && <th scope="col">{TABLES.listed}</th>}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, index) => (
            <tr key={row.thread}>
              <th scope="row">
                <a href={threadHref(series.threads[index]!)}>{row.thread}</a>
                {row.class !== usual && ` ${row.class}`}
              </th>
              <td>{pair(row.minorMin, row.minorMax, row)}</td>
              <td>{pair(row.pitchMin, row.pitchMax, row)}</td>
              {pipe && <td>{row.gaugeLengthMm ?? '–'}</td>}
              <td>
                {row.drill || '–'}
                {MARKS[row.verdict]}
              </td>
              {!pipe && <td>{row.percentShop ?? '–'}</td>}
              {listed && (
                <td>
                  {row.listed || '–'}
                  {MARKS[row.listedVerdict]}
                </td>
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </Scroll>
  );
}

import type { JSX } from 'preact';
import { tableCsv, type Table } from './table';
import { CHART } from '../words/en/charts/shared';

/** The figure's numbers, folded away: a real table with units in its head, and the same as CSV. */
export function DataTable({ table, name }: { table: Table; name: string }): JSX.Element {
  return (
    <details class="fig-data">
      <summary>{CHART.table}</summary>
      {/* A region that scrolls must be reachable by keyboard. */}
      {/* oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex */}
      <div class="scroll" tabIndex={0} role="region" aria-label={CHART.table}>
        <table>
          <thead>
            <tr>
              {table.head.map((words) => (
                <th key={words} scope="col">
                  {words}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {table.rows.map(([first, ...rest]) => (
              <tr key={first}>
                <th scope="row">{first}</th>
                {rest.map((value, i) => (
                  <td key={i}>{value}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <a
        class="fig-csv"
        download={`${name}.csv`}
        href={`data:text/csv;charset=utf-8,${encodeURIComponent(tableCsv(table))}`}
      >
        {CHART.csv}
      </a>
    </details>
  );
}

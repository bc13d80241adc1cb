/** The numbers of a chart as a table, at steps a person can read. */

import { say } from '../words/say';
import type { Chart, Datum, Series } from './types';
import { CHART } from '../words/en/charts/shared';

export interface Table {
  /** Quantity and unit of each column. */
  head: string[];
  rows: string[][];
}

const MOST_ROWS = 13;

type Edge = 'low' | 'mid' | 'high';
const EDGES: readonly Edge[] = ['low', 'mid', 'high'];

/** Every so many of the x values, both ends kept. */
function steps(values: readonly number[]): number[] {
  const sorted = [...new Set(values)].sort((a, b) => a - b);
  const every = Math.ceil(Math.max(1, sorted.length - 1) / (MOST_ROWS - 1));
  return sorted.filter((_, i) => i % every === 0 || i === sorted.length - 1);
}

function edgesOf(series: Series): Edge[] {
  return EDGES.filter((edge) => series.data.some((datum) => datum[edge] !== undefined));
}

export function chartTable(chart: Chart): Table {
  const columns = chart.panels.flatMap((panel) =>
    panel.series.flatMap((series) =>
      edgesOf(series).map((edge) => ({
        head: say(CHART[edge], {
          series:
            chart.panels.length > 1 && panel.series.length === 1
              ? panel.y.label
              : series.label.long,
          unit: panel.y.unit,
        }),
        write: (datum: Datum | undefined) => {
          const value = datum?.[edge];
          return value === undefined ? '' : panel.y.write(value);
        },
        byX: new Map(series.data.map((datum) => [datum.x, datum])),
      })),
    ),
  );
  const xs = steps(
    chart.panels.flatMap(({ series }) => series.flatMap(({ data }) => data.map(({ x }) => x))),
  );
  return {
    head: [
      say(CHART.measure, { label: chart.x.label, unit: chart.x.unit }),
      ...columns.map(({ head }) => head),
    ],
    rows: xs.map((x) => [chart.x.write(x), ...columns.map(({ byX, write }) => write(byX.get(x)))]),
  };
}

/** The table as comma-separated values, for a spreadsheet. */
export function tableCsv({ head, rows }: Table): string {
  const cell = (words: string) =>
    /[",\n]/.test(words) ? `"${words.replaceAll('"', '""')}"` : words;
  return [head, ...rows].map((row) => row.map(cell).join(',')).join('\r\n');
}

/** Printed tolerances of threads. */

import { limitsOf } from '../../core/thread/read-or-throw';
import { readCsv } from '../csv';
import metricText from '../data/metric-6H.csv?raw';
import unifiedText from '../data/unified-2B-3B.csv?raw';
import { EXACT, round, type PublishedTable, type Row } from './table';
import { pitchTolerance } from './tolerance';

/** Pitch-diameter tolerances above 90 mm, mm */
export const ABOVE_90: [thread: string, tolerance: number][] = [
  ['M100x2-6H', 0.25],
  ['M100x3-6H', 0.3],
  ['M100x4-6H', 0.335],
  ['M100x6-6H', 0.4],
  ['M200x3-6H', 0.335],
  ['M200x6-6H', 0.425],
  ['M200x8-6H', 0.475],
];

/** The four limits of a thread, where the source prints them. */
function limitRows(name: string, cells: (string | undefined)[], places: number): Row[] {
  const { minor, pitch } = limitsOf(name);
  const here = [minor.min, minor.max ?? NaN, pitch.min, pitch.max];
  const what = ['minor min', 'minor max', 'pitch min', 'pitch max'];
  return cells.flatMap((cell, at) =>
    cell
      ? [
          {
            of: name,
            what: what[at]!,
            printed: Number(cell),
            here: round(here[at]!, places),
            within: 0,
          },
        ]
      : [],
  );
}

const metric = readCsv(metricText).filter(({ status }) => status === 'ok');
const unified = readCsv(unifiedText);

export const THREAD_TABLES: PublishedTable[] = [
  {
    id: 'metric-6h',
    title: 'Metric 6H limits, M1 to M64',
    source: 'iso-965-1',
    read: 'ISO 965-2 values as threadlib tabulates them (BSD 3-Clause, its notice beside the data). Seven of its rows contradict the standard’s own rules and are left out; the tests name each.',
    unit: 'mm',
    places: 3,
    tolerance: EXACT,
    rows: metric.flatMap((row) =>
      limitRows(
        `${row['designation']}-6H`,
        [row['D1min_6H'], row['D1max_6H'], row['D2min_6H'], row['D2max_6H']],
        3,
      ),
    ),
  },
  {
    id: 'above-90',
    title: 'Metric pitch-diameter tolerances above 90 mm',
    source: 'iso-965-1',
    read: 'Machinery’s Handbook, 31st edition, page 2025.',
    unit: 'mm',
    places: 3,
    tolerance: EXACT,
    rows: ABOVE_90.map(([of, printed]) => ({
      of,
      what: '',
      printed,
      here: pitchTolerance(of),
      within: 0,
    })),
  },
  {
    id: 'unified',
    title: 'Unified 1B, 2B and 3B limits',
    source: 'asme-b1-1',
    read: 'Rows of the ASME B1.1 tables in Machinery’s Handbook, 31st edition, open copies, and catalogues of makers of taps and gauges; rows from memory are marked in the file of the tests.',
    unit: 'in',
    places: 4,
    tolerance: EXACT,
    rows: unified.flatMap((row) => {
      const series = row['series']!.replace(/^\d+-/, '');
      const name = `${row['designation']} ${series}-${row['class']}`;
      return limitRows(name, [row['D1min'], row['D1max'], row['D2min'], row['D2max']], 4);
    }),
  },
];

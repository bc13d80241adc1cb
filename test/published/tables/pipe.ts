/** Printed sizes of pipe threads. */

import { pipeNotes } from '../../../core';
import { limitsOf, read } from '../../core/thread/read-or-throw';
import { EXACT, INCH, round, type PublishedTable, type Row } from './table';
import { pitchTolerance } from './tolerance';

/** [size, E0, E1, L1, L2], inches */
export const B1_20_1: [string, number, number, number, number][] = [
  ['1/8-27', 0.36351, 0.3736, 0.1615, 0.2639],
  ['1/4-18', 0.47739, 0.49163, 0.2278, 0.4018],
  ['3/8-18', 0.61201, 0.62701, 0.24, 0.4078],
  ['1/2-14', 0.75843, 0.77843, 0.32, 0.5337],
  ['3/4-14', 0.96768, 0.98887, 0.339, 0.5457],
  ['1-11.5', 1.21363, 1.23863, 0.4, 0.6828],
];

/** Minor diameters of G threads on a tool maker's wall chart, mm */
export const G_MINOR: [size: string, min: number, max: number][] = [
  ['1/16', 6.561, 6.843],
  ['1/8', 8.566, 8.848],
  ['1/4', 11.445, 11.89],
  ['3/8', 14.95, 15.395],
  ['1/2', 18.631, 19.172],
  ['5/8', 20.587, 21.128],
  ['3/4', 24.117, 24.658],
  ['7/8', 27.877, 28.418],
  ['1', 30.291, 30.931],
  ['1-1/8', 34.939, 35.579],
  ['1-1/4', 38.952, 39.592],
  ['1-1/2', 44.845, 45.485],
  ['1-3/4', 50.788, 51.428],
  ['2', 56.656, 57.296],
  ['2-1/4', 62.752, 63.392],
  ['2-1/2', 72.226, 72.866],
  ['2-3/4', 78.576, 79.216],
];

/** Pitch-diameter tolerances of G threads in open data, mm */
export const G_TOLERANCE: [size: string, tolerance: number][] = [
  ['1/8', 0.107],
  ['3/8', 0.125],
  ['7/8', 0.142],
  ['1', 0.18],
  ['2', 0.18],
  ['2-1/4', 0.217],
  ['6', 0.217],
];

export const PIPE_TABLES: PublishedTable[] = [
  {
    id: 'g-minor',
    title: 'G pipe threads: minor diameter',
    source: 'iso-228-1',
    read: 'A cutting-tool maker’s wall chart.',
    unit: 'mm',
    places: 3,
    tolerance: EXACT,
    rows: G_MINOR.flatMap(([size, min, max]) => {
      const { minor } = limitsOf(`G${size}`);
      return [
        { of: `G${size}`, what: 'min', printed: min, here: minor.min, within: 0 },
        { of: `G${size}`, what: 'max', printed: max, here: minor.max ?? NaN, within: 0 },
      ];
    }),
  },
  {
    id: 'g-tolerance',
    title: 'G pipe threads: tolerance of the pitch diameter',
    source: 'iso-228-1',
    read: 'An open CAD data set.',
    unit: 'mm',
    places: 3,
    tolerance: EXACT,
    rows: G_TOLERANCE.map(([size, printed]) => ({
      of: `G${size}`,
      what: '',
      printed,
      here: pitchTolerance(`G${size}`),
      within: 0,
    })),
  },
  {
    id: 'npt',
    title: 'NPT: pitch diameters and lengths',
    source: 'asme-b1-20-1',
    read: 'Table 2 of the standard, from memory.',
    unit: 'in',
    places: 5,
    tolerance: 'half of the fourth digit after the point',
    rows: B1_20_1.flatMap(([size, small, mouth, engagement, effective]) => {
      const { sizes: pipe, gauge } = pipeNotes(read(`${size} NPT`))!;
      const row = (what: string, printed: number, mm: number): Row => ({
        of: `${size} NPT`,
        what,
        printed,
        here: round(mm / INCH, 5),
        within: 0.00005,
      });
      return [
        row('pitch at the small end', small, pipe!.pitchSmallEnd),
        row('pitch at the mouth', mouth, pipe!.pitchMouth),
        row('hand-tight length', engagement, gauge!.length),
        row('effective length', effective, pipe!.effective),
      ];
    }),
  },
];

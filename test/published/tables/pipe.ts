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

/** Minor diameters of G threads on a tool maker's wall chart, mm; threadlib's d1 and its tolerance give the same */
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

/** Pitch-diameter tolerances of G threads in threadlib, mm */
export const G_TOLERANCE: [size: string, tolerance: number][] = [
  ['1/8', 0.107],
  ['3/8', 0.125],
  ['7/8', 0.142],
  ['1', 0.18],
  ['2', 0.18],
  ['2-1/4', 0.217],
  ['6', 0.217],
];

/** G threads, mm: [size, major, pitch and minor diameter] as threadlib tabulates them, to its last row */
// prettier-ignore
export const G_SIZES: [size: string, major: number, pitch: number, minor: number][] = [
  ['1/16', 7.723, 7.142, 6.561], ['1/8', 9.728, 9.147, 8.566], ['1/4', 13.157, 12.301, 11.445],
  ['3/8', 16.662, 15.806, 14.95], ['1/2', 20.955, 19.793, 18.631], ['5/8', 22.911, 21.749, 20.587],
  ['3/4', 26.441, 25.279, 24.117], ['7/8', 30.201, 29.039, 27.877], ['1', 33.249, 31.77, 30.291],
  ['1-1/8', 37.897, 36.418, 34.939], ['1-1/4', 41.91, 40.431, 38.952], ['1-1/2', 47.803, 46.324, 44.845],
  ['1-3/4', 53.746, 52.267, 50.788], ['2', 59.614, 58.135, 56.656], ['2-1/4', 65.71, 64.231, 62.752],
  ['2-1/2', 75.184, 73.705, 72.226], ['2-3/4', 81.534, 80.055, 78.576], ['3', 87.884, 86.405, 84.926],
  ['3-1/2', 100.33, 98.851, 97.372], ['4', 113.03, 111.551, 110.072], ['4-1/2', 125.73, 124.251, 122.772],
  ['5', 138.43, 136.951, 135.472], ['5-1/2', 151.13, 149.651, 148.172], ['6', 163.83, 162.351, 160.872],
];

/**
 * NPT, inches: [size, pitch diameter at the mouth E1, hand-tight length L1, effective length L2] as a pipe stockist
 * prints the table of ASME B1.20.1. Its L1 of 1-1/2, .402, is a misprint of .420: its own E1 and E0 lie .420/16 apart.
 */
// prettier-ignore
export const NPT_PRINTED: [size: string, mouth: number, engagement: number | null, effective: number][] = [
  ['1/8-27', 0.3736, 0.162, 0.2639], ['1/4-18', 0.49163, 0.228, 0.4018], ['3/8-18', 0.62701, 0.24, 0.4078],
  ['1/2-14', 0.77843, 0.32, 0.5337], ['3/4-14', 0.98887, 0.339, 0.5457], ['1-11.5', 1.23863, 0.4, 0.6828],
  ['1-1/4-11.5', 1.58338, 0.42, 0.7068], ['1-1/2-11.5', 1.82234, null, 0.7235], ['2-11.5', 2.29627, 0.436, 0.7565],
];

export const PIPE_TABLES: PublishedTable[] = [
  {
    id: 'g-minor',
    title: 'G pipe threads: minor diameter',
    source: 'iso-228-1',
    read: 'A cutting-tool maker’s wall chart; threadlib, design/BSPP_thread.csv (BSD 3-Clause), gives the same.',
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
    read: 'threadlib, design/BSPP_thread.csv (BSD 3-Clause, its notice beside the data).',
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
    id: 'g-sizes',
    title: 'G pipe threads: diameters',
    source: 'iso-228-1',
    read: 'threadlib, design/BSPP_thread.csv (BSD 3-Clause, its notice beside the data).',
    unit: 'mm',
    places: 3,
    tolerance: EXACT,
    rows: G_SIZES.flatMap(([size, major, pitch, minor]) => {
      const here = limitsOf(`G${size}`);
      const row = (what: string, printed: number, own: number): Row => ({
        of: `G${size}`,
        what,
        printed,
        here: round(own, 3),
        within: 0,
      });
      return [
        row('major', major, here.majorMin),
        row('pitch min', pitch, here.pitch.min),
        row('minor min', minor, here.minor.min),
      ];
    }),
  },
  {
    id: 'npt-printed',
    title: 'NPT: pitch diameter at the mouth and lengths, 1/8 to 2',
    source: 'asme-b1-20-1',
    read: 'A pipe stockist’s page of the table. It misprints the hand-tight length of 1-1/2, which is left out.',
    unit: 'in',
    places: 5,
    tolerance:
      'half of the last digit printed: five places, three for the hand-tight length, four for the effective',
    rows: NPT_PRINTED.flatMap(([size, mouth, engagement, effective]) => {
      const { sizes: pipe, gauge } = pipeNotes(read(`${size} NPT`))!;
      const row = (what: string, printed: number, mm: number, places: number): Row => ({
        of: `${size} NPT`,
        what,
        printed,
        here: round(mm / INCH, 5),
        within: 0.5 * 10 ** -places,
      });
      return [
        row('pitch at the mouth', mouth, pipe!.pitchMouth, 5),
        ...(engagement === null ? [] : [row('hand-tight length', engagement, gauge!.length, 3)]),
        row('effective length', effective, pipe!.effective, 4),
      ];
    }),
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

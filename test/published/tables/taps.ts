/** Printed limits of taps. */

import { tapLimit, type TapLimitSystem } from '../../../core';
import { read } from '../../core/thread/read-or-throw';
import { EXACT, type PublishedTable, type Row } from './table';

/** [thread, H number, min, max], inches */
// prettier-ignore
export const PLAIN: [string, number, number, number][] = [
  ['0-80', 1, 0.0519, 0.0524], ['0-80', 2, 0.0524, 0.0529], ['1-64 UNC', 1, 0.0629, 0.0634],
  ['1-72 UNF', 2, 0.0645, 0.065], ['2-56', 1, 0.0744, 0.0749], ['3-56', 2, 0.0879, 0.0884],
  ['4-40', 2, 0.0963, 0.0968], ['4-48', 1, 0.0985, 0.099], ['5-40', 2, 0.1093, 0.1098],
  ['7/8-14', 2, 0.8291, 0.8296], ['7/8-14', 4, 0.8301, 0.8306], ['1-8', 4, 0.9203, 0.9208],
  ['1-8', 6, 0.9213, 0.9218], ['1-12', 4, 0.9474, 0.9479], ['1-14 UNS', 4, 0.9551, 0.9556],
];

/** Above 1 inch table 21 prints one limit a size, still .0005 wide: [thread, min, max] of H4 */
// prettier-ignore
export const LARGE: [string, number, number][] = [
  ['1-1/8-7', 1.0337, 1.0342], ['1-1/8-12', 1.0724, 1.0729], ['1-1/4-7', 1.1587, 1.1592],
  ['1-1/4-12', 1.1974, 1.1979], ['1-3/8-6', 1.2682, 1.2687], ['1-3/8-12', 1.3224, 1.3229],
  ['1-1/2-6', 1.3932, 1.3937], ['1-1/2-12', 1.4474, 1.4479], ['1-3/4-5', 1.6216, 1.6221],
  ['2-4.5', 1.8572, 1.8577],
];

/** [thread, H number of 2B, its limits, H number of 3B, its limits], inches */
// prettier-ignore
export const INSERTS: [string, number, number, number, number, number, number][] = [
  ['1-64', 2, 0.0837, 0.0842, 1, 0.0832, 0.0837], ['2-56', 2, 0.0981, 0.0986, 1, 0.0976, 0.0981],
  ['2-64', 2, 0.0967, 0.0972, 1, 0.0962, 0.0967], ['3-48', 2, 0.1131, 0.1136, 1, 0.1126, 0.1131],
  ['3-56', 2, 0.1111, 0.1116, 1, 0.1106, 0.1111], ['4-40', 2, 0.1288, 0.1293, 1, 0.1283, 0.1288],
  ['4-48', 2, 0.1261, 0.1266, 1, 0.1256, 0.1261], ['5-40', 2, 0.1418, 0.1423, 1, 0.1413, 0.1418],
  ['6-32', 3, 0.1593, 0.1598, 2, 0.1588, 0.1593], ['6-40', 2, 0.1548, 0.1553, 1, 0.1543, 0.1548],
  ['8-32', 3, 0.1853, 0.1858, 2, 0.1848, 0.1853], ['8-36', 2, 0.1826, 0.1831, 1, 0.1821, 0.1826],
  ['10-24', 3, 0.218, 0.2185, 2, 0.2175, 0.218], ['10-32', 3, 0.2113, 0.2118, 2, 0.2108, 0.2113],
  ['12-24', 3, 0.244, 0.2445, 2, 0.2435, 0.244], ['1/4-20', 3, 0.2835, 0.284, 2, 0.283, 0.2835],
  ['1/4-28', 3, 0.2742, 0.2747, 2, 0.2737, 0.2742], ['5/16-18', 4, 0.3501, 0.3506, 3, 0.3496, 0.3501],
  ['5/16-24', 3, 0.3405, 0.341, 2, 0.34, 0.3405], ['3/8-16', 4, 0.4171, 0.4176, 3, 0.4166, 0.4171],
  ['3/8-24', 3, 0.403, 0.4035, 2, 0.4025, 0.403], ['7/16-14', 4, 0.4854, 0.4859, 3, 0.4849, 0.4854],
  ['7/16-20', 4, 0.4715, 0.472, 3, 0.471, 0.4715], ['1/2-13', 4, 0.5514, 0.5519, 3, 0.5509, 0.5514],
  ['1/2-20', 4, 0.534, 0.5345, 3, 0.5335, 0.534],
];

/** Class 4H: [thread, H number, min, max], inches */
// prettier-ignore
export const METRIC: [string, number, number, number][] = [
  ['M2.5', 1, 0.11, 0.1105], ['M3', 1, 0.1309, 0.1314], ['M3.5', 1, 0.1532, 0.1537],
  ['M4', 2, 0.1759, 0.1764], ['M5', 2, 0.2179, 0.2184], ['M7', 2, 0.3017, 0.3022],
  ['M8x1', 2, 0.3411, 0.3416], ['M8', 2, 0.3475, 0.348], ['M10x1', 2, 0.4198, 0.4203],
  ['M10x1.25', 2, 0.4262, 0.4267], ['M10', 3, 0.4331, 0.4336], ['M12x1.5', 3, 0.5118, 0.5123],
  ['M12', 3, 0.5182, 0.5187], ['M14x1.5', 3, 0.5906, 0.5911], ['M14', 3, 0.6034, 0.6039],
  ['M16x1.5', 3, 0.6693, 0.6698], ['M16', 3, 0.6821, 0.6826], ['M24x2', 4, 0.9971, 0.9981],
];

/** [thread, min, max] of class 2, mm */
// prettier-ignore
export const CATALOGUE: [string, number, number][] = [
  ['M1.6', 1.393, 1.407], ['M1.8', 1.593, 1.607], ['M2', 1.761, 1.776], ['M2.2', 1.931, 1.946],
  ['M2.5', 2.231, 2.246], ['M3', 2.699, 2.715], ['M3.5', 3.137, 3.155], ['M4', 3.574, 3.593],
  ['M4.5', 4.042, 4.061], ['M5', 4.51, 4.53], ['M6', 5.385, 5.409], ['M7', 6.385, 6.409],
  ['M8', 7.226, 7.251], ['M9', 8.226, 8.251], ['M10', 9.068, 9.096], ['M11', 10.068, 10.096],
  ['M12', 10.911, 10.943], ['M14', 12.752, 12.786], ['M16', 14.752, 14.786], ['M18', 16.43, 16.466],
];

/** [thread, basic pitch diameter, lower and upper deviation above it, micrometres] */
export const DEVIATIONS: [string, number, number, number][] = [
  ['M3', 2.675, 24, 40],
  ['M5', 4.48, 30, 50],
  ['M6', 5.35, 35, 59],
  ['M6x0.75', 5.513, 32, 53],
  ['M8', 7.188, 38, 63],
  ['M8x1', 7.35, 35, 59],
  ['M10', 9.026, 42, 70],
  ['M10x1.25', 9.188, 38, 63],
  ['M12', 10.863, 48, 80],
  ['M16', 14.701, 51, 85],
];

/** [thread, basic pitch diameter mm, D number, lower and upper deviation, micrometres] */
export const D_LIMITS: [
  thread: string,
  basic: number,
  number: number,
  lower: number,
  upper: number,
][] = [
  ['M5x0.8', 4.48, 4, 32, 52],
  ['M6x1', 5.35, 5, 40, 65],
  ['M8x1.25', 7.188, 5, 34, 65],
  ['M10x1.5', 9.026, 6, 47, 78],
  ['M10x1.25', 9.188, 5, 34, 65],
];

function tapRows(
  thread: string,
  system: TapLimitSystem,
  number: number,
  min: number,
  max: number,
): Row[] {
  const limit = tapLimit(read(thread), system, number);
  if (!limit.ok) throw new Error(`${thread} ${system}${number}`);
  const { pitch } = limit.value;
  const of = `${thread} ${system}${number}`;
  return [
    { of, what: 'min', printed: min, here: pitch.min, within: 0 },
    { of, what: 'max', printed: max, here: pitch.max, within: 0 },
  ];
}

function deviationRows(
  thread: string,
  basic: number,
  system: TapLimitSystem,
  number: number,
  lower: number,
  upper: number,
): Row[] {
  const limit = tapLimit(read(thread), system, number);
  if (!limit.ok) throw new Error(`${thread} ${system}${number}`);
  const over = (size: number): number => Math.round((size - basic) * 1000);
  const of = `${thread} ${system}${number}`;
  const { min, max } = limit.value.pitch;
  return [
    { of, what: 'lower', printed: lower, here: over(min), within: 0 },
    { of, what: 'upper', printed: upper, here: over(max), within: 0 },
  ];
}

export const TAP_TABLES: PublishedTable[] = [
  {
    id: 'h-limits',
    title: 'Tap limits, H numbers',
    source: 'handbook-tap-limits',
    read: 'Machinery’s Handbook, 31st edition, tables 20 and 21.',
    unit: 'in',
    places: 4,
    tolerance: EXACT,
    rows: [
      ...PLAIN.flatMap(([thread, number, min, max]) => tapRows(thread, 'H', number, min, max)),
      ...LARGE.flatMap(([thread, min, max]) => tapRows(thread, 'H', 4, min, max)),
    ],
  },
  {
    id: 'insert-limits',
    title: 'Tap limits for wire inserts',
    source: 'handbook-tap-limits',
    read: 'Machinery’s Handbook, 31st edition, tables 25 and 26a. Three metric rows are printed .0001 beside the table’s own rule; the tests name them.',
    unit: 'in',
    places: 4,
    tolerance: EXACT,
    rows: [
      ...INSERTS.flatMap(([thread, two, twoMin, twoMax, three, threeMin, threeMax]) => [
        ...tapRows(`STI ${thread}`, 'H', two, twoMin, twoMax),
        ...tapRows(`STI ${thread}`, 'H', three, threeMin, threeMax),
      ]),
      ...METRIC.flatMap(([thread, number, min, max]) =>
        tapRows(`EG ${thread}`, 'H', number, min, max),
      ),
    ],
  },
  {
    id: 'd-limits',
    title: 'Tap limits, D numbers: deviation from the basic pitch diameter',
    source: 'tap-limit-lists',
    read: 'A tap maker’s catalogue; makers are not named here.',
    unit: 'µm',
    places: 0,
    tolerance: EXACT,
    rows: D_LIMITS.flatMap(([thread, basic, number, lower, upper]) =>
      deviationRows(thread, basic, 'D', number, lower, upper),
    ),
  },
  {
    id: 'iso-2857-sizes',
    title: 'Class 2 taps for 6H: pitch diameter',
    source: 'iso-2857',
    read: 'A tap maker’s catalogue; makers are not named here.',
    unit: 'mm',
    places: 3,
    tolerance: EXACT,
    rows: CATALOGUE.flatMap(([thread, min, max]) => tapRows(thread, 'ISO', 2, min, max)),
  },
  {
    id: 'iso-2857-deviations',
    title: 'Class 2 taps for 6H: deviation from the basic pitch diameter',
    source: 'iso-2857',
    read: 'A second tap maker’s catalogue.',
    unit: 'µm',
    places: 0,
    tolerance: EXACT,
    rows: DEVIATIONS.flatMap(([thread, basic, lower, upper]) =>
      deviationRows(thread, basic, 'ISO', 2, lower, upper),
    ),
  },
];

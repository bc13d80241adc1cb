/**
 * Tap limits that lists recommend or standards stock, by thread.
 * - Inch, classes 2B and 3B: a tap maker's catalogue table for cutting taps in average material, read to 3/4-10,
 *   the rest to 1 inch from memory. 1-1/8 to 2: the one limit that Machinery's Handbook 31st ed. table 21
 *   (ASME B94.9) prints for the size, whatever the class.
 * - Metric, class 6H: M5 to M10 read in a tap maker's catalogue; the others from memory of ASME B94.9.
 * - Wire inserts: Machinery's Handbook 31st ed. table 25 (inch, 2B and 3B) and 26a (metric, classes 4H and
 *   5H or 6H, in inch limits), read.
 * A list is a proposal: the core checks each against the class on the drawing.
 */

/** Limit numbers H: [class 2B, class 3B]. Keyed `size-tpi`. */
export type InchLimits = Readonly<Record<string, readonly [number, number]>>;

// prettier-ignore
export const RECOMMENDED_H: InchLimits = {
  '#0-80': [2, 2], '#1-64': [2, 2], '#1-72': [2, 2], '#2-56': [2, 2], '#2-64': [2, 2], '#3-56': [2, 2],
  '#3-48': [3, 2], '#4-40': [3, 2], '#4-48': [3, 2], '#5-40': [3, 2], '#5-44': [3, 2], '#6-32': [3, 2],
  '#6-40': [3, 2], '#8-32': [3, 3], '#8-36': [3, 3], '#10-24': [3, 3], '#10-32': [3, 3], '#12-24': [3, 3],
  '#12-28': [3, 3], '1/4-20': [5, 3], '1/4-28': [4, 3], '5/16-18': [5, 3], '5/16-24': [4, 3],
  '3/8-16': [5, 3], '3/8-24': [4, 3], '7/16-14': [5, 3], '7/16-20': [5, 3], '1/2-13': [5, 4],
  '1/2-20': [5, 3], '9/16-12': [5, 4], '9/16-18': [5, 3], '5/8-11': [5, 4], '5/8-18': [5, 3],
  '3/4-10': [5, 4], '3/4-16': [5, 3], '7/8-9': [6, 4], '7/8-14': [6, 4], '1-8': [6, 4], '1-12': [6, 4],
  '1-14': [6, 4], '1-1/8-7': [4, 4], '1-1/8-12': [4, 4], '1-1/4-7': [4, 4], '1-1/4-12': [4, 4],
  '1-3/8-6': [4, 4], '1-3/8-12': [4, 4], '1-1/2-6': [4, 4], '1-1/2-12': [4, 4], '1-3/4-5': [4, 4],
  '2-4.5': [4, 4],
};

/** Inch threads of the list above that were recalled rather than read. */
export const INCH_LIST_RECALLED: readonly string[] = [
  '3/4-16', '7/8-9', '7/8-14', '1-8', '1-12', '1-14',
]; // prettier-ignore

/** Wire-insert holes, inch: [class 2B, class 3B]. Keyed `size-tpi`. */
// prettier-ignore
export const INSERT_H: InchLimits = {
  '#1-64': [2, 1], '#2-56': [2, 1], '#2-64': [2, 1], '#3-48': [2, 1], '#3-56': [2, 1], '#4-40': [2, 1],
  '#4-48': [2, 1], '#5-40': [2, 1], '#6-32': [3, 2], '#6-40': [2, 1], '#8-32': [3, 2], '#8-36': [2, 1],
  '#10-24': [3, 2], '#10-32': [3, 2], '#12-24': [3, 2], '1/4-20': [3, 2], '1/4-28': [3, 2],
  '5/16-18': [4, 3], '5/16-24': [3, 2], '3/8-16': [4, 3], '3/8-24': [3, 2], '7/16-14': [4, 3],
  '7/16-20': [4, 3], '1/2-13': [4, 3], '1/2-20': [4, 3],
};

/** Wire-insert holes, metric, in inch limit numbers: [class 4H, classes 5H and 6H]. Keyed `size x pitch`. */
// prettier-ignore
export const INSERT_H_METRIC: InchLimits = {
  '2.5x0.45': [1, 2], '3x0.5': [1, 2], '3.5x0.6': [1, 2], '4x0.7': [2, 3], '5x0.8': [2, 3], '6x1': [2, 3],
  '7x1': [2, 3], '8x1': [2, 3], '8x1.25': [2, 3], '10x1': [2, 3], '10x1.25': [2, 3], '10x1.5': [3, 4],
};

/** Limit numbers D for class 6H. Keyed `size x pitch`, mm. */
// prettier-ignore
export const RECOMMENDED_D: Readonly<Record<string, number>> = {
  '1.6x0.35': 3, '2x0.4': 3, '2.5x0.45': 3, '3x0.5': 3, '3.5x0.6': 4, '4x0.7': 4, '4.5x0.75': 4, '5x0.8': 4,
  '6x1': 5, '7x1': 5, '8x1.25': 5, '8x1': 5, '10x1.5': 6, '10x1.25': 5, '12x1.75': 6, '12x1.25': 5,
  '14x2': 7, '14x1.5': 6, '16x2': 7, '16x1.5': 6, '18x2.5': 7, '18x1.5': 6, '20x2.5': 7, '20x1.5': 6,
  '22x2.5': 7, '24x3': 8, '24x2': 7, '30x3.5': 9, '36x4': 9,
};

/** Metric threads of the list above that were read rather than recalled. */
export const METRIC_LIST_READ: readonly string[] = ['5x0.8', '6x1', '8x1.25', '10x1.5'];

/** The threads that the lesson on class limits and tap limits turns over. Lengths in mm. */

import { inchToMm } from '../../../core/units';

/** One thread in its three classes; the live figure's thread. */
export const VALVE = { thread: '1/4-20 UNC', classes: ['2B', '3B'] } as const;

/** The metric thread whose taps are shown beside it. */
export const PUMP = 'M10x1.5-6H';

/** Threads and classes of the table of class limits. */
export const ZONES = [
  '1/4-20 UNC-2B',
  '1/4-20 UNC-3B',
  'M10x1.5-4H',
  'M10x1.5-6H',
  'M10x1.5-6G',
] as const;

/** Threads of the table of taps that lists name. */
export const MATCHES = [
  '#10-24 UNC-2B',
  '#10-24 UNC-3B',
  '1/4-20 UNC-2B',
  '1/4-20 UNC-3B',
  '1/2-13 UNC-2B',
  '1/2-13 UNC-3B',
  'M5x0.8-6H',
  'M10x1.5-6H',
  'M12x1.75-6H',
] as const;

/** Zinc on an inch cover and on a metric one, growth of each surface from least to most, mm. */
export const ZINC_INCH = {
  thread: '1/4-20 UNC-2B',
  layer: [inchToMm(0.0002), inchToMm(0.0003)] as const,
};
export const ZINC_METRIC = { thread: 'M8x1.25-6G', layer: [0.003, 0.005] as const };

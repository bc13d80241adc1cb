/** Limits of size of an internal thread. */

import type { Range } from '../units';

export type { Range };

export interface ThreadLimits {
  /** Metric limits are in mm; unified limits stay in the inches that their standard rounds. */
  unit: 'mm' | 'in';
  pitch: Range;
  /** `max` is missing where no rule is known with confidence (UNJ). */
  minor: { min: number; max?: number };
  majorMin: number;
  basis: 'tabulated' | 'computed';
}

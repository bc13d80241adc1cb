/** Limits of size of any internal thread that was read. */

import type { Outcome } from '../outcome';
import type { Thread } from '../thread/thread';
import { MM_PER_INCH } from '../units';
import type { ThreadLimits } from './limits';
import { metricLimits } from './metric';
import { pipeLimits } from './pipe';
import { unifiedLimits } from './unified';

export interface LimitsOptions {
  /** Length of engagement, mm. Beyond 1.5 D a Unified pitch-diameter tolerance widens; ISO changes class instead. */
  engagement?: number;
}

/**
 * The limits within which the hole's thread must come out.
 *
 * @param thread from `readThread`.
 * @returns pitch diameter, minor diameter (the drilled hole) and least major diameter: mm for metric and pipe
 *   threads, inches for Unified ones, each as its standard rounds it. `basis` tells a table from a formula.
 *   Refuses with `taper-pipe`, `no-limits-held`, `outside-tolerances` or `class-unknown`.
 *   Sources: ISO 965-1 with ISO 724; ASME B1.1; ISO 228-1. Computed to them, never certified to them.
 *
 * @example
 * threadLimits(readThread('M8x1.25-6H').value).value.minor // { min: 6.647, max: 6.912 }
 * threadLimits(readThread('1/4-20 UNC-2B').value).value.pitch // { min: 0.2175, max: 0.2224 }
 */
export function threadLimits(thread: Thread, options: LimitsOptions = {}): Outcome<ThreadLimits> {
  if (thread.system === 'metric') return metricLimits(thread);
  return thread.system === 'unified' ? unifiedLimits(thread, options) : pipeLimits(thread);
}

/** The minor-diameter limits in mm, whatever their unit, by the exact inch. `max` is missing where it is not known (UNJ). Derived. */
export function minorLimitsMm(limits: ThreadLimits): { min: number; max?: number } {
  const factor = limits.unit === 'in' ? MM_PER_INCH : 1;
  const { min, max } = limits.minor;
  return { min: min * factor, ...(max === undefined ? {} : { max: max * factor }) };
}

/** Groups of the length of engagement by which ISO 965-1 chooses a class. */

import { DIAMETER_STEPS } from '../data/iso-965-tolerances';
import { diameterStep } from '../thread/metric-series';
import type { Thread } from '../thread/thread';
import type { Range } from './limits';

/**
 * Engagements that count as normal (N) for a metric thread, mm: from 2.24 P d^0.2 to 6.7 P d^0.2, d the lower
 * end of the diameter step. Shorter is S, longer L; the standard prints rounded values (M8x1.25: 4 to 12).
 * Null for other threads and outside the steps. Source: ISO 965-1, from memory.
 */
export function normalEngagement(thread: Thread): Range | null {
  const step = DIAMETER_STEPS[diameterStep(thread.diameter)];
  if (thread.system !== 'metric' || !step) return null;
  const unit = thread.pitch * step[0] ** 0.2;
  return { min: 2.24 * unit, max: 6.7 * unit };
}

/**
 * The group of an engagement, mm, above 0, and the class usual for it in medium quality: S 5H, N 6H, L 7H.
 * Null as for `normalEngagement`. The limits themselves follow the class on the drawing, not the length.
 * Source: ISO 965-1, from memory.
 */
export function engagementGroup(
  thread: Thread,
  engagement: number,
): { group: 'S' | 'N' | 'L'; usualClass: '5H' | '6H' | '7H' } | null {
  const normal = normalEngagement(thread);
  if (!normal) return null;
  if (engagement < normal.min) return { group: 'S', usualClass: '5H' };
  if (engagement > normal.max) return { group: 'L', usualClass: '7H' };
  return { group: 'N', usualClass: '6H' };
}

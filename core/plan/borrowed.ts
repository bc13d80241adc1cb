/** A stand-in for the one limit that is not held: the largest minor diameter of J threads by inch rules. */

import type { ThreadLimits } from '../limits/limits';
import { threadLimits } from '../limits/thread-limits';
import type { Thread } from '../thread/thread';

/**
 * Upper minor limit to plan by where the standard's own is not known (UNJ): the UN 3B tolerance on its minimum,
 * in the unit of `limits`. Undefined where the limit is known. Source: derived.
 */
export function borrowedMinorMax(thread: Thread, limits: ThreadLimits): number | undefined {
  if (limits.minor.max !== undefined) return undefined;
  const like = threadLimits({ ...thread, form: thread.form === 'UNJ' ? 'UN' : 'M' });
  if (!like.ok || like.value.minor.max === undefined) return undefined;
  return limits.minor.min + (like.value.minor.max - like.value.minor.min);
}

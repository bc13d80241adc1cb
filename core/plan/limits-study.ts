/** The limits of any thread as drawn, with what its length of engagement does to them. */

import { engagementGroup, normalEngagement } from '../limits/engagement-group';
import type { ThreadLimits } from '../limits/limits';
import { threadLimits } from '../limits/thread-limits';
import { answer, refuse, type Outcome } from '../outcome';
import type { Thread } from '../thread/thread';
import type { Range } from '../units';
import { referenceOf, type ThreadReference } from './reference';

export interface LimitsStudy {
  reference: ThreadReference;
  /** Wider limits of a long Unified engagement; null where none was asked or nothing widens. */
  long: ThreadLimits | null;
  /** How many times the pitch-diameter tolerance is wider. */
  longFactor: number;
  /** Metric: the group of the engagement and the class usual for it; null for other threads. */
  group: { group: 'S' | 'N' | 'L'; usualClass: string; normal: Range } | null;
}

function groupOf(thread: Thread, engagement: number): LimitsStudy['group'] {
  const found = engagementGroup(thread, engagement);
  const normal = normalEngagement(thread);
  return found && normal ? { ...found, normal } : null;
}

/**
 * Limits of a thread, and how they answer to the length of engagement.
 *
 * @param engagement length of thread that will be in engagement, mm, above 0; left out where it is not known.
 * @returns lengths in mm, limits in their standard's unit. Refuses `engagement-not-positive` and what
 *   `threadLimits` refuses, but for pipe threads, which come with their gauge notes. Sources: as `threadLimits`.
 */
export function limitsStudy(thread: Thread, engagement?: number): Outcome<LimitsStudy> {
  if (engagement !== undefined && !(engagement > 0)) {
    return refuse({ code: 'engagement-not-positive', field: 'engagement' });
  }
  const reference = referenceOf(thread);
  if (!reference.ok) return reference;
  const wide = engagement === undefined ? null : threadLimits(thread, { engagement });
  const note = wide?.ok ? wide.notes.find(({ code }) => code === 'long-engagement') : undefined;
  return answer({
    reference: reference.value,
    long: wide?.ok && note ? wide.value : null,
    longFactor: note?.numbers?.['factor'] ?? 1,
    group: engagement === undefined ? null : groupOf(thread, engagement),
  });
}

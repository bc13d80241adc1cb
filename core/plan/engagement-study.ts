/** How deep is enough for this screw in this metal, and is what there is enough? */

import {
  neededEngagement,
  type Engagement,
  type EngagementProblemCode,
} from '../engagement/needed';
import type { Purpose } from '../engagement/purposes';
import { SCREW_GRADES, type ScrewGrade } from '../engagement/screws';
import { ENGAGEMENT_MARGIN } from '../engagement/strip';
import type { ThreadLimits } from '../limits/limits';
import { threadLimits } from '../limits/thread-limits';
import type { Material } from '../material/material';
import { answer, refuse, type Outcome } from '../outcome';
import type { Thread } from '../thread/thread';

export interface EngagementQuestion {
  thread: Thread;
  screw: ScrewGrade;
  material: Material;
  /** Shear strength from the metal's certificate, N/mm², above 0. */
  shear?: number | undefined;
  purpose?: Purpose | undefined;
  /** Full thread there is or will be in engagement, mm, above 0. */
  have?: number | undefined;
}

export interface EngagementStudy {
  thread: Thread;
  limits: ThreadLimits;
  needed: Engagement;
  /** Shear strength reckoned with, N/mm². */
  shear: number;
  /** What there is against what matches: below 1 the thread strips first; from 1.25 the margin is kept. */
  have: { length: number; ratio: number; verdict: 'strips' | 'bare' | 'enough' } | null;
  /** The same metal with every other screw. */
  others: readonly { screw: ScrewGrade; needed: Engagement }[];
}

function judge(length: number, { matching }: Engagement): EngagementStudy['have'] {
  const ratio = length / matching;
  if (ratio < 1) return { length, ratio, verdict: 'strips' };
  return { length, ratio, verdict: ratio < ENGAGEMENT_MARGIN.least - 1e-9 ? 'bare' : 'enough' };
}

/**
 * Engagement needed for a screw to break before a thread strips, and how what there is compares.
 *
 * @param question lengths mm, strengths N/mm².
 * @returns mm, mm² and mm²/mm. Refuses `ENGAGEMENT_PROBLEM_CODES`, `shear-not-positive`, `have-not-positive` and
 *   what `threadLimits` refuses. Sources: as `neededEngagement`.
 */
export function engagementStudy(question: EngagementQuestion): Outcome<EngagementStudy> {
  const { thread, screw, material, shear, purpose, have } = question;
  if (shear !== undefined && !(shear > 0))
    return refuse({ code: 'shear-not-positive', field: 'shear' });
  if (have !== undefined && !(have > 0))
    return refuse({ code: 'have-not-positive', field: 'have' });
  if (purpose !== undefined && purpose !== 'static') {
    const code: EngagementProblemCode = 'not-rated';
    return refuse({ code, field: 'purpose', data: { purpose } });
  }
  const { designation } = thread;
  if (thread.system === 'pipe') {
    return refuse({ code: 'engagement-other-thread', field: 'thread', data: { designation } });
  }
  const limits = threadLimits(thread);
  if (!limits.ok) return limits;
  const base = {
    thread,
    limits: limits.value,
    material,
    ...(shear === undefined ? {} : { shear }),
  };
  const needed = neededEngagement({ ...base, screw });
  if (!needed.ok) return needed;
  const others = SCREW_GRADES.filter((grade) => grade !== screw).flatMap((grade) => {
    const found = neededEngagement({ ...base, screw: grade });
    return found.ok ? [{ screw: grade, needed: found.value }] : [];
  });
  return answer({
    thread,
    limits: limits.value,
    needed: needed.value,
    shear: shear ?? material.shear ?? 0,
    have: have === undefined ? null : judge(have, needed.value),
    others,
  });
}

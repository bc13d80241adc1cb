/** A thread's gauges, what they did in the hole, and what that means. */

import { gaugeAdvice, provedDepth, type GaugeAdvice } from '../gauge/advice';
import { gaugeSet, type GaugeSet } from '../gauge/members';
import type { PlainReading } from '../gauge/plain';
import type { GaugeReading } from '../gauge/reading';
import { threadLimits } from '../limits/thread-limits';
import { answer, refuse, type Outcome } from '../outcome';
import type { Thread } from '../thread/thread';
import type { Range } from '../units';

export interface GaugeQuestion {
  thread: Thread;
  go: GaugeReading['go'];
  /** Turns by hand, 0 or more. */
  notGoTurns: number;
  plain: PlainReading;
  /** Turns the GO made until it stopped, and full thread asked for in mm, where they are known. */
  goTurns?: number | undefined;
  fullThread?: number | undefined;
}

export interface GaugeStudy {
  thread: Thread;
  set: GaugeSet;
  advice: GaugeAdvice;
  /** Full thread that the GO's turns prove, mm; null where not counted. */
  proved: Range | null;
}

const PLAIN: Record<PlainReading, Pick<GaugeReading, 'minorGo' | 'minorNotGo'>> = {
  untried: {},
  right: { minorGo: true, minorNotGo: false },
  'go-refused': { minorGo: false, minorNotGo: false },
  'not-go-enters': { minorGo: true, minorNotGo: true },
};

/**
 * Reads all gauges of a parallel thread together, under both rules of turns.
 *
 * @param question turns by hand, lengths mm.
 * @returns limits in their standard's unit, depths mm. Refuses `gauge-taper` and `gauge-pipe` (other gauges, other
 *   rules), what `threadLimits` and `gaugeAdvice` refuse. Sources: `asme-b1-2`, `iso-1502`, `common-practice`.
 */
export function gaugeStudy(question: GaugeQuestion): Outcome<GaugeStudy> {
  const { thread, go, notGoTurns, plain, goTurns, fullThread } = question;
  const { designation, pitch } = thread;
  const limits = threadLimits(thread);
  if (thread.system === 'pipe') {
    const code = limits.ok ? 'gauge-pipe' : 'gauge-taper';
    return refuse({ code, field: 'thread', data: { designation } });
  }
  if (!limits.ok) return limits;
  const threadTurns = fullThread === undefined ? Infinity : fullThread / pitch;
  const counted = goTurns !== undefined && fullThread !== undefined;
  const advice = gaugeAdvice(
    { go, notGoTurns, threadTurns, ...PLAIN[plain] },
    counted ? { turns: goTurns, pitch, asked: fullThread } : undefined,
  );
  if (!advice.ok) return advice;
  return answer({
    thread,
    set: gaugeSet(thread, limits.value),
    advice: advice.value,
    proved: goTurns === undefined ? null : provedDepth(goTurns, pitch),
  });
}

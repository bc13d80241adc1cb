/** A coated thread: what to tap, and what to drill, so that it passes once coated. */

import type { DrillChoice } from '../drill/drill';
import {
  beforePlating,
  type BasicSizes,
  type PlatedWindow,
  type PlatingRule,
} from '../gauge/plating';
import type { ThreadLimits } from '../limits/limits';
import { threadLimits } from '../limits/thread-limits';
import { answer, type Outcome } from '../outcome';
import { judgeTapLimits, type TapLimitChoice } from '../tap/limits-judge';
import { tapMajor } from '../tap/major';
import type { Thread } from '../thread/thread';
import { MM_PER_INCH, type Range } from '../units';
import { borrowedMinorMax } from './borrowed';
import { referenceDrills, usualDrill, type ReferenceDrill } from './reference-drills';

export interface PlatingStudy {
  thread: Thread;
  /** Of the class as drawn. */
  limits: ThreadLimits;
  before: PlatedWindow;
  /** Hole to drill, mm. */
  hole: Range;
  drills: readonly ReferenceDrill[];
  drill: DrillChoice | null;
  /** Tap limits judged in the window of the bare thread. */
  taps: readonly TapLimitChoice[];
  /** The tap limits that lists name for the bare class, judged the same way. */
  listed: readonly TapLimitChoice[];
  /** Of each system, the suiting limit that leaves a worn tap and a large cut most nearly the same room. */
  best: readonly TapLimitChoice[];
}

/** Sizes of the H position that a coated metric thread must still clear; the class's own where it is H. */
function basicOf(thread: Thread): BasicSizes | undefined {
  const atH = threadLimits({ ...thread, class: thread.class.replaceAll('G', 'H') });
  if (thread.system !== 'metric' || !atH.ok) return undefined;
  const { majorMin, pitch, minor } = atH.value;
  return { major: majorMin, pitch: pitch.min, minor: minor.min };
}

function middleOnes(taps: readonly TapLimitChoice[]): TapLimitChoice[] {
  const systems = [...new Set(taps.map(({ system }) => system))];
  const lean = ({ wear, spare }: TapLimitChoice) => Math.abs(wear - spare);
  return systems.flatMap((system) => {
    const suiting = taps.filter((tap) => tap.system === system && tap.verdict === 'inside');
    const [first] = [...suiting].sort((a, b) => lean(a) - lean(b));
    return first ? [first] : [];
  });
}

/**
 * What the bare thread must be so that the coated one passes.
 *
 * @param thickness growth of each surface, least and most, mm; @param rule when the limits hold: as the thread's
 *   own standard has it where left out.
 * @returns limits in their standard's unit, hole and drills in mm. Refuses what `threadLimits` and
 *   `beforePlating` refuse. Sources: as `beforePlating` and `judgeTapLimits`.
 */
export function platingStudy(
  thread: Thread,
  thickness: readonly [min: number, max: number],
  rule?: PlatingRule,
): Outcome<PlatingStudy> {
  const limits = threadLimits(thread);
  if (!limits.ok) return limits;
  const before = beforePlating(limits.value, thickness, rule, basicOf(thread));
  if (!before.ok) return before;
  const { minor, pitch, unit } = before.value;
  const factor = unit === 'in' ? MM_PER_INCH : 1;
  const max = minor.max ?? borrowedMinorMax(thread, limits.value) ?? minor.min;
  const hole = { min: minor.min * factor, max: max * factor };
  const window = { ...hole, major: tapMajor(thread), pitch: thread.pitch, oversizeShare: 1 };
  const drills = referenceDrills(thread, [{ class: thread.class, window }]);
  const taps = judgeTapLimits(thread, limits.value, pitch);
  return answer({
    thread,
    limits: limits.value,
    before: before.value,
    hole,
    drills,
    drill: usualDrill(thread, window, drills),
    taps,
    listed: judgeTapLimits(thread, limits.value, pitch, 'all').filter(
      ({ listed }) => listed !== null,
    ),
    best: middleOnes(taps),
  });
}

/** The hole sizes of a class, for judging drills, and what they leave of the thread. */

import type { HoleWindow } from '../drill/judge';
import { percentThread } from '../drill/percent';
import type { ThreadLimits } from '../limits/limits';
import { threadLimits } from '../limits/thread-limits';
import { tapMajor } from '../tap/major';
import type { Thread } from '../thread/thread';
import type { Range } from '../units';
import { borrowedMinorMax } from './borrowed';
import { holeWindow } from './job';

export interface HoleWindowFacts {
  /** Hole sizes that leave the minor diameter in class, mm. */
  hole: Range;
  /** Percent of thread from the largest hole to the smallest, on both bases. */
  percent: { shop: Range; iso: Range };
  /** True where the largest hole is a stand-in (UNJ). */
  uncertain: boolean;
}

/** The window of a class for judging drills in steel, mm. Source: the class limits. */
export function windowOf(thread: Thread, limits: ThreadLimits): HoleWindow {
  const { min, max } = holeWindow(limits, undefined, borrowedMinorMax(thread, limits));
  return { min, max, major: tapMajor(thread), pitch: thread.pitch, oversizeShare: 1 };
}

/** The window in mm and in percent of thread on both bases. Sources: the class limits; `handbook-drills`. */
export function windowFacts(window: HoleWindow, limits: ThreadLimits): HoleWindowFacts {
  const least = percentThread(window.major, window.pitch, window.max);
  const most = percentThread(window.major, window.pitch, window.min);
  return {
    hole: { min: window.min, max: window.max },
    percent: {
      shop: { min: least.shop, max: most.shop },
      iso: { min: least.iso, max: most.iso },
    },
    uncertain: limits.minor.max === undefined,
  };
}

/** Classes of a Unified thread that shops set side by side. Common practice. */
const UNIFIED_CLASSES = ['2B', '3B'];

/**
 * The windows to judge drills in: the thread's own class, then for Unified threads the other common one. mm.
 * `settle` changes a window before it is used: another material, a coating. Source: the class limits.
 */
export function comparedWindows(
  thread: Thread,
  limits: ThreadLimits,
  settle: (window: HoleWindow) => HoleWindow = (window) => window,
): { class: string; limits: ThreadLimits; window: HoleWindow }[] {
  const own = { class: thread.class, limits, window: settle(windowOf(thread, limits)) };
  if (thread.form !== 'UN') return [own];
  const others = UNIFIED_CLASSES.filter((name) => name !== thread.class).flatMap((name) => {
    const found = threadLimits({ ...thread, class: name });
    if (!found.ok) return [];
    const { value } = found;
    return [{ class: name, limits: value, window: settle(windowOf(thread, value)) }];
  });
  return [own, ...others];
}

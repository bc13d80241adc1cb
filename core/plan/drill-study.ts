/** Which drill for this thread, from this drawer, in this metal. */

import type { DrillChoice, DrillSeries } from '../drill/drill';
import type { HoleWindow } from '../drill/judge';
import { oversizeShare } from '../drill/oversize';
import type { ThreadLimits } from '../limits/limits';
import { threadLimits } from '../limits/thread-limits';
import type { Material } from '../material/material';
import { answer, refuse, type Note, type Outcome } from '../outcome';
import type { Thread } from '../thread/thread';
import { wantsLargestHole } from './job';
import { referenceDrills, usualDrill, type ReferenceDrill } from './reference-drills';
import { comparedWindows, windowFacts, windowOf, type HoleWindowFacts } from './reference-window';

export interface DrillQuestion {
  thread: Thread;
  /** Not said: steel. */
  material?: Material | undefined;
  /** Drills in the drawer; default all four series. */
  series?: readonly DrillSeries[] | undefined;
  /** How much larger than itself the shop's drill cuts, mm, 0 or more, as measured. */
  oversize?: number | undefined;
}

export interface DrillStudy {
  thread: Thread;
  limits: ThreadLimits;
  notes: readonly Note[];
  window: HoleWindowFacts;
  /** The classes the drills were judged in, own class first. */
  classes: readonly { class: string; limits: ThreadLimits }[];
  drills: readonly ReferenceDrill[];
  drill: DrillChoice | null;
  /** True where the metal is hard on taps, so that the largest hole that passes is taken. */
  largest: boolean;
}

/**
 * Judges the drills near a thread's hole in its class and takes one.
 *
 * @param question lengths mm.
 * @returns mm; `drill` null where none of the drawer falls inside. Refuses `oversize-negative`, and what
 *   `threadLimits` refuses: `taper-pipe` and the like. Sources: as `judgeDrill`; the choice common practice.
 */
export function drillStudy(question: DrillQuestion): Outcome<DrillStudy> {
  const { thread, material, series, oversize } = question;
  if (oversize !== undefined && !(oversize >= 0)) {
    return refuse({ code: 'oversize-negative', field: 'oversize' });
  }
  const limits = threadLimits(thread);
  if (!limits.ok) return limits;
  const share = material ? oversizeShare(material) : 1;
  const settle = (window: HoleWindow) => ({ ...window, oversizeShare: share, oversize });
  const windows = comparedWindows(thread, limits.value, settle);
  const drills = referenceDrills(thread, windows, series);
  const own = settle(windowOf(thread, limits.value));
  const largest = material !== undefined && wantsLargestHole(material);
  return answer({
    thread,
    limits: limits.value,
    notes: limits.notes,
    window: windowFacts(own, limits.value),
    classes: windows.map((each) => ({ class: each.class, limits: each.limits })),
    drills,
    drill: usualDrill(thread, own, drills, largest),
    largest,
  });
}

/** A thread's drills for its page: each judged in the classes a shop meets, the trap drills named. */

import type { DrillChoice, DrillSeries } from '../drill/drill';
import { bestDrill, judgeDrill, judgeDrills, type HoleWindow } from '../drill/judge';
import { listedDrill, targetHole } from '../drill/usual';
import type { Thread } from '../thread/thread';

/** Percent on the shop base that people call plenty; a larger hole fools nobody. Common practice. */
const PLENTY = 60;

/**
 * A drill that fools people, and the classes it fails: a list prints it for this thread and it leaves the hole over
 * the class (`listed`), or it is the next one up in the thread's own system and still leaves 60 % (`plenty`).
 */
export interface Trap {
  kind: 'listed' | 'plenty';
  classes: readonly string[];
}

export interface ReferenceDrill extends DrillChoice {
  /** True when the published lists print it for this thread. */
  listed: boolean;
  trap: Trap | null;
  /** Its verdict in every class compared, own class first. */
  classes: readonly { class: string; verdict: DrillChoice['verdict'] }[];
}

export interface ClassWindow {
  class: string;
  window: HoleWindow;
}

function ownSystem(thread: Thread, drill: DrillChoice): boolean {
  return (drill.series === 'metric') === (thread.system !== 'unified');
}

type Verdicts = ReferenceDrill['classes'];

function trapOf(
  drill: DrillChoice,
  listed: boolean,
  isNext: boolean,
  verdicts: Verdicts,
): Trap | null {
  const fails = verdicts.filter(({ verdict }) => verdict === 'outside').map((each) => each.class);
  if (fails.length === 0) return null;
  if (listed) return { kind: 'listed', classes: fails };
  return isNext && drill.percent.shop >= PLENTY ? { kind: 'plenty', classes: fails } : null;
}

/**
 * Every drill of the four series near the window of the first class, judged in all of them; smallest first.
 * Lengths mm. Sources: as `judgeDrill`; the lists `iso-2306` and `handbook-drills`.
 */
export function referenceDrills(
  thread: Thread,
  classes: readonly ClassWindow[],
  series?: readonly DrillSeries[],
): ReferenceDrill[] {
  const own = classes[0];
  if (!own) return [];
  const name = listedDrill(thread);
  const near = judgeDrills(own.window, series);
  const next = near.find(
    (drill) =>
      drill.diameter > own.window.max && drill.verdict === 'outside' && ownSystem(thread, drill),
  );
  return near.map((drill) => {
    const listed = drill.name === name;
    const verdicts = classes.map((each) => ({
      class: each.class,
      verdict: judgeDrill(drill, each.window).verdict,
    }));
    return {
      ...drill,
      listed,
      trap: trapOf(drill, listed, drill === next, verdicts),
      classes: verdicts,
    };
  });
}

/** The drill to reach for, in work hard on taps the largest that passes, or null where no stocked drill does. mm. Source: common practice. */
export function usualDrill(
  thread: Thread,
  window: HoleWindow,
  drills: DrillChoice[],
  largest = false,
): DrillChoice | null {
  return bestDrill(drills, {
    listed: listedDrill(thread),
    target: targetHole(thread, window.major),
    largest,
    system: thread.system === 'unified' ? 'inch' : 'metric',
  });
}

/** Which of the holes on a line is the one for the thread: by its word, or because it fits. */

import type { Thread } from '../thread/thread';
import type { RawHole, Reading } from './reading';

/** Pitches below the major diameter between which a hole drawn beside a thread is taken for its drill. */
const LOOSE = { smallest: 2.2, largest: 0 };
/** The same for a bare diameter, which nothing else says to be a hole. */
const CLOSE = { smallest: 1.45, largest: 0.75 };

/** Whether a hole of this diameter (mm) may be the thread's. Source: derived. */
export function fitsThread(thread: Thread, diameter: number, bare = false): boolean {
  const { smallest, largest } = bare && thread.system !== 'pipe' ? CLOSE : LOOSE;
  const pitches = (thread.diameter - diameter) / thread.pitch;
  // The hole for a wire insert is wider than the screw.
  return thread.insert ? pitches > -0.7 && pitches < 0.1 : pitches < smallest && pitches > largest;
}

const equal = (a: number | undefined, b: number | undefined) =>
  a === undefined || b === undefined || Math.abs(a - b) < 1e-6;

export interface BoundHole {
  diameter?: number;
  depth?: number;
  hole: RawHole;
}

type Measure = (raw: RawHole) => { diameter: number | undefined; depth: number | undefined };

/**
 * The hole before tapping, in mm; what is another's is marked as not read. `measure` gives a raw hole's
 * lengths in mm. Source: common practice.
 */
export function bindHole(reading: Reading, thread: Thread, measure: Measure): BoundHole | null {
  let bound: BoundHole | null = null;
  const measured = reading.holes.map((hole) => ({ hole, ...measure(hole) }));
  const bare = ({ hole }: { hole: RawHole }) => !hole.depth && !hole.through;
  const named = measured.filter(({ diameter }) => diameter !== undefined);
  const drill =
    named.find(({ hole }) => hole.said) ??
    named.find((each) => fitsThread(thread, each.diameter!, bare(each)));
  // The drill first, so that a depth drawn apart from it is laid beside it.
  for (const each of [...(drill ? [drill] : []), ...measured.filter((other) => other !== drill)]) {
    const { hole, diameter, depth } = each;
    const foreign = diameter !== undefined && each !== drill && diameter !== drill?.diameter;
    if (foreign || (bound && !(equal(bound.diameter, diameter) && equal(bound.depth, depth)))) {
      for (const span of hole.spans) reading.mark(span, 'notRead');
      continue;
    }
    const whole: BoundHole = bound ?? { hole };
    if (whole.hole !== hole) {
      whole.hole = {
        ...whole.hole,
        through: whole.hole.through || hole.through,
        at: hole.at === 'point' ? 'point' : whole.hole.at,
      };
      whole.hole.depth ??= hole.depth!;
    }
    if (diameter !== undefined) whole.diameter ??= diameter;
    if (depth !== undefined) whole.depth ??= depth;
    bound = whole;
  }
  return bound;
}

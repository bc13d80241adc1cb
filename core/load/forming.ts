/**
 * A form tap: nothing is cut, the wall is pushed outward, and every turn of thread keeps rubbing.
 *
 * Its lead carries the whole profile, pushed in a little further with each lobe (from memory), so unlike a
 * cutting chamfer its work grows from the nose to the first full thread. Level from published ratios to a
 * cutting tap, which disagree (1.5 to 3 times); how it moves with the hole and along the stroke is derived.
 */

import type { Groove } from './torque';

const TAN30 = Math.tan(Math.PI / 6);

/**
 * Integral of pushed-in section × radius from penetration y1 to y2, mm³. At penetration y the profile
 * meets the wall over a width of P/8 + 2 y tan 30°. `groove.hole`: the hole before forming, mm.
 * Source: derived from ISO 68-1.
 */
export function formedMoment(groove: Groove, y1: number, y2: number): number {
  const crest = groove.pitch / 8;
  const slope = 2 * TAN30;
  const radius = groove.hole / 2;
  const at = (y: number) =>
    crest * radius * y + ((crest + slope * radius) * y ** 2) / 2 + (slope * y ** 3) / 3;
  return at(y2) - at(y1);
}

/** Height of thread pushed up from the hole's wall, mm; 0 where the hole is as large as the thread. Derived. */
export function formedHeight({ major, hole }: Groove): number {
  return Math.max(0, (major - hole) / 2);
}

/**
 * Forming torque in this hole over that in the usual one: the section that must be pushed aside.
 * mm. Source: derived.
 */
export function formHoleFactor(groove: Groove, usualHole: number): number {
  const usual = { ...groove, hole: usualHole };
  const whole = (each: Groove) => formedMoment(each, 0, formedHeight(each));
  return whole(usual) > 0 ? whole(groove) / whole(usual) : 1;
}

/**
 * Share of the lead's whole moment that work of a given thickness can hold at once: the heaviest part is
 * where the full thread begins. `threads` of lead, `thickness` mm. Source: derived.
 */
export function formedShare(groove: Groove, threads: number, thickness: number): number {
  const length = threads * groove.pitch;
  if (thickness >= length) return 1;
  const height = formedHeight(groove);
  const whole = formedMoment(groove, 0, height);
  return whole > 0 ? formedMoment(groove, height * (1 - thickness / length), height) / whole : 1;
}

/**
 * Which way the hole faces: gravity helps a chip out, holds it in, or leaves it lying.
 * Rules of the trade; nothing here is measured.
 */

import type { ChipCourse } from './direction';

export const ORIENTATIONS = ['down', 'sideways', 'up'] as const;

/** The way the tap travels as it goes in: `down` on a vertical machine, `sideways`, `up` overhead. */
export type Orientation = (typeof ORIENTATIONS)[number];

export const ORIENTATION_CODES = [
  'fluid-stays',
  'fluid-runs-out',
  'fluid-falls-away',
  'chips-lie-on-low-side',
  'chips-fall-out',
  'chips-fall-to-floor',
  'ahead-against-gravity',
  'ahead-falls-clear',
  'back-must-be-lifted',
  'back-falls-clear',
  'stand-clear-below',
] as const;

export type OrientationCode = (typeof ORIENTATION_CODES)[number];

const FLUID = { down: 'fluid-stays', sideways: 'fluid-runs-out', up: 'fluid-falls-away' } as const;

function aheadCode(orientation: Orientation, blind: boolean): OrientationCode | null {
  if (orientation === 'sideways') return 'chips-lie-on-low-side';
  if (orientation === 'up') return blind ? 'chips-fall-out' : 'ahead-against-gravity';
  return blind ? 'chips-fall-to-floor' : 'ahead-falls-clear';
}

function backCode(orientation: Orientation): OrientationCode {
  if (orientation === 'sideways') return 'chips-lie-on-low-side';
  return orientation === 'up' ? 'back-falls-clear' : 'back-must-be-lifted';
}

function staysCode(orientation: Orientation, blind: boolean): OrientationCode | null {
  if (orientation === 'sideways') return 'chips-lie-on-low-side';
  if (orientation === 'up') return 'chips-fall-out';
  return blind ? 'chips-fall-to-floor' : null;
}

/**
 * What to know of a hole that faces this way, the fluid first; a form tap leaves the fluid alone to think
 * of. No unit: words in, codes out. Source: `common-practice`.
 */
export function orientationNotes(
  orientation: Orientation,
  course: ChipCourse,
  blind: boolean,
): OrientationCode[] {
  const chip = {
    ahead: () => aheadCode(orientation, blind),
    back: () => backCode(orientation),
    stays: () => staysCode(orientation, blind),
    none: () => null,
  }[course]();
  const notes: OrientationCode[] = [FLUID[orientation]];
  if (chip) notes.push(chip);
  if (orientation === 'up') notes.push('stand-clear-below');
  return notes;
}

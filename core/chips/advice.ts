/**
 * Whether the way a tap sends its chips suits the hole. Rules of the trade (`common-practice`),
 * the same that decide a plan; here they stand alone, for a tap in the hand.
 */

import type { Material } from '../material/material';
import { chipsShort } from '../material/table';
import type { ChipCourse } from './direction';

/** Blind; blind with spare depth drilled below the thread; through; through with something below to keep clean. */
export const CHIP_HOLES = ['blind', 'blind-deep', 'through', 'through-closed'] as const;

export type ChipHole = (typeof CHIP_HOLES)[number];

export const CHIP_ADVICE_CODES = [
  'packs-on-floor',
  'needs-room-below',
  'falls-clear',
  'must-not-fall',
  'clears-the-hole',
  'lifted-for-nothing',
  'short-need-no-lift',
  'kept-out-below',
  'short-chips-lie',
  'long-chips-pack',
  'depends-on-chip',
  'some-fall',
  'no-chip',
  'form-if-ductile',
  'not-formable',
] as const;

export type ChipAdviceCode = (typeof CHIP_ADVICE_CODES)[number];

export interface ChipAdvice {
  /** `check`: right only if something else holds, which the code names. */
  verdict: 'right' | 'works' | 'check' | 'wrong';
  code: ChipAdviceCode;
  /** Which way this hole wants its chips; null where the material decides and is not known. */
  wanted: 'ahead' | 'back' | 'stays' | null;
}

type Ruling = Pick<ChipAdvice, 'verdict' | 'code'>;
type Work = Pick<Material, 'chips' | 'forming'>;

function ahead(hole: ChipHole): Ruling {
  switch (hole) {
    case 'blind':
      return { verdict: 'wrong', code: 'packs-on-floor' };
    case 'blind-deep':
      return { verdict: 'check', code: 'needs-room-below' };
    case 'through':
      return { verdict: 'right', code: 'falls-clear' };
    case 'through-closed':
      return { verdict: 'wrong', code: 'must-not-fall' };
  }
}

function back(hole: ChipHole, short: boolean | null): Ruling {
  if (hole === 'through') return { verdict: 'works', code: 'lifted-for-nothing' };
  if (hole === 'through-closed') return { verdict: 'right', code: 'kept-out-below' };
  if (short === true) return { verdict: 'works', code: 'short-need-no-lift' };
  return { verdict: 'right', code: 'clears-the-hole' };
}

function stays(hole: ChipHole, short: boolean | null): Ruling {
  if (short === false) return { verdict: 'check', code: 'long-chips-pack' };
  if (hole === 'through-closed') return { verdict: 'check', code: 'some-fall' };
  if (short === null) return { verdict: 'check', code: 'depends-on-chip' };
  return { verdict: 'right', code: 'short-chips-lie' };
}

function formed(work: Work | undefined): Ruling {
  if (work?.forming === 'no') return { verdict: 'wrong', code: 'not-formable' };
  if (work?.forming === 'yes') return { verdict: 'right', code: 'no-chip' };
  return { verdict: 'check', code: 'form-if-ductile' };
}

function wantedIn(hole: ChipHole, short: boolean | null): ChipAdvice['wanted'] {
  if (hole === 'through-closed') return 'back';
  if (short === null) return hole === 'through' ? 'ahead' : null;
  if (short) return 'stays';
  return hole === 'through' ? 'ahead' : 'back';
}

/**
 * Judges a chip's course against a hole. `work`: the material, if it is known; without it, what depends
 * on the length of the chip comes out as `check`. No unit: words in, words out. Source: `common-practice`.
 */
export function chipAdvice(course: ChipCourse, hole: ChipHole, work?: Work): ChipAdvice {
  const short = work ? chipsShort(work.chips) : null;
  const ruling = {
    ahead: () => ahead(hole),
    back: () => back(hole, short),
    stays: () => stays(hole, short),
    none: () => formed(work),
  }[course]();
  return { ...ruling, wanted: wantedIn(hole, short) };
}

/**
 * The torque that twists a tap off, with how far that is known, and what a job takes of it.
 * Web, shape of the section and steel are each uncertain; the ends of the band take all three at their end.
 */

import type { Spread } from '../spread';
import { HSS_SHEAR, SECTION_FACTOR } from './strength';

/** Spread of the steel's shear strength, as factors on `HSS_SHEAR`. An estimate. From memory. */
export const STEEL_SPREAD: Spread = { low: 0.75, likely: 1, high: 1.25 };

/**
 * Section of a fluted tap over its web circle: the least and most that idealised sections give lie
 * further apart (1.15 to 2.1); real ones have worn edges and helices. Derived.
 */
export const SECTION_SPREAD: Spread = {
  low: SECTION_FACTOR.low,
  likely: SECTION_FACTOR.expected,
  high: 2.1,
};

/** Torque that twists off a web, N·m. `web` mm; `section` and `steel` as factors. Derived, `from-memory`. */
export function twistOff(web: number, section: number, steel: number): number {
  return (HSS_SHEAR * steel * section * Math.PI * web ** 3) / 16 / 1000;
}

/**
 * Breaking torque of a tap, N·m: expected with everything at its likely value, and with web, section and
 * steel together at their weak and strong ends. `web` mm. Source: derived, `from-memory` for the steel.
 */
export function breakingBand(web: Spread): { low: number; expected: number; high: number } {
  return {
    low: twistOff(web.low, SECTION_SPREAD.low, STEEL_SPREAD.low),
    expected: twistOff(web.likely, SECTION_SPREAD.likely, STEEL_SPREAD.likely),
    high: twistOff(web.high, SECTION_SPREAD.high, STEEL_SPREAD.high),
  };
}

/** Shares of the breaking torque above which a tap is watched, sharp and worn. Common practice. */
export const WATCH = { good: 1 / 4, sharp: 1 / 3, worn: 1 / 2 } as const;

/** `easy`: within a quarter; `good`: within a third sharp and half worn; `high`: more; `breaks`: worn above its strength. */
export type ShareJudgement = 'easy' | 'good' | 'high' | 'breaks';

/** Judges what a job takes of a tap. `sharp` and `worn` as fractions of the breaking torque. Source: `common-practice`. */
export function judgeShare({ sharp, worn }: { sharp: number; worn: number }): ShareJudgement {
  if (worn > 1) return 'breaks';
  if (sharp > WATCH.sharp || worn > WATCH.worn) return 'high';
  return sharp <= WATCH.good ? 'easy' : 'good';
}

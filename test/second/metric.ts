/**
 * Metric limits a second time: basic sizes from √3 to sixty places, tolerances from the formulas of
 * ISO 965-1 instead of its tables. A table's cell may differ from its formula by a step of the preferred
 * numbers, where the standard smoothed it; by more it may not.
 */

import { exact, rounded, squareRoot, times } from './exact';

const ROOT = squareRoot(exact('3'));
const part = (share: string): bigint => times(exact(share), ROOT);
/** 3√3/8, 5√3/8 and, for the J profile, 9√3/16 of the pitch. */
const PITCH = part('0.375');
const MINOR = part('0.625');
const MINOR_J = part('0.5625');

/** Basic sizes, micrometres. */
export function basicsAgain(diameter: number, pitch: number, j = false) {
  const major = exact(String(diameter));
  const p = exact(String(pitch));
  return {
    pitch: Number(rounded(major - times(PITCH, p), 3)),
    minor: Number(rounded(major - times(j ? MINOR_J : MINOR, p), 3)),
  };
}

const FORTIETH = 10 ** (1 / 40);
const BOUNDS = [0.99, 1.4, 2.8, 5.6, 11.2, 22.4, 45, 90, 180, 355];

/** Pitch-diameter tolerance by its formula, micrometres, before it is made a preferred number. */
export function pitchToleranceAgain(diameter: number, pitch: number, grade: number): number {
  const at = BOUNDS.findIndex((bound) => diameter <= bound);
  const mean = Math.exp((Math.log(BOUNDS[at - 1]!) + Math.log(BOUNDS[at]!)) / 2);
  const share = [0.85, 1.06, 1.32, 1.7, 2.12][grade - 4]!;
  return share * 90 * Math.exp(0.4 * Math.log(pitch) + 0.1 * Math.log(mean));
}

export function minorToleranceAgain(pitch: number, grade: number): number {
  const six = pitch < 1 ? 433 * pitch - 190 * Math.exp(1.22 * Math.log(pitch)) : 230 * pitch ** 0.7;
  return [0.63, 0.8, 1, 1.25, 1.6][grade - 4]! * six;
}

/** How many fortieths of a decade lie between what the core says and the formula. */
export function stepsApart(here: number, formula: number): number {
  return Math.abs(Math.log(here / formula) / Math.log(FORTIETH));
}

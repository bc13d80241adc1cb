/** Lengths of a callout, in the unit that its thread implies. */

import { inchToMm } from '../units';

/** Reads `15`, `.75`, `3/4`, `1-1/2`. Null for what is no positive number. Source: derived. */
export function plainNumber(text: string): number | null {
  const found = /^(?:(\d+)[- ])?(\d+)\/(\d+)$/.exec(text.trim());
  if (found) {
    const [, whole = '0', top, bottom] = found;
    const value = Number(whole) + Number(top) / Number(bottom);
    return Number.isFinite(value) && value > 0 ? value : null;
  }
  const value = Number(text);
  return Number.isFinite(value) && value > 0 ? value : null;
}

export interface ReadLength {
  /** mm */
  value: number;
  /** True when neither the text nor the thread's system said so, only plain sense. */
  guessedUnit: boolean;
}

/**
 * A length in mm: by its own unit, else by the thread's system unless that is absurd for a hole of this
 * diameter (mm) and the other unit is not (`1/4-20 ↧ 12` is mm, `M8 ↧ .63` is inches). Common practice.
 */
export function lengthInMm(
  text: string,
  unit: string | undefined,
  inchThread: boolean,
  diameter: number,
): ReadLength | null {
  const value = plainNumber(text);
  if (value === null) return null;
  if (unit) return { value: /^mm/i.test(unit) ? value : inchToMm(value), guessedUnit: false };
  const asIs = inchThread ? inchToMm(value) : value;
  const other = inchThread ? value : inchToMm(value);
  const sensible = (mm: number) => mm >= diameter / 5 && mm <= 12 * diameter;
  if (!sensible(asIs) && sensible(other)) return { value: other, guessedUnit: true };
  return { value: asIs, guessedUnit: false };
}

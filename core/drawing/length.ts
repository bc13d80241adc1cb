/** Lengths of a callout: how they are written, their tolerances, and the unit that a thread implies. */

import { inchToMm } from '../units';
import type { LengthLimits } from './types';

/** Of an inch, as rules are divided, and in lowest terms: `16/20` are two depths. */
const FRACTION = String.raw`\d*[13579]\/(?:2|4|8|16|32|64)`;
/** Whole, so that no pattern is content with the first figures of it. */
const NUMBER = String.raw`(?:\d+[- ]${FRACTION}|${FRACTION}|\d*\.\d+|\d+\.?)(?!\d|\.\d)`;

/** Plain limits of a length: `±0.5`, `+1/-0`, `+1`, `-0.5`, `(+1 / 0)`. */
const TOLERANCE = String.raw`\s*\(?(?:±\s*\d*\.?\d+|\+\s*\d*\.?\d+(?:\s*[\/ ]\s*-?\s*\d*\.?\d+)?|[-±]?\s*0?\.?0+\s*\/\s*\+\s*\d*\.?\d+|-?\s*0(?:\.0+)?\s*\/\s*[-+]\s*\d*\.?\d+|\s-\s?\d*\.?\d+)\)?(?![\w.\/-]|\s?x)`;

const BOUND = String.raw`\s*\(?\b(?:min|max)(?:imum)?\b\.?\)?`;

/** IN is inches, but for `16 IN WELDMENT`: a word that says where is no word that goes with a length. */
const INCH = String.raw`in\b(?!\s+\d+\s*(?:places?|plcs?|pl|holes?|off)\b)(?!\s+(?!deep|dp|depth|dia|min|max|full|eff|thd|thread|tap|drill|drl|thru|through|long|lg|typ|ref|to\b|from\b|at\b|and\b|for\b|x\b)[a-z]{2,})\.?`;

/** A length with its unit, tolerance and bound. Groups: length, unit, tolerance, bound. */
export const LENGTH = String.raw`(?<length>${NUMBER})\s*(?<unit>mm\b|${INCH}|inch(?:es)?|")?(?<tolerance>${TOLERANCE})?(?<bound>${BOUND})?`;
/** A length by itself, of which nothing else is asked. Groups as given. */
export const plainLength = (name: string) =>
  String.raw`(?<${name}>${NUMBER})\s*(?<${name}Unit>mm\b|${INCH}|inch(?:es)?\b|")?`;

/** A length as it stands in the text. */
export interface RawLength {
  text: string;
  unit: string | undefined;
  tolerance?: string | undefined;
  bound?: 'min' | 'max' | undefined;
}

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
  /** mm for one of its units, so that a tolerance follows it. */
  scale: number;
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
  const inch = inchToMm(1);
  const as = (scale: number, guessedUnit: boolean) => ({
    value: value * scale,
    guessedUnit,
    scale,
  });
  if (unit) return as(/^mm/i.test(unit) ? 1 : inch, false);
  const own = inchThread ? inch : 1;
  const other = inchThread ? 1 : inch;
  const sensible = (mm: number) => mm >= diameter / 5 && mm <= 12 * diameter;
  return !sensible(value * own) && sensible(value * other) ? as(other, true) : as(own, false);
}

function signed(tolerance: string): { plus: number; minus: number } | null {
  const both = /±\s*(\d*\.?\d+)/.exec(tolerance);
  if (both) return { plus: Number(both[1]), minus: Number(both[1]) };
  const plus = /\+\s*(\d*\.?\d+)/.exec(tolerance);
  const minus = /-\s*(\d*\.?\d+)/.exec(tolerance);
  if (!plus && !minus) return null;
  return { plus: Number(plus?.[1] ?? 0), minus: Number(minus?.[1] ?? 0) };
}

/** Least and deepest of a length in mm, from its tolerance or its MIN and MAX; null where it has neither. Source: derived. */
export function lengthLimits(raw: RawLength, { value, scale }: ReadLength): LengthLimits | null {
  const away = raw.tolerance === undefined ? null : signed(raw.tolerance);
  if (away) {
    const least = value - away.minus * scale;
    return { ...(least > 0 && { least }), deepest: value + away.plus * scale };
  }
  if (raw.bound === 'min') return { least: value };
  return raw.bound === 'max' ? { deepest: value } : null;
}

/** The length that a pattern's groups hold. Source: derived. */
export function rawLength(groups: Readonly<Record<string, string | undefined>>): RawLength {
  const { length = '', unit, tolerance, bound } = groups;
  return {
    text: length,
    unit,
    ...(tolerance !== undefined && { tolerance }),
    ...(bound !== undefined && { bound: /min/i.test(bound) ? 'min' : 'max' }),
  };
}

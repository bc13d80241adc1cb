/**
 * Numbers as people type them: decimal comma, fractions, a unit behind. The core gets mm and N·m;
 * whatever cannot be read is refused with a code, never guessed.
 */

import { parseDecimal } from '../../core/units';

const VULGAR: Record<string, string> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

export interface TypedNumber {
  value: number;
  /** True when it was typed as a fraction: `3/4`, `1 1/2`. */
  fraction: boolean;
  /** What stood behind the number, lower case, without spaces; empty when nothing did. */
  unit: string;
}

const FRACTION = /^([-+]?)(?:(\d+)[ -]+)?(\d+)\/(\d+)$/;

function tidy(text: string): string {
  return text
    .replace(/[½¼¾⅛⅜⅝⅞]/g, (sign) => ` ${VULGAR[sign]}`)
    .replace(/⁄/g, '/')
    .replace(/[−–—]/g, '-')
    .replace(/[\s\u00a0\u202f]+/g, ' ')
    .trim();
}

function readFraction(digits: string): number | null {
  const match = FRACTION.exec(digits);
  if (!match) return null;
  const [, sign, whole = '0', top, bottom] = match;
  if (Number(bottom) === 0) return null;
  const size = Number(whole) + Number(top) / Number(bottom);
  return sign === '-' ? -size : size;
}

/** Reads `16`, `12,5`, `.75 in`, `3/4"`, `1-1/2 inch`. Null for anything else. */
export function readTyped(text: string): TypedNumber | null {
  const match = /^([-+]?[\d.,/ -]*\d[.,]?|[-+]?[.,]\d+)\s*(\D*)$/.exec(tidy(text));
  if (!match) return null;
  const digits = (match[1] ?? '').trim();
  const unit = (match[2] ?? '').replace(/\s/g, '').toLowerCase();
  const ratio = readFraction(digits);
  if (ratio !== null) return { value: ratio, fraction: true, unit };
  const size = parseDecimal(digits.replace(/^[-+]/, ''));
  return size === null
    ? null
    : { value: digits.startsWith('-') ? -size : size, fraction: false, unit };
}

/** A plain number in the one unit a field knows: rev/min, degrees. Null when it is anything else. */
export function readPlain(text: string, units: readonly string[]): number | null {
  const typed = readTyped(text);
  return typed && (typed.unit === '' || units.includes(typed.unit)) ? typed.value : null;
}

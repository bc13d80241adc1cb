/** A typed length in whatever unit it was typed, as mm. */

import { inchToMm, roundDecimals } from '../../core/units';
import { readTyped } from './readNumber';

/** Unit that a bare number is taken to be in. */
export type LengthUnit = 'mm' | 'in' | 'µm';

export interface TypedLength {
  mm: number;
  /** The unit it was read in. */
  unit: LengthUnit;
  /** True when nothing but a number stood there, so that the page's unit decided. */
  bare: boolean;
}

const NAMES: Record<string, LengthUnit> = {
  mm: 'mm',
  millimetre: 'mm',
  millimetres: 'mm',
  millimeter: 'mm',
  millimeters: 'mm',
  in: 'in',
  'in.': 'in',
  inch: 'in',
  inches: 'in',
  '"': 'in',
  '″': 'in',
  '”': 'in',
  "''": 'in',
  µm: 'µm',
  μm: 'µm',
  um: 'µm',
};

const TO_MM: Record<LengthUnit, (value: number) => number> = {
  mm: (value) => value,
  in: inchToMm,
  µm: (value) => roundDecimals(value / 1000, 9),
};

/**
 * Reads `16`, `12,5`, `.75 in`, `3/4`, `3/4"`, `16 mm`. A fraction without a unit is in inches,
 * whatever the page shows: nobody writes millimetres as 3/4. Null when it is not a length.
 */
export function readLength(text: string, base: LengthUnit): TypedLength | null {
  const typed = readTyped(text);
  if (!typed) return null;
  if (typed.unit === '') {
    const unit = typed.fraction ? 'in' : base;
    return { mm: TO_MM[unit](typed.value), unit, bare: !typed.fraction };
  }
  const unit = NAMES[typed.unit];
  return unit ? { mm: TO_MM[unit](typed.value), unit, bare: false } : null;
}

/**
 * The same length for a page that now reads bare numbers in another unit: `16` becomes `16 mm`
 * when the page turns to inches, and `16` again when it turns back. Nothing is converted, so
 * what was typed stays what it was.
 */
export function restateLength(text: string, from: LengthUnit, to: LengthUnit): string {
  if (from === to) return text;
  const read = readLength(text, from);
  if (!read) return text;
  if (read.bare) return `${text.trim()} ${from}`;
  if (read.unit !== to || text.includes('/')) return text;
  return text.replace(/\s*[^\d\s.,]+\.?\s*$/, '');
}

/**
 * Numbers as text that is read back to the same number, to the last bit: what travels in an address or is
 * kept in a job must give the same answer there as here. Rounded as for reading where nothing is lost by it.
 */

import { mmToInch, parseDecimal } from '../../core/units';
import { readLength, type LengthUnit } from '../fields/readLength';
import { decimals } from '../words/format';

/** A number in plain digits, as short as it can be; fields read no powers of ten. */
export function exactNumber(value: number): string {
  const [digits = '', power] = String(Math.abs(value)).split('e');
  if (power === undefined) return String(value);
  const [whole = '', part = ''] = digits.split('.');
  const shift = Number(power);
  const plain =
    shift < 0
      ? `0.${'0'.repeat(-shift - 1)}${whole}${part}`
      : whole + part.padEnd(shift, '0').slice(0, shift);
  return value < 0 ? `-${plain}` : plain;
}

/** With at most `most` decimals where that says it all, in full otherwise. */
export function tidyNumber(value: number, most: number): string {
  const short = decimals(value, most);
  return parseDecimal(short) === value ? short : exactNumber(value);
}

const IN_UNIT: Record<LengthUnit, (mm: number) => string[]> = {
  mm: (mm) => [decimals(mm, 3)],
  in: (mm) => [decimals(mmToInch(mm), 4), decimals(mmToInch(mm), 5)],
  µm: (mm) => [decimals(mm * 1000, 3)],
};

/**
 * A length for a field whose bare numbers are in `unit`: without a unit where a rounded number is the
 * length exactly, otherwise in mm, and saying so.
 */
export function exactLength(mm: number, unit: LengthUnit): string {
  const short = IN_UNIT[unit](mm).find((text) => readLength(text, unit)?.mm === mm);
  if (short !== undefined) return short;
  return unit === 'mm' ? exactNumber(mm) : `${exactNumber(mm)} mm`;
}

/** A length on its way to another page, whose unit is not known here: always with its unit, and exact. */
export function sentLength(mm: number, unit: 'mm' | 'in'): string {
  const short = exactLength(mm, unit);
  return short.endsWith('mm') ? short : `${short} ${unit}`;
}

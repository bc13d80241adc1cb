/** Sizes of inch threads: how they are written and which standard size a decimal means. */

import { NUMBER_SIZES } from '../data/unified-series';
import { numberSize } from './unified-series';

/** A size as read: its usual spelling and its diameter, inches. */
export interface InchSize {
  /** `1/4`, `1-1/4`, `2`, `#10`, `.390`. */
  size: string;
  diameter: number;
  /** Spelt as a bare whole number: number size or inches is still open. */
  bare?: boolean;
  /** Spelt as a decimal. */
  decimal?: boolean;
}

/** Half a thousandth: a decimal this near a standard size is that size. */
const SNAP = 0.0005;

/** `1-1/4` of 80 sixty-fourths. */
export function fractionName(sixtyFourths: number): string {
  const whole = Math.floor(sixtyFourths / 64);
  let top = sixtyFourths % 64;
  let bottom = 64;
  while (top > 0 && top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  if (top === 0) return String(whole);
  return (whole > 0 ? `${whole}-` : '') + `${top}/${bottom}`;
}

/** The number size of a diameter, if it is one exactly: .125 is #5. Inches. */
export function numberName(diameter: number): string | null {
  const size = NUMBER_SIZES.find((number) => numberSize(number) === diameter);
  return size === undefined ? null : `#${size}`;
}

/** Reads a decimal as the standard size within half a thousandth, else as it stands. Inches. */
export function decimalSize(diameter: number): InchSize {
  const reach = SNAP + 1e-9;
  const number = NUMBER_SIZES.find((size) => Math.abs((numberSize(size) ?? 0) - diameter) <= reach);
  const sixteenths = Math.round(diameter * 16);
  const nearFraction = sixteenths >= 4 && Math.abs(sixteenths / 16 - diameter) <= reach;
  if (number !== undefined) {
    return { size: `#${number}`, diameter: numberSize(number) ?? diameter, decimal: true };
  }
  if (nearFraction) {
    return { size: fractionName(sixteenths * 4), diameter: sixteenths / 16, decimal: true };
  }
  return { size: decimalName(diameter), diameter, decimal: true };
}

/** Three to six decimals, no leading zero: `.390`, `1.2345`. */
function decimalName(diameter: number): string {
  return diameter
    .toFixed(6)
    .replace(/(\.\d{3}\d*?)0+$/, '$1')
    .replace(/^0/, '');
}

/** Numbers that only calculators show. */

import { inchToMm, mmToInch, roundUp } from '../../core/units';
import { decimals, length, significant, type Unit } from '../words/format';

/** Keeps a range on one line: `1.5–2` does not break at its dash. */
export function unbroken(range: string): string {
  return range.replace(/–/g, '–\u2060');
}

/** A volume given in mm³, to 2 figures: `180 mm³`, `0.011 in³`. */
export function volume(cubicMm: number, unit: Unit): string {
  return unit === 'mm'
    ? `${significant(cubicMm, 2)} mm³`
    : `${significant(mmToInch(mmToInch(mmToInch(cubicMm))), 2)} in³`;
}

/** A length that is only an estimate, rounded up to what the estimate is worth: `46 mm`, `1.8 in`. */
export function roughLength(mm: number, unit: Unit): string {
  if (mm === 0) return length(0, unit);
  if (unit === 'in')
    return `${decimals(roundUp(mmToInch(mm), mm < inchToMm(0.5) ? 0.05 : 0.1), 2)} in`;
  return `${decimals(roundUp(mm, mm < 10 ? 0.5 : 1), 1)} mm`;
}

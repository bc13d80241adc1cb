/** Numbers that only calculators show. */

import { mmToInch } from '../../core/units';
import { significant, type Unit } from '../words/format';

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

/** A hardness as a certificate gives it: `30 HRC`, `180 HB`, `190 HV`; a bare number is Brinell. */

import { HARDNESS_SCALES, type Hardness, type HardnessScale } from '../../core/material/hardness';
import { readTyped } from './readNumber';

const SCALES: Record<string, HardnessScale> = {
  '': 'HB',
  hb: 'HB',
  hbw: 'HB',
  hrc: 'HRC',
  rc: 'HRC',
  hv: 'HV',
};

/** Null when it is not a hardness on a scale that can be used. */
export function readHardness(text: string): Hardness | null {
  const swapped = text.trim().replace(/^(h[a-z]{1,2}|rc)\s*([\d.,]+)$/i, '$2 $1');
  const typed = readTyped(swapped);
  const scale = typed && SCALES[typed.unit];
  return typed && scale && HARDNESS_SCALES.includes(scale) ? { value: typed.value, scale } : null;
}

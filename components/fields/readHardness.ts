/** A hardness as a certificate gives it: `30 HRC`, `180 HB`, `190 HV`; a bare number is Brinell. */

import { HARDNESS_SCALES, type Hardness, type HardnessScale } from '../../core/material/hardness';
import { findHardness } from '../../core/material/read-hardness';
import { readTyped } from './readNumber';

const SCALES: Record<string, HardnessScale> = {
  '': 'HB',
  hb: 'HB',
  hbw: 'HB',
  hrc: 'HRC',
  rc: 'HRC',
  hv: 'HV',
};

/** `58-60 HRC`, `58 to 60 HRC`: the hard end is what the tap meets. */
function readRange(text: string): Hardness | null {
  const found = findHardness(text.toUpperCase().replace(/[–—−]/g, '-'));
  const scale = HARDNESS_SCALES.find((each) => each === found?.scale);
  return found && scale && /^[ ;]*$/.test(found.rest) ? { value: found.value, scale } : null;
}

/** Null when it is not a hardness on a scale that can be used. */
export function readHardness(text: string): Hardness | null {
  const swapped = text.trim().replace(/^(h[a-z]{1,2}|rc)\s*([\d.,]+)$/i, '$2 $1');
  const typed = readTyped(swapped);
  const scale = typed && SCALES[typed.unit];
  if (!typed || !scale) return readRange(text);
  return { value: typed.value, scale };
}

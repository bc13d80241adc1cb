/** A typed torque as N·m: machine plates say N·m, lbf·ft or lbf·in. */

import { readTyped } from './readNumber';

const NEWTON_METRES: Record<string, number> = {
  '': 1,
  nm: 1,
  ftlb: 1.3558179483,
  ftlbf: 1.3558179483,
  lbft: 1.3558179483,
  lbfft: 1.3558179483,
  inlb: 0.112984829,
  inlbf: 0.112984829,
  lbin: 0.112984829,
  lbfin: 0.112984829,
};

/** Reads `30`, `30 N·m`, `22 ft-lbs`, `195 lbf·in`. Null when it is not a torque. */
export function readTorque(text: string): number | null {
  const typed = readTyped(text);
  if (!typed) return null;
  // ft-lbs, in-lbs, lbs·in: people put the pounds in the plural.
  const unit = typed.unit.replace(/[·.*×-]/g, '').replace('lbs', 'lb');
  const factor = NEWTON_METRES[unit];
  return factor === undefined ? null : typed.value * factor;
}

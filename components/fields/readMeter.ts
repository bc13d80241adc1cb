/** What a person read on the machine: a torque, or a load meter's percent above idling. */

import { readTyped } from './readNumber';
import { readTorque } from './readTorque';

export type MeterRead = { torque: number } | { percent: number };

/** Reads `4.5`, `4.5 N·m`, `3.3 lbf·ft`, `15 %`. Null when it is neither. */
export function readMeter(text: string): MeterRead | null {
  const typed = readTyped(text);
  if (typed?.unit === '%') return { percent: typed.value };
  const torque = readTorque(text);
  return torque === null ? null : { torque };
}

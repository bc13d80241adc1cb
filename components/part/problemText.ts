/** What is wrong with a field of the part, and what to type instead. */

import { say } from '../words/say';
import type { Unit } from '../words/format';
import { LABELS, PROBLEMS } from '../words/en/part';
import type { PartProblem } from './state';

export function problemText({ field, code }: PartProblem, unit: Unit): string {
  const label = LABELS[field];
  switch (code) {
    case 'missing':
      return field === 'holes' ? PROBLEMS.noHoles : PROBLEMS.noMaterial;
    case 'too-many':
      return PROBLEMS.tooMany;
    case 'not-a-length':
      return say(PROBLEMS.length[unit], { label });
    case 'not-a-torque':
      return say(PROBLEMS.torque, { label });
    default:
      return say(PROBLEMS.speed, { label });
  }
}

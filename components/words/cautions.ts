/** Cautions for beside a hazard, and the fixed one about what this site does not do. */

import { CAUTIONS, type CautionId, type CautionWords } from './en/cautions';

export { NOT_A_RATING, type CautionId, type CautionWords } from './en/cautions';

/** Where a tool turns, whatever else is done: what a card, a sheet or a class starts with. */
export const STANDARD_CAUTIONS: readonly CautionId[] = [
  'entanglement',
  'part-spins',
  'reaching-in',
  'flying-chips',
  'chips-by-hand',
  'compressed-air',
  'fluid',
];

/** Title, text and sources of one caution. */
export function cautionText(id: CautionId): CautionWords {
  return CAUTIONS[id];
}

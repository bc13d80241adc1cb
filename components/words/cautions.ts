/** Cautions for beside a hazard, and the fixed one about what this site does not do. */

import { CAUTIONS, type CautionId, type CautionWords } from './en/cautions';

export { NOT_A_RATING, type CautionId, type CautionWords } from './en/cautions';

/** Title, text and sources of one caution. */
export function cautionText(id: CautionId): CautionWords {
  return CAUTIONS[id];
}

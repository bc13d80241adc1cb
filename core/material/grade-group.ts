/** How a group of designations stands in its table. */

import type { SourceId } from '../sources';
import type { MaterialId } from './material';

/**
 * What the row hangs on besides the name. `fixed`: nothing; `temper`: an aluminium that is soft until aged;
 * `quenched`: annealed, or quenched and tempered near 30 HRC; `tool`: annealed, or hard; `prehard`: sold at
 * 28–34 HRC, `mould`: the same and often asked for harder; `case`: soft until its skin is hardened; `aged`: solution treated, or aged to 31–47 HRC; `martensitic`: stainless that is quenched.
 */
export type StateRule =
  | 'fixed'
  | 'temper'
  | 'quenched'
  | 'tool'
  | 'prehard'
  | 'mould'
  | 'aged'
  | 'aged-nickel'
  | 'aged-copper'
  | 'martensitic'
  | 'case';

export interface GradeGroup {
  row: MaterialId;
  rule: StateRule;
  /** How the equivalence of the names, and their row, reached us. */
  source: SourceId;
  /** One grade a line, its names apart by spaces. */
  grades: string;
}

/** What the tap-drill calculator asks. */

import { MATERIAL_IDS } from '../../../core/material/material';
import { UNITS_FIELD, type Inputs } from '../calculator';
import { DRAWERS } from '../drawer';

export type Name = 'thread' | 'material' | 'drills' | 'oversize';

export const INPUTS: Inputs<Name> = {
  fields: [
    { name: 'thread', initial: '' },
    { name: 'material', initial: '', choices: MATERIAL_IDS },
    { name: 'drills', initial: 'all', choices: DRAWERS },
    { name: 'oversize', initial: '' },
    UNITS_FIELD,
  ],
  kinds: { thread: 'thread', oversize: 'length' },
};

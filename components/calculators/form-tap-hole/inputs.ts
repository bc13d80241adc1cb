/** What the form-tap calculator asks. */

import { MATERIAL_IDS } from '../../../core/material/material';
import { UNITS_FIELD, type Inputs } from '../calculator';
import { DRAWERS } from '../drawer';

export type Name = 'thread' | 'material' | 'drills' | 'hole';

export const INPUTS: Inputs<Name> = {
  fields: [
    { name: 'thread', initial: '' },
    { name: 'material', initial: '', choices: MATERIAL_IDS },
    { name: 'drills', initial: 'all', choices: DRAWERS },
    { name: 'hole', initial: '' },
    UNITS_FIELD,
  ],
  kinds: { thread: 'thread', hole: 'length' },
};

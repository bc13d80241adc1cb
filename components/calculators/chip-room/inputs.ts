/** What the chip-room calculator asks. */

import { CHAMFER_CLASSES } from '../../../core/chamfer/chamfer';
import { MATERIAL_IDS } from '../../../core/material/material';
import { UNITS_FIELD, type Inputs } from '../calculator';

export type Name = 'thread' | 'full' | 'hole' | 'chamfer' | 'material' | 'point';

export const INPUTS: Inputs<Name> = {
  fields: [
    { name: 'thread', initial: '' },
    { name: 'full', initial: '' },
    { name: 'hole', initial: '' },
    { name: 'chamfer', initial: 'plug', choices: CHAMFER_CLASSES },
    { name: 'material', initial: '', choices: MATERIAL_IDS },
    { name: 'point', initial: '' },
    UNITS_FIELD,
  ],
  kinds: { thread: 'thread', full: 'length', hole: 'length' },
  callout: { full: 'full', hole: 'hole' },
};

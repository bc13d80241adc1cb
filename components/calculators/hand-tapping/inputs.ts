/** What the hand-tapping calculator asks. */

import { MATERIAL_IDS } from '../../../core/material/material';
import { UNITS_FIELD, type Inputs } from '../calculator';

export type Name = 'thread' | 'hole' | 'full' | 'shoulder' | 'set' | 'flutes' | 'material';

export const HOLES = ['blind', 'through'] as const;
export const SETS = ['same-diameter', 'serial'] as const;
export const FLUTES = ['straight-flute', 'spiral-point', 'spiral-flute'] as const;

export const INPUTS: Inputs<Name> = {
  fields: [
    { name: 'thread', initial: '' },
    { name: 'hole', initial: '', choices: HOLES },
    { name: 'full', initial: '' },
    { name: 'shoulder', initial: '' },
    { name: 'set', initial: 'same-diameter', choices: SETS },
    { name: 'flutes', initial: 'straight-flute', choices: FLUTES },
    { name: 'material', initial: '', choices: MATERIAL_IDS },
    UNITS_FIELD,
  ],
  kinds: { thread: 'thread', full: 'length', shoulder: 'length' },
  callout: { full: 'full', hole: 'shoulder', kind: 'hole' },
};

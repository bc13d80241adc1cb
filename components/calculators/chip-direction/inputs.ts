/** What the chip-direction calculator asks. */

import { MATERIAL_IDS } from '../../../core/material/material';
import { UNITS_FIELD, type Inputs } from '../calculator';

export type Name = 'see' | 'angle' | 'hand' | 'hole' | 'material';

/** What can be seen of a tap, and `angle`: the lean of its face, measured. */
export const SEEN = ['straight', 'climbs-right', 'climbs-left', 'gash', 'none', 'angle'] as const;

export type Seen = (typeof SEEN)[number];

export const HANDS = ['right', 'left'] as const;

export const HOLES = ['blind', 'blind-deep', 'through', 'through-closed'] as const;

export const INPUTS: Inputs<Name> = {
  fields: [
    { name: 'see', initial: '', choices: SEEN },
    { name: 'angle', initial: '' },
    { name: 'hand', initial: 'right', choices: HANDS },
    { name: 'hole', initial: '', choices: HOLES },
    { name: 'material', initial: '', choices: MATERIAL_IDS },
    UNITS_FIELD,
  ],
  kinds: {},
};

/** What the chamfer calculator asks. */

import { MATERIAL_IDS } from '../../../core/material/material';
import { UNITS_FIELD, type Inputs } from '../calculator';

export type Name = 'thread' | 'count' | 'tap' | 'material' | 'thickness';

export const TAPS = ['spiral-point', 'spiral-flute', 'straight-flute'] as const;

export const INPUTS: Inputs<Name> = {
  fields: [
    { name: 'thread', initial: '' },
    { name: 'count', initial: '' },
    { name: 'tap', initial: 'straight-flute', choices: TAPS },
    { name: 'material', initial: '', choices: MATERIAL_IDS },
    { name: 'thickness', initial: '' },
    UNITS_FIELD,
  ],
  kinds: { thread: 'thread', thickness: 'length' },
  callout: { thickness: 'thickness' },
};

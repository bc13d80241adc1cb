/** What the torque calculator asks. */

import { CHAMFER_CLASSES } from '../../../core/chamfer/chamfer';
import { MATERIAL_IDS } from '../../../core/material/material';
import { UNITS_FIELD, type Inputs } from '../calculator';

export type Name = 'thread' | 'tap' | 'hole' | 'depth' | 'material' | 'spindle' | 'chamfer' | 'web';

export const TAPS = ['spiral-point', 'spiral-flute', 'straight-flute', 'form'] as const;

export const HOLES = ['blind', 'through'] as const;

export const INPUTS: Inputs<Name> = {
  fields: [
    { name: 'thread', initial: '' },
    { name: 'tap', initial: '', choices: TAPS },
    { name: 'hole', initial: 'blind', choices: HOLES },
    { name: 'depth', initial: '' },
    { name: 'material', initial: '', choices: MATERIAL_IDS },
    { name: 'spindle', initial: '' },
    { name: 'chamfer', initial: '', choices: CHAMFER_CLASSES },
    { name: 'web', initial: '' },
    UNITS_FIELD,
  ],
  kinds: { thread: 'thread', depth: 'length', spindle: 'torque', web: 'length' },
};

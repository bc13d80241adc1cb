/** What the spindle calculator asks. */

import { MATERIAL_IDS } from '../../../core/material/material';
import { UNITS_FIELD, type Inputs } from '../calculator';

export type Name = 'points' | 'thread' | 'tap' | 'material' | 'depth' | 'rpm' | 'torque';

export const TAPS = ['spiral-point', 'spiral-flute', 'straight-flute', 'form'] as const;

export const INPUTS: Inputs<Name> = {
  fields: [
    { name: 'thread', initial: '' },
    { name: 'tap', initial: '', choices: TAPS },
    { name: 'material', initial: '', choices: MATERIAL_IDS },
    { name: 'points', initial: '' },
    { name: 'depth', initial: '' },
    { name: 'rpm', initial: '' },
    { name: 'torque', initial: '' },
    UNITS_FIELD,
  ],
  kinds: { thread: 'thread', depth: 'length', torque: 'torque' },
  callout: { full: 'depth' },
};

/** What the tap-strength calculator asks. */

import { UNITS_FIELD, type Inputs } from '../calculator';

export type Name = 'thread' | 'tap' | 'flutes' | 'web' | 'torque';

export const TAPS = ['spiral-point', 'spiral-flute', 'straight-flute', 'form'] as const;

/** Flutes of a straight-flute tap; empty: usual for the size. */
export const FLUTES = ['3', '4'] as const;

export const INPUTS: Inputs<Name> = {
  fields: [
    { name: 'thread', initial: '' },
    { name: 'tap', initial: '', choices: TAPS },
    { name: 'flutes', initial: '', choices: FLUTES },
    { name: 'web', initial: '' },
    { name: 'torque', initial: '' },
    UNITS_FIELD,
  ],
  kinds: { thread: 'thread', web: 'length', torque: 'torque' },
};

/** What is asked about a tap that broke and stayed in the hole. */

import { MATERIAL_IDS } from '../../../core/material/material';
import { UNITS_FIELD, type Inputs } from '../calculator';

export type Name =
  'size' | 'tap' | 'material' | 'stub' | 'hold' | 'machine' | 'boss' | 'steel' | 'value' | 'cost';

export const TAPS = ['straight-flute', 'spiral-point', 'spiral-flute', 'form'] as const;
export const STUBS = ['proud', 'flush', 'deep'] as const;
export const HOLDS = ['loose', 'wedged'] as const;
export const YES_NO = ['yes', 'no'] as const;

export const INPUTS: Inputs<Name> = {
  fields: [
    { name: 'size', initial: '' },
    { name: 'tap', initial: '', choices: TAPS },
    { name: 'material', initial: '', choices: MATERIAL_IDS },
    { name: 'stub', initial: '', choices: STUBS },
    { name: 'hold', initial: '', choices: HOLDS },
    { name: 'machine', initial: '', choices: YES_NO },
    { name: 'boss', initial: '', choices: YES_NO },
    { name: 'steel', initial: 'no', choices: YES_NO },
    { name: 'value', initial: '' },
    { name: 'cost', initial: '' },
    UNITS_FIELD,
  ],
  kinds: { size: 'thread' },
};

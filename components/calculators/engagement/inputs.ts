/** What the engagement calculator asks. */

import { PURPOSES } from '../../../core/engagement/purposes';
import { SCREW_GRADES } from '../../../core/engagement/screws';
import { MATERIAL_IDS } from '../../../core/material/material';
import { UNITS_FIELD, type Inputs } from '../calculator';

export type Name = 'thread' | 'screw' | 'material' | 'purpose' | 'have' | 'shear';

export const INPUTS: Inputs<Name> = {
  fields: [
    { name: 'thread', initial: '' },
    { name: 'screw', initial: '', choices: SCREW_GRADES },
    { name: 'material', initial: '', choices: MATERIAL_IDS },
    { name: 'purpose', initial: 'static', choices: PURPOSES },
    { name: 'have', initial: '' },
    { name: 'shear', initial: '' },
    UNITS_FIELD,
  ],
  kinds: { thread: 'thread', have: 'length' },
  callout: { full: 'have' },
};

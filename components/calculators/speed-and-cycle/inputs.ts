/** What the speed-and-cycle calculator asks. */

import { COATINGS, CYCLE_FLUIDS, SUBSTRATES } from '../../../core/cycle/tool-speed';
import { MATERIAL_IDS } from '../../../core/material/material';
import { UNITS_FIELD, type Inputs } from '../calculator';

export type Name =
  | 'thread'
  | 'full'
  | 'material'
  | 'program'
  | 'mode'
  | 'rpm'
  | 'feed'
  | 'tip'
  | 'start'
  | 'substrate'
  | 'coating'
  | 'fluid'
  | 'drive'
  | 'acceleration'
  | 'most'
  | 'retract';

export const PROGRAM_UNITS = ['mm', 'in'] as const;
export const MODES = ['per-minute', 'per-revolution'] as const;
export const CYCLE_DRIVES = ['synchronous', 'floating', 'reversing-head'] as const;

export const INPUTS: Inputs<Name> = {
  fields: [
    { name: 'thread', initial: '' },
    { name: 'full', initial: '' },
    { name: 'material', initial: '', choices: MATERIAL_IDS },
    { name: 'program', initial: 'mm', choices: PROGRAM_UNITS },
    { name: 'mode', initial: 'per-minute', choices: MODES },
    { name: 'rpm', initial: '' },
    { name: 'feed', initial: '' },
    { name: 'tip', initial: '' },
    { name: 'start', initial: '' },
    { name: 'substrate', initial: 'hss', choices: SUBSTRATES },
    { name: 'coating', initial: 'plain', choices: COATINGS },
    { name: 'fluid', initial: 'oil', choices: CYCLE_FLUIDS },
    { name: 'drive', initial: 'synchronous', choices: CYCLE_DRIVES },
    { name: 'acceleration', initial: '' },
    { name: 'most', initial: '' },
    { name: 'retract', initial: '' },
    UNITS_FIELD,
  ],
  kinds: { thread: 'thread', full: 'length', tip: 'length', start: 'length' },
  callout: { full: 'full' },
};

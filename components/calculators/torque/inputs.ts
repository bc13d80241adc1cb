/** What the torque calculator asks. */

import { CHAMFER_CLASSES } from '../../../core/chamfer/chamfer';
import { MATERIAL_IDS } from '../../../core/material/material';
import { UNITS_FIELD, type Inputs } from '../calculator';

export type Name =
  | 'thread'
  | 'tap'
  | 'hole'
  | 'depth'
  | 'material'
  | 'spindle'
  | 'chamfer'
  | 'web'
  | 'nose'
  | 'fluid'
  | 'cross'
  | 'crossAt'
  | 'crossSides'
  | 'measured'
  | 'edge'
  | 'own'
  | 'kc'
  | 'mc'
  | 'hardness';

export const TAPS = ['spiral-point', 'spiral-flute', 'straight-flute', 'form'] as const;

export const HOLES = ['blind', 'through'] as const;

export const FLUIDS = ['oil', 'dry'] as const;

/** Whether a bore that crosses goes on through the far side. */
export const SIDES = ['one', 'both'] as const;

/** The tap when its torque was read. */
export const EDGES = ['sharp', 'worn'] as const;

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
    { name: 'nose', initial: '' },
    { name: 'fluid', initial: 'oil', choices: FLUIDS },
    { name: 'cross', initial: '' },
    { name: 'crossAt', initial: '' },
    { name: 'crossSides', initial: 'both', choices: SIDES },
    { name: 'measured', initial: '' },
    { name: 'edge', initial: 'sharp', choices: EDGES },
    { name: 'own', initial: '' },
    { name: 'kc', initial: '' },
    { name: 'mc', initial: '' },
    { name: 'hardness', initial: '' },
    UNITS_FIELD,
  ],
  kinds: {
    thread: 'thread',
    depth: 'length',
    spindle: 'torque',
    web: 'length',
    nose: 'length',
    cross: 'length',
    crossAt: 'length',
  },
  callout: { full: 'depth', kind: 'hole' },
};

/** What the blind-hole calculator asks. */

import { CHAMFER_CLASSES } from '../../../core/chamfer/chamfer';
import { UNITS_FIELD, type Inputs } from '../calculator';

export type Name = 'find' | 'thread' | 'full' | 'hole' | 'chamfer' | 'drive' | 'centre' | 'point';

export const FINDS = ['hole', 'full', 'chamfer'] as const;

export type Find = (typeof FINDS)[number];

/** The classes, and the shortest chamfer of a hand set, for finishing down to a floor. */
export const CHAMFERS = [...CHAMFER_CLASSES, 'form-f'] as const;

export type ChamferChoice = (typeof CHAMFERS)[number];

export const DRIVES = ['synchronous', 'floating', 'reversing-head', 'hand'] as const;

export const INPUTS: Inputs<Name> = {
  fields: [
    { name: 'find', initial: 'hole', choices: FINDS },
    { name: 'thread', initial: '' },
    { name: 'full', initial: '' },
    { name: 'hole', initial: '' },
    { name: 'chamfer', initial: '', choices: CHAMFERS },
    { name: 'drive', initial: 'synchronous', choices: DRIVES },
    { name: 'centre', initial: '' },
    { name: 'point', initial: '' },
    UNITS_FIELD,
  ],
  kinds: { thread: 'thread', full: 'length', hole: 'length', centre: 'length' },
  callout: { full: 'full', hole: 'hole' },
};

/** A pump cover with a broken tap in it: invented, like everything shown as an example. */

import { initialValues } from '../../state/address';
import { INPUTS } from './inputs';

export const EXAMPLE = {
  ...initialValues(INPUTS.fields),
  size: 'M8',
  tap: 'straight-flute',
  material: 'al-cast',
  stub: 'deep',
  hold: 'loose',
  machine: 'yes',
  boss: 'no',
};

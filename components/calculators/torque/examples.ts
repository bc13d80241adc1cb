/** A fine inch thread in tough steel on the smaller machine, which stands it sharp and worn: invented. */

import { initialValues } from '../../state/address';
import { INPUTS } from './inputs';

export const EXAMPLE = {
  ...initialValues(INPUTS.fields),
  thread: '9/16-18 UNF-2B',
  tap: 'spiral-flute',
  depth: '.80 in',
  material: 'steel-alloy-30hrc',
  spindle: '30',
};

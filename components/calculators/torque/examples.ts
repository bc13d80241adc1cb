/** An inch thread in tough steel on the smaller machine, where nothing is left over: invented. */

import { initialValues } from '../../state/address';
import { INPUTS } from './inputs';

export const EXAMPLE = {
  ...initialValues(INPUTS.fields),
  thread: '1/2-13 UNC-2B',
  tap: 'spiral-flute',
  depth: '3/4 in',
  material: 'steel-alloy-30hrc',
  spindle: '30',
};

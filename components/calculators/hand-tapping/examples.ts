/** A bracket on the bench: invented, like everything shown as an example. */

import { initialValues } from '../../state/address';
import { INPUTS } from './inputs';

export const EXAMPLE = {
  ...initialValues(INPUTS.fields),
  thread: 'M6x1',
  hole: 'blind',
  full: '12',
  shoulder: '16.5',
  material: 'steel-low',
};

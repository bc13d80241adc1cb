/** A tap for a gland bore, near what it can take: invented, like everything shown as an example. */

import { initialValues } from '../../state/address';
import { INPUTS } from './inputs';

export const EXAMPLE = {
  ...initialValues(INPUTS.fields),
  thread: 'M8x1.25',
  tap: 'spiral-flute',
  torque: '4.5',
};

/** A flange on the larger machining centre: invented, like everything shown as an example. */

import { initialValues } from '../../state/address';
import { INPUTS } from './inputs';

export const EXAMPLE = {
  ...initialValues(INPUTS.fields),
  thread: 'M12x1.75',
  tap: 'spiral-point',
  material: 'steel-medium',
  points: '50 60; 1200 60; 8000 9',
};

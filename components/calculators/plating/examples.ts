/** Zinc on a bracket of the irrigation valves: invented, like everything shown as an example. */

import { initialValues } from '../../state/address';
import { INPUTS } from './inputs';

export const EXAMPLE = {
  ...initialValues(INPUTS.fields),
  thread: 'M8x1.25-6H',
  least: '0.005',
  most: '0.008',
};

/** The valve body's main thread, special pitch and all: invented, like everything shown as an example. */

import { initialValues } from '../../state/address';
import { INPUTS } from './inputs';

export const EXAMPLE = {
  ...initialValues(INPUTS.fields),
  thread: 'M20x1.5-6H-LH',
  engagement: '30',
};

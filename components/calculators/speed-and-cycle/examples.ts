/** M8 in a valve body at Copperfell Works, on a control that was set up in inches. */

import { initialValues } from '../../state/address';
import { INPUTS } from './inputs';

export const EXAMPLE = {
  ...initialValues(INPUTS.fields),
  thread: 'M8x1.25-6H',
  full: '20',
  material: 'steel-medium',
  program: 'in',
  rpm: '500',
  feed: '24',
  acceleration: '60',
};

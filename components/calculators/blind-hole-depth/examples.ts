/** Twelve millimetres of M6 in a pump cover: an invented job, like everything shown as an example. */

import { initialValues } from '../../state/address';
import { INPUTS } from './inputs';

export const EXAMPLE = {
  ...initialValues(INPUTS.fields),
  thread: 'M6x1-6H',
  full: '12',
  chamfer: 'semi-bottoming',
};

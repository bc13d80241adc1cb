/** A pump housing's flange in 6061: invented, like everything shown as an example. */

import { initialValues } from '../../state/address';
import { INPUTS } from './inputs';

export const EXAMPLE = {
  ...initialValues(INPUTS.fields),
  thread: 'M10x1.5-6H',
  material: 'al-wrought',
};

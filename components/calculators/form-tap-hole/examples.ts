/** Cover screws of a pump in 6061, formed: invented, like everything shown as an example. */

import { initialValues } from '../../state/address';
import { INPUTS } from './inputs';

export const EXAMPLE = {
  ...initialValues(INPUTS.fields),
  thread: 'M6x1-6H',
  material: 'al-wrought',
  hole: '5.60',
};

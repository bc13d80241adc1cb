/** A gearbox foot that somebody would like to tap with the spiral point already in the spindle: invented. */

import { initialValues } from '../../state/address';
import { INPUTS } from './inputs';

export const EXAMPLE = {
  ...initialValues(INPUTS.fields),
  thread: 'M10x1.5-6H',
  full: '20',
  hole: '35',
  material: 'steel-medium',
};

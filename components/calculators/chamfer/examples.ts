/** A tap out of the drawer, its chamfer counted, before it goes into a thin cover: invented. */

import { initialValues } from '../../state/address';
import { INPUTS } from './inputs';

export const EXAMPLE = {
  ...initialValues(INPUTS.fields),
  thread: 'M10x1.5-6H',
  count: '4',
  tap: 'spiral-point',
  material: 'steel-medium',
  thickness: '5',
};

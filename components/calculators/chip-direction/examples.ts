/** A tap from the drawer, held over a pump cover: invented, like everything shown as an example. */

import { initialValues } from '../../state/address';
import { INPUTS } from './inputs';

export const EXAMPLE = {
  ...initialValues(INPUTS.fields),
  see: 'gash',
  hole: 'blind',
  material: 'stainless-austenitic',
};

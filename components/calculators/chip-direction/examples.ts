/** A tap from the drawer, held over a pump cover: invented, like everything shown as an example. */

import { initialValues } from '../../state/address';
import { CALCULATOR } from './state';

export const EXAMPLE = {
  ...initialValues(CALCULATOR.fields),
  see: 'gash',
  hand: 'right',
  hole: 'blind',
  material: 'stainless-austenitic',
};

/** First-off of a valve body: invented, like everything shown as an example. */

import { initialValues } from '../../state/address';
import { INPUTS } from './inputs';

export const EXAMPLE = {
  ...initialValues(INPUTS.fields),
  thread: 'M10x1.5-6H',
  go: 'all',
  turns: '2.5',
  plain: 'right',
  made: '10',
  full: '14',
};

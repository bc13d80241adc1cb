/** The factors on torque as English says them, straight from the core: the same in every sentence. */

import { STYLES, WEAR } from '../../../core/tap/styles';
import { decimals } from '../format';

const range = ({ low, high }: { low: number; high: number }) =>
  `${decimals(low, 2)} to ${decimals(high, 2)}`;

/** A form tap over a tap that cuts: `1.5 to 3`. */
export const FORM_TIMES = range(STYLES.form.torque);

/** A worn tap over a sharp one: `1.3 to 2`. */
export const WORN_TIMES = range(WEAR);

/** Where a clutch, a tapping head or a load monitor should let go, so that the tap does not. */

import type { TapChoice } from '../plan/types';
import { clutchSetting } from '../tap/clutch';

/**
 * A torque limit to set, N·m, as the range from 1.5 to 2 times the expected sharp torque, held to half
 * of what breaks the tap. Null where no setting serves: no torque is planned (thread mill), or the
 * sharp tap already runs at half its strength.
 * Source: `common-practice`; better from a torque measured on the machine.
 */
export function torqueLimit(
  tap: Pick<TapChoice, 'torque' | 'tapShare'>,
): { low: number; high: number } | null {
  const { expected } = tap.torque;
  if (expected <= 0 || tap.tapShare.sharp <= 0) return null;
  const set = clutchSetting(expected, expected / tap.tapShare.sharp);
  return set && { low: set.low, high: set.high };
}

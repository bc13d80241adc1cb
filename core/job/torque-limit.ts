/** Where a clutch, a tapping head or a load monitor should let go, so that the tap does not. */

import type { TapChoice } from '../plan/types';

/** Times the sharp torque. Common practice. */
const TIMES_SHARP = { low: 1.5, high: 2 };

/** Share of the breaking torque that the setting must stay under. Common practice. */
const MOST_OF_BREAKING = 1 / 2;

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
  const most = (MOST_OF_BREAKING * expected) / tap.tapShare.sharp;
  if (most <= expected) return null;
  return {
    low: Math.min(TIMES_SHARP.low * expected, most),
    high: Math.min(TIMES_SHARP.high * expected, most),
  };
}

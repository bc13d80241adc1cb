/** Where a clutch, a tapping head or a load monitor should let go, so that the tap does not. */

/** Times the sharp torque. Common practice. */
const TIMES_SHARP = { low: 1.5, high: 2 };

/** Share of the breaking torque that the setting must stay under. Common practice. */
export const MOST_OF_BREAKING = 1 / 2;

export interface ClutchSetting {
  /** N·m */
  low: number;
  high: number;
  /** True where half the breaking torque, not twice the sharp torque, set the upper end. */
  held: boolean;
}

/**
 * Torque to set, N·m: 1.5 to 2 times the sharp torque, held to half of what breaks the tap. `sharp` and
 * `breaks` in N·m. Null where no setting serves: no torque, or a sharp tap already at half its strength.
 * Best from a torque measured on the machine. Source: `common-practice`.
 */
export function clutchSetting(sharp: number, breaks: number): ClutchSetting | null {
  const most = MOST_OF_BREAKING * breaks;
  if (!(sharp > 0) || most <= sharp) return null;
  return {
    low: Math.min(TIMES_SHARP.low * sharp, most),
    high: Math.min(TIMES_SHARP.high * sharp, most),
    held: most < TIMES_SHARP.high * sharp,
  };
}

/** Rules of thumb for the hole before a tap, kept so that they can be shown where they hold and where they fail. */

/** “Diameter less pitch”, mm. Common practice; holds as a starting point for coarse and fine 60° threads. */
export function diameterLessPitch(major: number, pitch: number): number {
  return major - pitch;
}

/**
 * The mistake of taking a percent of thread for a share of the pitch: `percent` of it, taken off the
 * diameter, mm. Lengths mm, percent of any base. Derived: the height of a thread is not its pitch.
 */
export function diameterLessShareOfPitch(major: number, pitch: number, percent: number): number {
  return major - (percent / 100) * pitch;
}

/** The mistake of taking a percent of thread for a percent of the diameter, mm. Lengths mm. Derived. */
export function holeAtShare(major: number, percent: number): number {
  return (percent / 100) * major;
}

/** Hole over major diameter, a share: what “the drill is 85 % of the size” measures. Lengths mm. Derived. */
export function shareOfDiameter(major: number, hole: number): number {
  return hole / major;
}

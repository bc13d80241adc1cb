/**
 * Rules of thumb about depth, kept so that lessons can show where they hold and where they fail.
 * Nothing in the plan is decided by them.
 */

/** Hole depth over thread depth in the common rule “a quarter deeper than the thread”. Common practice. */
export const QUARTER_RULE = 1.25;

/** Depth of hole, mm, that the rule gives for a depth of full thread in mm. Source: `common-practice`. */
export function quarterRuleDepth(fullThread: number): number {
  return QUARTER_RULE * fullThread;
}

/**
 * Room left between the end of the full thread and the shoulder, in pitches: what a chamfer and the
 * stop clearance must fit into. Lengths mm, pitch above 0; negative where the thread is deeper than
 * the hole. Source: derived.
 */
export function roomInPitches(shoulder: number, fullThread: number, pitch: number): number {
  return (shoulder - fullThread) / pitch;
}

/**
 * Depth that a 90° countersink takes off the thread, mm: from its diameter at the face down to the hole.
 * Both diameters mm; 0 where the countersink is no wider than the hole. Source: derived.
 */
export function countersinkTakes(wide: number, hole: number): number {
  return Math.max(0, (wide - hole) / 2);
}

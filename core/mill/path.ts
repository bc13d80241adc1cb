/** The way a thread mill goes round: turns, lifts, and the time they take. */

/** Rows of teeth: one, or a comb of that length, mm. */
export type Rows = 'one' | { length: number };

/** Free of float dust, as 20 / 1.25 is exactly 16 turns. */
const ceil = (value: number): number => Math.ceil(value - 1e-9);
const floor = (value: number): number => Math.floor(value + 1e-9);

/** How a comb climbs: turns of one pitch each, and how far it is lifted between them, whole pitches in mm. */
export interface Climb {
  turns: number;
  /** mm between the starts of two turns; one pitch where the helix runs on without a break. */
  lift: number;
}

/**
 * Turns for a depth of full thread, mm. One row climbs pitch by pitch and one turn more; a comb longer than the
 * thread by a pitch needs one turn, a shorter one as many lifts as cover it. Source: `derived`.
 */
export function climbOf(fullThread: number, pitch: number, rows: Rows): Climb {
  if (rows === 'one') return { turns: ceil(fullThread / pitch) + 1, lift: pitch };
  const lift = Math.max(1, floor(rows.length / pitch)) * pitch;
  if (rows.length >= fullThread + pitch - 1e-9) return { turns: 1, lift };
  return { turns: Math.max(2, ceil((fullThread + pitch) / lift)), lift };
}

/** Feed of the cutter's centre, mm/min, where its edge shall have `atTeeth`: the centre goes the shorter way. Source: `derived`. */
export function feedAtCentre(atTeeth: number, major: number, cutter: number): number {
  return (atTeeth * (major - cutter)) / major;
}

/** Seconds of `passes` equal passes of `turns` turns on a path (mm across) at a feed of the centre, mm/min, without approach. Source: `derived`. */
export function millSeconds(passes: number, turns: number, path: number, feed: number): number {
  return (passes * turns * Math.PI * path * 60) / feed;
}

/** How far a tap has to go past the far side of a through hole, and what something beneath it costs. Depths in mm from the face. */

import { EXIT_PITCHES, throughTip, type DepthChain } from './depth';

export interface ThroughHole {
  /** Thickness of the work, mm. */
  thickness: number;
  /** Free room under the far face, mm; Infinity where nothing is there. */
  clearBelow: number;
}

export interface ThroughReach {
  /** Where the tap's nose ends for a thread right through, mm. */
  tip: number;
  /** How far that is past the far face, mm. */
  past: number;
  /** How much of that is not there, mm; 0 where it is clear. */
  short: number;
  /** Full thread the tap leaves when it stops short of what is beneath, mm. */
  fullThread: number;
}

/**
 * The travel of a tap through the work: all of its chamfer and a pitch more past the far side.
 * Lengths mm. Source: derived; the pitch beyond is common practice.
 */
export function throughReach(
  { thickness, clearBelow }: ThroughHole,
  chain: Omit<DepthChain, 'clearance'>,
): ThroughReach {
  const tip = throughTip(thickness, { ...chain, clearance: 0 });
  const past = tip - thickness;
  const short = Math.max(0, past - clearBelow);
  const fullThread = Math.max(0, thickness - short);
  return { tip, past, short, fullThread };
}

/** Pitches kept past the chamfer, for whoever shows the chain part by part. No unit. Common practice. */
export const PAST_PITCHES = EXIT_PITCHES;

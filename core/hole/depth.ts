/**
 * The chain of depths in a tapped hole: full thread, chamfer, clearance, cone.
 * Depths in mm from the face.
 */

export interface DepthChain {
  pitch: number;
  /** Threads of chamfer. */
  chamferThreads: number;
  /** Length of an external centre on the nose, mm; 0 for a flat nose. */
  centre: number;
  /** Clearance kept between nose and shoulder, pitches. */
  clearance: number;
}

/** Room a tap needs below the full thread in a blind hole, mm. Source: derived. */
export function roomBelowThread(chain: DepthChain): number {
  return (chain.chamferThreads + chain.clearance) * chain.pitch + chain.centre;
}

/** Depth of the tap's tip when the full thread ends at `fullThread`, mm. Source: derived. */
export function tipDepth(fullThread: number, chain: DepthChain): number {
  return fullThread + chain.chamferThreads * chain.pitch + chain.centre;
}

/** Full thread a hole of this shoulder depth yields, mm; 0 when the hole is shorter than the room. Source: derived. */
export function obtainableThread(shoulder: number, chain: DepthChain): number {
  return Math.max(0, shoulder - roomBelowThread(chain));
}

/** Travel past the far side of a through hole: one pitch beyond the chamfer. Common practice. */
export const EXIT_PITCHES = 1;

/** How far the tap must go for a thread right through, mm. `thickness` mm. Source: derived. */
export function throughTip(thickness: number, chain: DepthChain): number {
  return tipDepth(thickness, chain) + EXIT_PITCHES * chain.pitch;
}

/** Stop clearance by drive, pitches: worst case planned for, and the usual. Common practice. */
export const STOP_CLEARANCE = {
  synchronous: 1,
  floating: 3,
  'reversing-head': 3,
  hand: 0.5,
} as const;

/** Clearance a careful hand keeps when finishing to a floor, pitches. Common practice. */
export const HAND_FINISH_CLEARANCE = 0.25;

/**
 * Where the chip goes: a matter of which way the cutting face leans.
 * Common practice; the reason is oblique cutting: the chip leaves towards the end of the edge that trails,
 * about as far from square as the edge is skewed (`stabler-1951`, a first approximation). Only the side is used here.
 */

import type { Hand } from '../thread/thread';

/** Pushed ahead of the tap, drawn back out, left to lie in the flute, or no chip at all. */
export type ChipCourse = 'ahead' | 'back' | 'stays' | 'none';

/**
 * Which way a cutting face sends its chip.
 * `lean`: angle of the face to the tap's axis in degrees, positive when it leans as a right-hand helix
 * does, negative as a left-hand helix, 0 when parallel to the axis; −60 to 60.
 * `cut`: the hand of the thread. A left-hand tap mirrors a right-hand one.
 * Source: `common-practice`.
 */
export function chipCourse(lean: number, cut: Hand): Exclude<ChipCourse, 'none'> {
  const axialRake = cut === 'right' ? lean : -lean;
  if (axialRake > 0) return 'back';
  return axialRake < 0 ? 'ahead' : 'stays';
}

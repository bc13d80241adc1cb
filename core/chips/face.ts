/**
 * What a person at the bench can see of a tap, and how its cutting face leans.
 * Hold the tap upright and look at the flute that faces you.
 */

import type { Hand } from '../thread/thread';

export const FACES = ['straight', 'climbs-right', 'climbs-left', 'gash', 'none'] as const;

/**
 * `straight`: flutes and cutting faces run along the axis. `climbs-right`, `climbs-left`: the flutes
 * wind, and the one facing you rises to that side. `gash`: straight flutes with a slanting cut through
 * the first threads. `none`: no flutes that cut.
 */
export type Face = (typeof FACES)[number];

/** Usual lean of a winding flute and of the gash at a spiral point, degrees to the axis. Common practice. */
const LEAN = { flute: 35, gash: 10 };

/**
 * How the cutting face of a tap leans, degrees to its axis, positive as a right-hand helix leans; null
 * where nothing cuts. A gash is ground to drive chips ahead of its own tap, so it leans against the hand
 * of the thread. Source: `common-practice`.
 */
export function faceLean(face: Face, cut: Hand): number | null {
  switch (face) {
    case 'straight':
      return 0;
    case 'climbs-right':
      return LEAN.flute;
    case 'climbs-left':
      return -LEAN.flute;
    case 'gash':
      return cut === 'right' ? -LEAN.gash : LEAN.gash;
    case 'none':
      return null;
  }
}

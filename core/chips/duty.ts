/**
 * What the flutes are for: they cannot store a hole's chips, they must move them.
 * Section of the flutes from an idealised tap: half of the ring between web and hole is land. Common practice.
 */

import { grooveGeometry, type Groove } from '../load/torque';
import type { ChipForm } from '../material/material';
import { PACKED_BULKING } from './room';

/** Share of the ring between web and hole that is open flute. Common practice. */
const OPEN = 0.5;

export interface FluteDuty {
  /** Open section of all flutes in the hole, mm². */
  section: number;
  /** Metal removed from each mm of thread, mm³/mm, and its volume as packed chips. */
  solid: number;
  packed: number;
  /**
   * Packed chips over flute room, each for one mm of depth; above 1 the flutes cannot hold their own share.
   * Null where the web fills the hole.
   */
  duty: number | null;
}

/**
 * How the chips of each mm of thread compare with the flute beside it. Lengths mm; `web` smaller than the
 * hole. Sources: `packed-chips`, `common-practice`, derived.
 */
export function fluteDuty(groove: Groove, web: number, chips: ChipForm): FluteDuty {
  const ring = (Math.PI / 4) * (groove.hole ** 2 - Math.min(web, groove.hole) ** 2);
  const section = OPEN * ring;
  const solid = grooveGeometry(groove).volumePerDepth;
  const packed = solid * PACKED_BULKING[chips];
  return { section, solid, packed, duty: section > 0 ? packed / section : null };
}

/**
 * Whether chips that are driven ahead of a tap fit into the hole below it, over the whole range of how
 * tightly chips pack. Bulking from a chip-conveyor guide, packed: an estimate, so the range is the answer.
 */

import { grooveGeometry, type Groove } from '../load/torque';
import type { ChipForm } from '../material/material';
import { FILL_LIMIT, lengthAtBulk, lengthForChips, PACKED_BULKING, roomVolume } from './room';

/** Chips by how tightly they pack. */
export const CHIP_BULKS = ['short', 'medium', 'long'] as const;

export type ChipBulk = (typeof CHIP_BULKS)[number];

/** Under which bulk a material's chip falls: dust and needles pack like short chips. Source: `packed-chips`. */
export function bulkOf(chips: ChipForm): ChipBulk {
  return chips === 'medium' || chips === 'long' ? chips : 'short';
}

export interface ChipFitInput extends Groove {
  /** Full thread, mm. */
  fullThread: number;
  /** Free bore between the tap's nose at its deepest and the shoulder, mm; below 0 where the tap does not even reach. */
  free: number;
  /** Included angle of the drill's point, degrees, 180 for a flat bottom. */
  pointAngle: number;
}

export interface PackedChips {
  bulk: ChipBulk;
  /** Packed volume over solid volume. */
  factor: number;
  /** Volume of the chips as they lie packed, mm³. */
  volume: number;
  /** Free bore they want below the nose, mm, and how much deeper the hole must be for that. */
  needed: number;
  deeper: number;
  fits: boolean;
}

export interface ChipFit {
  /** Metal removed from the full thread, mm³. */
  solid: number;
  /** Free bore under the nose, mm, and all the room there with the drill's cone, mm³. */
  free: number;
  room: number;
  packed: PackedChips[];
}

/**
 * Sets the chips of a thread against the room below the tap. Lengths mm, volumes mm³. The hole must be
 * smaller than the thread. Sources: `packed-chips`, `chip-bulking`, derived.
 */
export function chipFit(input: ChipFitInput): ChipFit {
  const { hole, pointAngle } = input;
  const free = Math.max(0, input.free);
  const solid = grooveGeometry(input).volumePerDepth * input.fullThread;
  const room = roomVolume(hole, free, pointAngle);
  const packed = CHIP_BULKS.map((bulk): PackedChips => {
    const factor = PACKED_BULKING[bulk];
    const volume = solid * factor;
    const needed = lengthForChips(solid, bulk, hole, pointAngle);
    const fits = volume <= FILL_LIMIT * room + 1e-9;
    // A tap that has no free bore at all is short of that too.
    const deeper = fits ? 0 : needed - input.free;
    return { bulk, factor, volume, needed, deeper, fits };
  });
  return { solid, free, room, packed };
}

/**
 * Free bore below the nose, mm, that chips want against how many times the solid metal they fill, from
 * `from` to `to`. Sources: `packed-chips`, `chip-bulking`, derived.
 */
export function bulkCurve(
  input: ChipFitInput,
  from: number,
  to: number,
  steps = 14,
): { factor: number; needed: number }[] {
  const solid = grooveGeometry(input).volumePerDepth * input.fullThread;
  return Array.from({ length: steps + 1 }, (_, index) => {
    const factor = from + ((to - from) * index) / steps;
    return { factor, needed: lengthAtBulk(solid, factor, input.hole, input.pointAngle) };
  });
}

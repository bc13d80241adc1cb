/**
 * Whether chips driven ahead of a tap fit into the hole below it.
 * Loose chips by a conveyor guide; how tight a tap packs them is an estimate of ours, not from tapping tests.
 */

import type { ChipForm } from '../material/material';

/** Volume of packed chips over volume of solid metal. Source: `packed-chips`. */
export const PACKED_BULKING: Record<ChipForm, number> = {
  powder: 4,
  short: 4,
  needles: 4,
  medium: 8,
  long: 12,
};

/**
 * Volume of loose chips over volume of solid metal, by their kind, least and most: what a heap takes that
 * nobody packs. Source: `chip-bulking`.
 */
export const LOOSE_BULKING = {
  fine: { min: 3, max: 6 },
  broken: { min: 6, max: 9 },
  coils: { min: 11, max: 17 },
} as const;

/** Chips are taken to fit while they fill no more than this share of the room. Common practice. */
export const FILL_LIMIT = 0.7;

/** Length of free hole that dust wants below the tap, in diameters of the thread. Common practice. */
export const DUST_POCKET = 0.4;

/**
 * Length of a drill's cone, mm, from its diameter (mm) and included point angle
 * (degrees, above 0 to 180; 180 is a flat bottom). Derived from geometry.
 */
export function coneLength(hole: number, pointAngle: number): number {
  return hole / (2 * Math.tan((pointAngle * Math.PI) / 360));
}

/** Free volume under a tap in a blind hole, mm³: `length` mm of bore and the drill's cone. Derived. */
export function roomVolume(hole: number, length: number, pointAngle: number): number {
  const section = (Math.PI * hole ** 2) / 4;
  return section * (Math.max(0, length) + coneLength(hole, pointAngle) / 3);
}

/**
 * Length of free hole, mm, that chips pushed ahead need below the tap's nose when they take `factor`
 * times the volume of the solid metal. `solid` mm³, `hole` mm, `pointAngle` degrees. Never negative.
 * Source: `packed-chips`, derived.
 */
export function lengthAtBulk(
  solid: number,
  factor: number,
  hole: number,
  pointAngle: number,
): number {
  const wanted = (solid * factor) / FILL_LIMIT;
  const section = (Math.PI * hole ** 2) / 4;
  return Math.max(0, wanted / section - coneLength(hole, pointAngle) / 3);
}

/**
 * Length of free hole, mm, that chips pushed ahead need below the tap's nose, packed.
 * `solid`: metal removed, mm³; `hole` mm; `pointAngle` degrees. Never negative. Source: `packed-chips`.
 */
export function lengthForChips(
  solid: number,
  chips: ChipForm,
  hole: number,
  pointAngle: number,
): number {
  return lengthAtBulk(solid, PACKED_BULKING[chips], hole, pointAngle);
}

/** What would have to change before a tap that drives its chips ahead may be used in a blind hole. */

import { grooveGeometry, type Groove } from '../load/torque';
import type { Formability } from '../material/material';
import { CHIP_BULKS, type ChipBulk } from './fit';
import { coneLength, FILL_LIMIT, lengthForChips, PACKED_BULKING } from './room';

export interface AheadInput {
  groove: Groove;
  bulk: ChipBulk;
  /** Full thread, mm. */
  fullThread: number;
  /** From the end of the full thread to the tap's tip, mm: the longest chamfer, and a centre if it has one. */
  nose: number;
  /** Least room kept between tip and shoulder, mm. */
  clearance: number;
  /** Deepest shoulder the drawing allows, mm; Infinity where it sets none. */
  shoulder: number;
  /** Included angle of the drill's point, degrees. */
  pointAngle: number;
  forming: Formability;
}

export const AHEAD_WAYS = [
  'fits-already',
  'deeper-hole',
  'shorter-thread',
  'chip-that-breaks',
  'draw-chips-back',
  'form-instead',
  'hole-through',
] as const;

export type AheadWay = (typeof AHEAD_WAYS)[number];

export interface Way {
  way: AheadWay;
  /** mm, or for a chip that breaks the packing factor it must have at most. */
  numbers: Record<string, number>;
}

const LOOSEST_FIRST = [...CHIP_BULKS].reverse();

/** Shoulder that the chips of this bulk want under the tap, mm. */
function shoulderFor(input: AheadInput, bulk: ChipBulk): number {
  const { groove, fullThread, nose, clearance, pointAngle } = input;
  const solid = grooveGeometry(groove).volumePerDepth * fullThread;
  const room = lengthForChips(solid, bulk, groove.hole, pointAngle);
  return fullThread + nose + Math.max(room, clearance);
}

/**
 * Most full thread whose chips still fit above the drawing's floor, mm; 0 where not even a little does.
 * Lengths mm. Sources: `packed-chips`, derived.
 */
export function threadThatFits(input: AheadInput): number {
  const { groove, bulk, nose, clearance, shoulder, pointAngle } = input;
  const usable = (FILL_LIMIT * Math.PI * groove.hole ** 2) / 4;
  const perDepth = PACKED_BULKING[bulk] * grooveGeometry(groove).volumePerDepth;
  const cone = coneLength(groove.hole, pointAngle) / 3;
  const byChips = (usable * (shoulder - nose + cone)) / (perDepth + usable);
  return Math.max(0, Math.min(byChips, shoulder - nose - clearance));
}

/**
 * The ways out, the one that keeps the tap first; `fits-already` alone where nothing has to change.
 * Lengths mm. Sources: `packed-chips`, `common-practice`, derived.
 */
export function waysForAhead(input: AheadInput): Way[] {
  const { bulk, shoulder, groove, forming } = input;
  const to = shoulderFor(input, bulk);
  if (to <= shoulder + 1e-9) return [{ way: 'fits-already', numbers: { shoulder: to } }];
  const ways: Way[] = [{ way: 'deeper-hole', numbers: { to, by: to - shoulder } }];
  const shorter = threadThatFits(input);
  if (shorter >= groove.pitch) ways.push({ way: 'shorter-thread', numbers: { to: shorter } });
  // Its own chip does not fit here, so the loosest that does is one that packs tighter.
  const breaks = LOOSEST_FIRST.find((each) => shoulderFor(input, each) <= shoulder + 1e-9);
  if (breaks) ways.push({ way: 'chip-that-breaks', numbers: { factor: PACKED_BULKING[breaks] } });
  ways.push({ way: 'draw-chips-back', numbers: {} });
  if (forming === 'yes' || forming === 'if-ductile')
    ways.push({ way: 'form-instead', numbers: {} });
  ways.push({ way: 'hole-through', numbers: {} });
  return ways;
}

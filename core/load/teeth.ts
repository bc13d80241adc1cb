/**
 * The load on every tooth of the chamfer, not the mean: which one works hardest, how thick its chip is,
 * and whether the chip is thick enough to be cut at all. Derived from ISO 68-1 geometry and Kienzle.
 */

import type { Material } from '../material/material';
import { answer, refuse, type Outcome } from '../outcome';
import { grooveGeometry, specificForce, THINNEST_CHIP, toothGeometry, type Groove } from './torque';

/** In metal that hardens when rubbed, a chip thinner than this many edge radii is close to rubbing. Common practice. */
export const NEAR_RUBBING = 2;

/** `cuts`: thicker than the edge is sharp; `near`: too close to it in metal that hardens; `rubs`: pushed aside. */
export type Rubbing = 'cuts' | 'near' | 'rubs';

export interface ChamferTooth {
  /** 1 is the first to bite, at the nose. */
  number: number;
  /** Height above the hole's wall that this tooth takes the groove from and to, mm. */
  from: number;
  to: number;
  /** Width of its chip, mm, and its thickness. */
  width: number;
  chip: number;
  /** N along the cut, and its share of the torque, N·m. */
  force: number;
  torque: number;
}

export interface ChamferTeeth {
  /** Threads of chamfer that cut; fewer than the tap has where its nose is smaller than the hole. */
  threads: number;
  teeth: ChamferTooth[];
  heaviest: ChamferTooth;
  /** N·m of all teeth together, a sharp straight-flute tap with the whole chamfer buried. */
  torque: number;
  rubbing: Rubbing;
}

export interface ChamferTap {
  /** Length of the chamfer, threads, and flutes. */
  threads: number;
  flutes: number;
  /** Diameter of the tap's nose, mm, where measured; otherwise the chamfer is taken to begin at the hole. */
  nose?: number | undefined;
}

/**
 * Threads of chamfer that touch metal: all of them unless the nose is smaller than the hole. mm.
 * Refuses a nose larger than the hole (`nose-not-in-hole`: the tap does not enter). Source: derived.
 */
export function cuttingThreads(groove: Groove, tap: ChamferTap): Outcome<number> {
  const { nose, threads } = tap;
  if (nose === undefined) return answer(threads);
  if (!(nose > 0) || nose > groove.hole + 1e-9) {
    return refuse({ code: 'nose-not-in-hole', field: 'nose', data: { typed: String(nose) } });
  }
  return answer((threads * (groove.major - groove.hole)) / (groove.major - nose));
}

/** How far a chip is from being pushed aside instead of cut. `chip` mm. Sources: `kienzle`, `common-practice`. */
export function rubbingOf(chip: number, material: Pick<Material, 'workHardens'>): Rubbing {
  if (chip < THINNEST_CHIP) return 'rubs';
  return material.workHardens && chip < NEAR_RUBBING * THINNEST_CHIP ? 'near' : 'cuts';
}

/**
 * Every tooth of a chamfer in a hole, first to bite first. Lengths mm; `threads` above 0, `flutes` 2 or
 * more; the hole smaller than the thread (`hole-over-thread`). Refuses as `cuttingThreads` does.
 * The specific force is that of this chamfer's own chip, so the sum shows chip thinning at full strength.
 * Source: `tap-chip-model`.
 */
export function chamferTeeth(
  groove: Groove,
  tap: ChamferTap,
  material: Pick<Material, 'kc11' | 'mc' | 'workHardens'>,
): Outcome<ChamferTeeth> {
  const { height } = grooveGeometry(groove);
  if (!(height > 0)) return refuse({ code: 'hole-over-thread', field: 'hole' });
  const cutting = cuttingThreads(groove, tap);
  if (!cutting.ok) return cutting;
  const threads = cutting.value;
  const { step, chip } = toothGeometry(groove, threads, tap.flutes);
  const specific = specificForce(material, chip);
  const count = Math.ceil(threads * tap.flutes - 1e-9);
  const teeth = Array.from({ length: count }, (_, index): ChamferTooth => {
    const from = index * step;
    const to = Math.min(height, from + step);
    const middle = (from + to) / 2;
    const width = groove.pitch / 8 + (2 * (height - middle)) / Math.sqrt(3);
    const force = specific * width * (to - from);
    const torque = (force * (groove.hole / 2 + middle)) / 1000;
    return { number: index + 1, from, to, width, chip, force, torque };
  });
  // The groove is widest at the hole's wall, so the first to bite has most to do.
  const heaviest = teeth[0]!;
  const torque = teeth.reduce((sum, tooth) => sum + tooth.torque, 0);
  return answer({ threads, teeth, heaviest, torque, rubbing: rubbingOf(chip, material) });
}

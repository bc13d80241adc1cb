/**
 * Torque and tooth load against the length of the chamfer: what is certain, and what is disputed.
 *
 * Two claims disagree about total torque. Chip thinning (Kienzle) says that a short chamfer, with its
 * thicker chips, needs less; shop experience and a tool maker's published factors say that it needs more.
 * The single-number torque is flat; the band spans both. The load on each tooth is not in dispute.
 */

import type { Material } from '../material/material';
import {
  engagedShare,
  heaviestToothLoad,
  peakTorque,
  REFERENCE_CHAMFER,
  specificForce,
  toothGeometry,
  type Groove,
} from './torque';

/** Published torque of a 1.5-pitch chamfer over a 5-pitch one: coarse 4 to 6 % more, fine 16 to 30 %. */
const PUBLISHED_SHORT = {
  coarse: { low: 1.04, high: 1.06 },
  fine: { low: 1.16, high: 1.3 },
} as const;
const PUBLISHED_AT = 1.5;

/** A thread is taken as fine when its pitch is under this share of its diameter. Derived from the ISO 261 series. */
const FINE_BELOW = 0.115;

export interface ChamferCurveInput extends Groove {
  material: Pick<Material, 'kc11' | 'mc' | 'friction'>;
  flutes: number;
  /** Full thread and thickness of metal, mm; thickness Infinity for deep work. */
  fullThread: number;
  thickness: number;
  /** Torque factor of the tap's style; 1 for straight flute. */
  styleFactor: number;
}

export interface ChamferPoint {
  /** Length of the chamfer, threads. */
  threads: number;
  /** N·m; low and high span the two claims, not the model's own spread. */
  torque: { low: number; expected: number; high: number };
  /** N, heaviest tooth. */
  toothLoad: number;
  /** mm */
  chip: number;
  /** Share of the chamfer that the work can hold at once, by moment; 1 in thick work. */
  engaged: number;
}

/**
 * Torque of a chamfer over a five-pitch chamfer in thick work, by chip thinning alone.
 * `threads` above 0. Source: `kienzle`, derived.
 */
export function thinningFactor(
  groove: Groove,
  threads: number,
  flutes: number,
  material: Pick<Material, 'kc11' | 'mc'>,
): number {
  const at = (count: number) => specificForce(material, toothGeometry(groove, count, flutes).chip);
  return at(threads) / at(REFERENCE_CHAMFER);
}

/**
 * Torque of a chamfer over a five-pitch one by a tool maker's published factors, which speak of 1.5 to 5
 * pitches only: linear between, flat beyond. `threads` above 0. Source: `makers-style-factors`.
 */
export function publishedFactor(groove: Groove, threads: number): { low: number; high: number } {
  const kind = groove.pitch / groove.major < FINE_BELOW ? 'fine' : 'coarse';
  const { low, high } = PUBLISHED_SHORT[kind];
  const span = (REFERENCE_CHAMFER - threads) / (REFERENCE_CHAMFER - PUBLISHED_AT);
  const share = Math.min(1, Math.max(0, span));
  return { low: 1 + (low - 1) * share, high: 1 + (high - 1) * share };
}

/**
 * One point of the curve. Lengths mm, returns N·m and N. Sources: `tap-chip-model`,
 * `makers-style-factors`.
 */
export function chamferPoint(input: ChamferCurveInput, threads: number): ChamferPoint {
  const expected = peakTorque({ ...input, threads }) * input.styleFactor;
  const thinning = thinningFactor(input, threads, input.flutes, input.material);
  const published = publishedFactor(input, threads);
  return {
    threads,
    torque: {
      low: expected * Math.min(1, thinning, published.low),
      expected,
      high: expected * Math.max(1, thinning, published.high),
    },
    toothLoad: heaviestToothLoad(input, threads, input.flutes, input.material),
    chip: toothGeometry(input, threads, input.flutes).chip,
    engaged: engagedShare(input, threads, input.thickness),
  };
}

/** The curve from `from` to `to` threads in steps of `step`. Sources: as `chamferPoint`. */
export function chamferCurve(
  input: ChamferCurveInput,
  from = 1,
  to = 10,
  step = 0.25,
): ChamferPoint[] {
  const count = Math.round((to - from) / step);
  return Array.from({ length: count + 1 }, (_, index) => chamferPoint(input, from + index * step));
}

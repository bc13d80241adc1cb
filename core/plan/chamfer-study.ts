/**
 * What the length of a chamfer does in one hole: torque, which is disputed, and the load on each tooth,
 * which is not. The hole is the one that the plan would drill.
 */

import type { DrillChoice } from '../drill/drill';
import { chamferCurve, chamferPoint, type ChamferPoint } from '../load/chamfer-curve';
import { engagedShare, THINNEST_CHIP } from '../load/torque';
import { answer, refuse, type Outcome } from '../outcome';
import { STYLES } from '../tap/styles';
import { jobOf } from './prepare';
import type { HoleRequest } from './types';

/** Styles whose chamfer teeth cut. */
export const CUTTING_STYLES = ['spiral-point', 'spiral-flute', 'straight-flute'] as const;

export type CuttingStyle = (typeof CUTTING_STYLES)[number];

export interface ChamferStudy {
  /** The chamfer that was asked about, and all from one thread to ten. */
  here: ChamferPoint;
  curve: ChamferPoint[];
  /** The same material and tap in work thicker than any chamfer is long; empty where the work is. */
  thick: ChamferPoint[];
  /** Threads of chamfer that are as long as the work is thick; missing where no chamfer outgrows it. */
  thinFrom?: number;
  /** Hole reckoned with, mm, its drill where a stocked one passes, and flutes. */
  hole: number;
  drill: DrillChoice | null;
  flutes: number;
  /** True where the chip is thinner than an edge can cut. */
  rubs: boolean;
}

const LONGEST = 10;
const SHORTEST = 1;

/** The curve with the bend and the chamfer asked about among its points, so that both are exact. */
function withExact(curve: ChamferPoint[], extra: ChamferPoint[]): ChamferPoint[] {
  const others = curve.filter((point) => !extra.some(({ threads }) => threads === point.threads));
  return [...others, ...extra].sort((a, b) => a.threads - b.threads);
}

/**
 * Studies a chamfer of `threads` threads (above 0) on a tap of one style. `request`: lengths mm; a
 * through hole's thickness bounds how much of the chamfer can cut at once. Refuses as `jobOf` does, and
 * with `too-hard` where no HSS tap belongs. Sources: `tap-chip-model`, `makers-style-factors`.
 */
export function chamferStudy(
  request: HoleRequest,
  style: CuttingStyle,
  threads: number,
): Outcome<ChamferStudy> {
  const job = jobOf(request);
  if (!job.ok) return job;
  const { major, pitch, cutHole, drill, material, flutes, fullThread } = job.value;
  if (!material.speed) return refuse({ code: 'too-hard', field: 'material' });
  const styleFactor = STYLES[style].torque.middle;
  const deep = { major, pitch, hole: cutHole, material, flutes, fullThread, styleFactor };
  const { hole } = request;
  const thickness = hole.kind === 'through' ? hole.thickness : Infinity;
  const input = { ...deep, thickness };
  const bend = thickness / pitch;
  const bends = bend > SHORTEST && bend < LONGEST;
  const exact = [threads, ...(bends ? [bend] : [])].map((count) => chamferPoint(input, count));
  const here = exact[0]!;
  const thin = engagedShare(deep, LONGEST, thickness) < 1;
  return answer(
    {
      here,
      curve: withExact(chamferCurve(input, SHORTEST, LONGEST), exact),
      thick: thin ? chamferCurve({ ...deep, thickness: Infinity }, SHORTEST, LONGEST) : [],
      ...(bends ? { thinFrom: bend } : {}),
      hole: cutHole,
      drill,
      flutes,
      rubs: here.chip < THINNEST_CHIP,
    },
    job.notes,
  );
}

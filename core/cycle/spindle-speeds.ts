/** At which speeds a spindle has a given torque to spare, and what it is asked for at one of them. */

import type { Range } from '../units';
import { powerOf, spindleRange, torqueAt, type SpindleCurve } from './spindle';

export interface SpindleLoad {
  rpm: number;
  /** N·m needed, and given at this speed; null where the curve does not reach. */
  needed: number;
  given: number | null;
  /** Share of the torque, and of the power at this speed: the same number, said twice. Null as `given`. */
  share: number | null;
  /** kW that the cut needs at this speed, and the most the spindle has at any speed of its points. */
  power: number;
  mostPower: number;
}

/** The most power among the points of a curve, kW. Source: derived. */
export function mostPower({ points }: SpindleCurve): number {
  return Math.max(...points.map(({ torque, rpm }) => powerOf(torque, rpm)));
}

/** Load of a torque on the spindle at a speed. `needed` N·m, `rpm` rev/min. Source: derived. */
export function spindleLoad(curve: SpindleCurve, needed: number, rpm: number): SpindleLoad {
  const given = torqueAt(curve, rpm);
  return {
    rpm,
    needed,
    given,
    share: given === null ? null : needed / given,
    power: powerOf(needed, rpm),
    mostPower: mostPower(curve),
  };
}

/** Speed between two neighbouring points at which the torque equals `wanted`, rev/min. */
function crossing(curve: SpindleCurve, low: number, high: number, wanted: number): number {
  const [first, last] = [torqueAt(curve, low) ?? 0, torqueAt(curve, high) ?? 0];
  const share = Math.log(wanted / first) / Math.log(last / first);
  return low * (high / low) ** share;
}

/**
 * Ranges of speed, rev/min, in which the spindle gives at least `wanted` N·m, slowest first; empty where it
 * never does. Only speeds between the first and the last point are spoken of. Source: derived.
 */
export function speedsWithTorque(curve: SpindleCurve, wanted: number): Range[] {
  const { points } = curve;
  const only = points[0];
  if (points.length === 1 && only) {
    return only.torque >= wanted ? [{ min: only.rpm, max: only.rpm }] : [];
  }
  const ranges: Range[] = [];
  points.slice(1).forEach((high, index) => {
    const low = points[index];
    if (!low || (low.torque < wanted && high.torque < wanted)) return;
    const cross = () => crossing(curve, low.rpm, high.rpm, wanted);
    const min = low.torque >= wanted ? low.rpm : cross();
    const max = high.torque >= wanted ? high.rpm : cross();
    const before = ranges[ranges.length - 1];
    if (before && Math.abs(before.max - min) < 1e-9) before.max = max;
    else ranges.push({ min, max });
  });
  return ranges;
}

/** Speeds that a material's range and the spindle's torque both allow, rev/min; empty where none. Source: derived. */
export function sharedSpeeds(curve: SpindleCurve, wanted: number, range: Range): Range[] {
  const { min, max } = spindleRange(curve);
  const [low, high] = [Math.max(range.min, min), Math.min(range.max, max)];
  return speedsWithTorque(curve, wanted)
    .map((speeds) => ({ min: Math.max(speeds.min, low), max: Math.min(speeds.max, high) }))
    .filter((speeds) => speeds.max >= speeds.min);
}

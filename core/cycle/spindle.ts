/**
 * What a spindle can give over its speeds, from a few points read in the machine's manual. Between points
 * the torque is a power of the speed, which is exact for both constant torque and constant power; beyond
 * them nothing is known and nothing is said.
 */

import { answer, refuse, type Outcome, type Problem } from '../outcome';
import type { Range } from '../units';

/** One point of the torque curve: rev/min and N·m. */
export interface SpindlePoint {
  rpm: number;
  torque: number;
}

/** Points in order of speed, each speed once. A single point holds for its own speed only. */
export interface SpindleCurve {
  points: readonly SpindlePoint[];
}

export const SPINDLE_PROBLEM_CODES = [
  'spindle-no-points',
  'spindle-too-many-points',
  'spindle-point-out-of-range',
  'spindle-speed-twice',
  'spindle-power-absurd',
] as const;

const MOST_POINTS = 12;
const FASTEST = 100_000;
const STRONGEST = 100_000;

/** Largest power of a spindle that taps, kW: above it a decimal point has slipped. */
const MOST_POWER = 500;

/** Power of a torque at a speed, kW. `torque` N·m, `rpm` rev/min. Source: derived. */
export function powerOf(torque: number, rpm: number): number {
  return (torque * rpm * 2 * Math.PI) / 60 / 1000;
}

function problemOf(point: SpindlePoint): Problem | null {
  const typed = `${point.rpm} / ${point.torque}`;
  const inside = (value: number, most: number) => value > 0 && value <= most;
  if (!inside(point.rpm, FASTEST) || !inside(point.torque, STRONGEST)) {
    return { code: 'spindle-point-out-of-range', field: 'points', data: { typed } };
  }
  return powerOf(point.torque, point.rpm) > MOST_POWER
    ? { code: 'spindle-power-absurd', field: 'points', data: { typed } }
    : null;
}

/**
 * Checks points and puts them in order. rev/min above 0 to 100,000; N·m above 0 to 100,000; one to twelve
 * points, no speed twice, no point above 500 kW. Refuses with `SPINDLE_PROBLEM_CODES`. Source: derived.
 */
export function spindleCurve(points: readonly SpindlePoint[]): Outcome<SpindleCurve> {
  if (points.length === 0) return refuse({ code: 'spindle-no-points', field: 'points' });
  if (points.length > MOST_POINTS)
    return refuse({ code: 'spindle-too-many-points', field: 'points' });
  const bad = points.map(problemOf).filter((problem): problem is Problem => problem !== null);
  if (bad[0]) return refuse(bad[0], ...bad.slice(1));
  const sorted = [...points].sort((a, b) => a.rpm - b.rpm);
  const twice = sorted.find((point, index) => sorted[index + 1]?.rpm === point.rpm);
  if (twice) {
    const data = { typed: String(twice.rpm) };
    return refuse({ code: 'spindle-speed-twice', field: 'points', data });
  }
  return answer({ points: sorted });
}

/** Speeds the curve speaks of, rev/min. Source: derived. */
export function spindleRange({ points }: SpindleCurve): Range {
  return { min: points[0]?.rpm ?? 0, max: points[points.length - 1]?.rpm ?? 0 };
}

/**
 * Torque the spindle gives at a speed, N·m; null where the points do not reach. `rpm` rev/min, above 0.
 * Source: derived from the points.
 */
export function torqueAt({ points }: SpindleCurve, rpm: number): number | null {
  const exact = points.find((point) => Math.abs(point.rpm - rpm) < 1e-9);
  if (exact) return exact.torque;
  const above = points.findIndex((point) => point.rpm > rpm);
  const [low, high] = [points[above - 1], points[above]];
  if (!low || !high) return null;
  const share = Math.log(rpm / low.rpm) / Math.log(high.rpm / low.rpm);
  return low.torque * (high.torque / low.torque) ** share;
}

/** Tolerances of Unified internal threads by the formulas of ASME B1.1, inches. */

import type { Thread } from '../thread/thread';
import { tenThousandths, unifiedSeries } from '../thread/unified-series';
import { roundHalfUp } from '../units';

/** Pitch-diameter tolerance of each class, as a multiple of the external class 2A one. */
export const CLASS_FACTOR: Readonly<Record<string, number>> = {
  '1B': 1.95,
  '2B': 1.3,
  '3B': 0.975,
};

/**
 * Diameters at which the printed tables of the constant-pitch, extra-fine and special threads compute
 * their pitch-diameter tolerance, inches: the nearest one, of two equally near the smaller.
 * Found by fitting printed rows, not read in the standard; above 2 they rest on few rows.
 */
const TOLERANCE_STEPS = [0.19, 0.25, 0.375, 0.5, 0.625, 0.75, 1, 1.25, 1.5, 2, 2.5, 3, 4, 5, 6];

/** A multiple of the pitch, rounded to six places, in millionths of an inch. */
export function pitchMultiple(factor: number, tpi: number): number {
  return Math.round(roundHalfUp(factor * roundHalfUp(1 / tpi, 1e-8), 1e-6) * 1e6);
}

/** Series whose tolerances assume an engagement of one diameter, and 1-14 UNS; the others assume nine pitches. */
function engagesOneDiameter(series: string, major: number, tpi: number): boolean {
  const listed = ['UNC', 'UNF', '4-UN', '6-UN', '8-UN'].includes(series);
  return listed || (major === 1e6 && tpi === 14);
}

function nearestStep(diameter: number): number {
  return TOLERANCE_STEPS.reduce((near, step) =>
    Math.abs(step - diameter) < Math.abs(near - diameter) - 1e-9 ? step : near,
  );
}

/**
 * External class 2A pitch-diameter tolerance, inches to six places, on which all classes rest:
 * 0.0015 D^(1/3) + 0.0015 LE^(1/2) + 0.015 P^(2/3). Source: ASME B1.1 as `threadlib` and `bosl2` write it; recomputed.
 */
export function pitchToleranceTwoA(diameter: number, tpi: number): number {
  const series = unifiedSeries(diameter, tpi);
  const pitch = roundHalfUp(1 / tpi, 1e-8);
  const oneDiameter = engagesOneDiameter(series, tenThousandths(diameter) * 100, tpi);
  const engaged = oneDiameter ? diameter : 9 * pitch;
  const size = oneDiameter ? diameter : nearestStep(diameter);
  const sum = 0.0015 * Math.cbrt(size) + 0.0015 * Math.sqrt(engaged) + 0.015 * pitch ** (2 / 3);
  return roundHalfUp(sum, 1e-6);
}

/**
 * How much wider the pitch-diameter tolerance is for a long engagement (from memory): tables hold to 1.5 D,
 * or to 15 P in the nine-pitch series; to twice that 1.25, beyond 1.5. `engagement` in mm, 0 or
 * more; the answer is a number without a unit, 1 for a metric thread. Never refuses.
 */
export function engagementFactor(thread: Thread, engagement: number): number {
  if (!thread.inch) return 1;
  const { diameter, tpi } = thread.inch;
  const oneDiameter = engagesOneDiameter(
    unifiedSeries(diameter, tpi),
    tenThousandths(diameter) * 100,
    tpi,
  );
  const whole = (oneDiameter ? 1.5 * thread.diameter : 15 * thread.pitch) + 1e-9;
  if (engagement <= whole) return 1;
  return engagement <= 2 * whole ? 1.25 : 1.5;
}

/** Minor-diameter tolerance, inches to four places. Source: ASME B1.1; class 3B from memory, recomputed. */
export function minorTolerance(diameter: number, tpi: number, grade: string): number {
  const pitch = roundHalfUp(1 / tpi, 1e-8);
  const small = 0.05 * pitch ** (2 / 3) + (0.03 * pitch) / diameter - 0.002;
  const least = 0.25 * pitch - 0.4 * pitch ** 2;
  const between = (floor: number) => Math.max(Math.min(small, 0.394 * pitch), floor);
  let tolerance: number;
  if (grade === '3B')
    tolerance = between(tpi >= 13 ? 0.23 * pitch - 1.5 * pitch ** 2 : 0.12 * pitch);
  else if (diameter < 0.25) tolerance = between(least);
  else tolerance = tpi >= 4 ? least : 0.15 * pitch;
  return roundHalfUp(tolerance, 0.0001);
}

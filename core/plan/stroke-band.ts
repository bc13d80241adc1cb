/** Torque along the stroke with its band: the plan's own band, laid along the curve. */

import { reversalTorque, strokeBends, strokeCurve, strokePeak } from '../load/stroke-curve';
import type { StrokeBend } from '../load/stroke-curve';
import { answer, type Outcome } from '../outcome';
import type { TapStudy } from './tap-study';

export interface StrokeBandPoint {
  /** mm of the chamfer's nose below the face. */
  travel: number;
  /** N·m on the way in. */
  low: number;
  expected: number;
  high: number;
  /** N·m where a bore crosses the hole: what each tooth's return into metal can add up to. */
  whole: number;
  /** N·m on the way back, against the turn. */
  back: number;
}

export interface StrokeBand {
  points: StrokeBandPoint[];
  bends: { at: StrokeBend; travel: number }[];
  peak: { travel: number; torque: number };
  /** True where a bore crosses, so that `whole` and `expected` part. */
  crossed: boolean;
}

/**
 * The stroke of a studied tap, ready to draw. mm and N·m; `points` 2 or more. Refuses as `strokeCurve` does.
 * Sources: `tap-chip-model`, `tapping-by-cutting`.
 */
export function strokeBand(
  { stroke, torque }: Pick<TapStudy, 'stroke' | 'torque'>,
  points = 80,
): Outcome<StrokeBand> {
  const curve = strokeCurve(stroke, points);
  if (!curve.ok) return curve;
  const [down, up] = [torque.low / torque.expected, torque.high / torque.expected];
  const peak = strokePeak(stroke);
  return answer({
    points: curve.value.map((point) => ({
      travel: point.travel,
      low: point.torque * down,
      expected: point.torque,
      high: point.torque * up,
      whole: point.whole,
      back: reversalTorque(stroke, point.travel),
    })),
    bends: strokeBends(stroke),
    peak: { travel: peak.travel, torque: peak.torque },
    crossed: (stroke.crossHoles ?? []).length > 0,
  });
}

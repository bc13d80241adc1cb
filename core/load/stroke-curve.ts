/** The whole of a stroke: its curve, its bends, its peak, and the way back. */

import { answer, refuse, type Outcome } from '../outcome';
import {
  chamferLength,
  momentOf,
  strokeEnd,
  strokeTorque,
  type Stroke,
  type StrokePoint,
} from './stroke';

/**
 * Torque on the way back, N·m, against the turn: all threads in metal rub, the chamfer's too, and nothing
 * is cut. Chips that wedge behind the teeth can make it far more; no model here holds for that.
 * Sources: `tap-chip-model` (an assumption), `tapping-by-cutting`.
 */
export function reversalTorque(stroke: Stroke, travel: number): number {
  const reach = Math.min(strokeEnd(stroke), travel);
  const inMetal = Math.min(reach, stroke.thickness, stroke.fullThread);
  return (stroke.whole * stroke.friction * Math.max(0, inMetal)) / stroke.groove.major;
}

/** Where the stroke bends, mm of travel, in order; those beyond its end are left out. */
export type StrokeBend = 'buried' | 'nose-out' | 'chamfer-out' | 'stop';

/** Travels at which something changes: the chamfer all in, the nose out, the chamfer out, the stop. mm. Derived. */
export function strokeBends(stroke: Stroke): { at: StrokeBend; travel: number }[] {
  const end = strokeEnd(stroke);
  const chamfer = chamferLength(stroke);
  const thick = stroke.thickness >= chamfer;
  const bends: { at: StrokeBend; travel: number }[] = [
    ...(thick ? [{ at: 'buried' as const, travel: chamfer }] : []),
    { at: 'nose-out', travel: stroke.thickness },
    { at: 'chamfer-out', travel: stroke.thickness + chamfer },
    { at: 'stop', travel: end },
  ];
  return bends.filter(({ travel }) => travel <= end + 1e-9);
}

/**
 * The curve over the whole stroke, with points on every bend. Refuses a hole as large as the thread
 * (`hole-over-thread`). mm and N·m. Sources: as `strokeTorque`.
 */
export function strokeCurve(stroke: Stroke, points = 120): Outcome<StrokePoint[]> {
  if (!(momentOf(stroke).height > 0)) return refuse({ code: 'hole-over-thread', field: 'hole' });
  const end = strokeEnd(stroke);
  const even = Array.from({ length: points + 1 }, (_, index) => (index * end) / points);
  const travels = [...even, ...strokeBends(stroke).map(({ travel }) => travel)];
  const sorted = [...new Set(travels)].sort((a, b) => a - b);
  return answer(sorted.map((travel) => strokeTorque(stroke, travel)));
}

/** The highest point of the stroke, N·m. mm. Sources: as `strokeTorque`. */
export function strokePeak(stroke: Stroke): StrokePoint {
  const curve = strokeCurve(stroke);
  const points = curve.ok ? curve.value : [strokeTorque(stroke, 0)];
  return points.reduce((most, point) => (point.torque > most.torque + 1e-12 ? point : most));
}

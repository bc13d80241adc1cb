/**
 * Torque along the stroke: it rises while the chamfer goes in, holds while all of it is in metal, falls
 * as it breaks out of a through hole, and on the way back only the threads rub.
 *
 * Closed form where the wall is whole; where a bore crosses the hole, added up in slices. Rubbing of the
 * full threads is a modelling assumption (`tapping-by-cutting` for the need of it); right through a part it is
 * counted until the nose comes out, in a blind hole until the stop, as in the single-number torque.
 */

import { meanMetalShare, metalShare, type CrossHole } from './cross-hole';
import { formedHeight, formedMoment } from './forming';
import { grooveGeometry, grooveMoment, guidingLength, type Groove } from './torque';

export interface Stroke {
  process: 'cut' | 'form';
  /** Tap and hole; for a form tap the hole it is given. */
  groove: Groove;
  /** N·m with the whole chamfer in metal and nothing rubbing behind it, every factor in it. */
  whole: number;
  /** Length of the chamfer, threads. */
  threads: number;
  /** Share of the cutting torque that one diameter of full thread rubs away; see `Material.friction`. */
  friction: number;
  /** Full thread, mm, and thickness of metal the tap can meet, mm: Infinity in a blind hole. */
  fullThread: number;
  thickness: number;
  /** Travel of the chamfer's nose below the face, mm. Default: the least that gives the full thread. */
  travel?: number | undefined;
  crossHoles?: readonly CrossHole[] | undefined;
}

export interface StrokePoint {
  /** mm of the nose below the face. */
  travel: number;
  /** N·m: cutting or forming, rubbing, and both. */
  cutting: number;
  rubbing: number;
  torque: number;
  /** N·m that each tooth's meeting with whole metal would add up to; above `torque` where a bore crosses. */
  whole: number;
}

/** Slices of the chamfer where a bore crosses the hole. */
const SLICES = 120;

/** Length of the chamfer, mm. Derived. */
export function chamferLength(stroke: Stroke): number {
  return stroke.threads * stroke.groove.pitch;
}

/**
 * Travel at which the nose stops, mm: the full thread and one chamfer, in a through hole at least until
 * the chamfer is out (where all of the thickness is threaded). Source: derived.
 */
export function strokeEnd(stroke: Stroke): number {
  return stroke.travel ?? stroke.fullThread + chamferLength(stroke);
}

/** The way the load lies along the chamfer: widest at the nose when cutting, at the full thread when forming. Derived. */
export function momentOf({ process, groove }: Stroke): {
  height: number;
  between: typeof grooveMoment;
} {
  return process === 'form'
    ? { height: formedHeight(groove), between: formedMoment }
    : { height: grooveGeometry(groove).height, between: grooveMoment };
}

/** Share of the chamfer's moment in metal between two distances from its nose, mm. */
function engaged(stroke: Stroke, travel: number, from: number, to: number, holed: boolean): number {
  const { height, between } = momentOf(stroke);
  const all = between(stroke.groove, 0, height);
  if (to <= from || all <= 0) return 0;
  const heightAt = (distance: number) => (height * distance) / chamferLength(stroke);
  const crossHoles = stroke.crossHoles ?? [];
  if (!holed || crossHoles.length === 0) {
    return between(stroke.groove, heightAt(from), heightAt(to)) / all;
  }
  const step = (to - from) / SLICES;
  let sum = 0;
  for (let index = 0; index < SLICES; index += 1) {
    const start = from + index * step;
    const y = heightAt(start + step / 2);
    const metal = metalShare(travel - start - step / 2, stroke.groove.hole / 2 + y, crossHoles);
    sum += metal * between(stroke.groove, heightAt(start), heightAt(start + step));
  }
  return sum / all;
}

/** Length of full-form thread that rubs, mm, and the share of metal along it. */
function rubbingLength(stroke: Stroke, travel: number): number {
  const chamfer = chamferLength(stroke);
  const most = guidingLength({ ...stroke, pitch: stroke.groove.pitch });
  const length = Math.min(most, Math.max(0, travel - chamfer));
  const to = Math.min(stroke.thickness, travel - chamfer);
  const { hole, major } = stroke.groove;
  return length * meanMetalShare(to - length, to, (hole + major) / 4, stroke.crossHoles ?? []);
}

/**
 * Torque on the way in with the nose `travel` mm below the face, N·m. `travel` 0 to `strokeEnd`.
 * Sources: `tap-chip-model`, `tapping-by-cutting`.
 */
export function strokeTorque(stroke: Stroke, travel: number): StrokePoint {
  const from = Math.max(0, travel - stroke.thickness);
  const to = Math.min(chamferLength(stroke), travel);
  const cutting = stroke.whole * engaged(stroke, travel, from, to, true);
  const uncrossed = stroke.whole * engaged(stroke, travel, from, to, false);
  const perLength = (stroke.whole * stroke.friction) / stroke.groove.major;
  const rubbing = perLength * rubbingLength(stroke, travel);
  const plain = perLength * rubbingLength({ ...stroke, crossHoles: [] }, travel);
  return { travel, cutting, rubbing, torque: cutting + rubbing, whole: uncrossed + plain };
}

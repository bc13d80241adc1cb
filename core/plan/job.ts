/** A request with its thread read, its defaults taken and its hole sized: what every candidate is judged on. */

import type { ChamferSystem } from '../chamfer/classes';
import type { DrillChoice, DrillSeries } from '../drill/drill';
import { bestDrill, judgeDrill, judgeDrills, type HoleWindow } from '../drill/judge';
import { oversizeShare } from '../drill/oversize';
import { FORM_WINDOW, formHole } from '../drill/percent';
import { listedDrill, targetHole } from '../drill/usual';
import { STOP_CLEARANCE } from '../hole/depth';
import type { Range, ThreadLimits } from '../limits/limits';
import { tapMajor } from '../tap/major';
import { referenceFlutes } from '../load/torque';
import type { Material } from '../material/material';
import { chipsShort } from '../material/table';
import type { Thread } from '../thread/thread';
import type { HoleRequest, Spindle } from './types';

export interface Job {
  request: HoleRequest;
  thread: Thread;
  limits: ThreadLimits | null;
  material: Material;
  spindle: Spindle;
  /** mm: major diameter of the tap (larger than the screw's for a wire-insert hole) and pitch. */
  major: number;
  pitch: number;
  system: ChamferSystem;
  /** Hole sizes that leave the minor diameter in class (before coating), mm. */
  window: Range;
  /** True where the upper limit is not known with confidence (UNJ). */
  windowUncertain: boolean;
  fullThread: number;
  pointAngle: number;
  centre: number;
  /** pitches */
  clearance: number;
  flutes: number;
  shortChips: boolean;
  drills: DrillChoice[];
  drill: DrillChoice | null;
  formDrill: DrillChoice | null;
  /** Hole sizes a form tap may be given, mm. */
  formWindow: Range;
  /** Hole the mechanics reckon with, mm: the drill, or the middle of the window where none fits. */
  cutHole: number;
}

/** A thread's window on the hole, before coating, in mm. */
export function holeWindow(
  limits: ThreadLimits,
  coating: HoleRequest['coating'],
  borrowedMax?: number,
): Range {
  const factor = limits.unit === 'in' ? 25.4 : 1;
  const [thin, thick] = coating?.thickness ?? [0, 0];
  const max = limits.minor.max ?? borrowedMax ?? limits.minor.min;
  return { min: limits.minor.min * factor + 2 * thick, max: max * factor + 2 * thin };
}

/** Hard on taps: the largest hole that surely passes spares them. Common practice. */
function wantsLargestHole(material: Material): boolean {
  return material.abrasive || material.workHardens || material.springsBack || material.kc11 >= 1900;
}

/** Form-tap drills come in 0.05 mm steps beyond the ordinary stock. Common practice. */
function formDrill(
  window: HoleWindow,
  series: readonly DrillSeries[] | undefined,
): DrillChoice | null {
  if (series && !series.includes('metric')) {
    const near = judgeDrills(window, series).filter((drill) => drill.verdict !== 'outside');
    return near[0] ?? null;
  }
  const usual = formHole(window.major, window.pitch, FORM_WINDOW.usual);
  const step = usual < 1 ? 0.01 : 0.05;
  const size = Math.round(Math.round(usual / step) * step * 100) / 100;
  const name = size.toFixed(2).replace(/0$/, '');
  const judged = judgeDrill({ name, series: 'metric', diameter: size }, window);
  return judged.verdict === 'outside' ? null : judged;
}

export interface JobParts {
  request: HoleRequest;
  thread: Thread;
  limits: ThreadLimits;
  material: Material;
  borrowedMax?: number | undefined;
}

/** Sizes the hole and takes the defaults. Lengths mm. Sources: as the parts it calls. */
export function prepareJob({ request, thread, limits, material, borrowedMax }: JobParts): Job {
  const major = tapMajor(thread);
  const { pitch } = thread;
  const spindle = request.spindle ?? { drive: 'synchronous' };
  const window = holeWindow(limits, request.coating, borrowedMax);
  const share = oversizeShare(material);
  const cutWindow: HoleWindow = { ...window, major, pitch, oversizeShare: share };
  const drills = judgeDrills(cutWindow, request.stockedDrills);
  const drill = bestDrill(drills, {
    listed: listedDrill(thread),
    target: targetHole(thread, major),
    largest: wantsLargestHole(material),
    system: thread.system === 'unified' ? 'inch' : 'metric',
  });
  const formWindow: HoleWindow = {
    min: formHole(major, pitch, FORM_WINDOW.max),
    max: formHole(major, pitch, FORM_WINDOW.min),
    major,
    pitch,
    oversizeShare: share,
  };
  const { hole } = request;
  return {
    request,
    thread,
    limits,
    material,
    spindle,
    major,
    pitch,
    system: thread.system === 'unified' ? 'inch' : 'metric',
    window,
    windowUncertain: limits.minor.max === undefined,
    fullThread:
      request.fullThread ?? (hole.kind === 'through' ? hole.thickness : 1.5 * thread.diameter),
    pointAngle: request.drillPoint ?? 118,
    centre: request.externalCentre ?? 0,
    clearance: STOP_CLEARANCE[spindle.drive],
    flutes: referenceFlutes(major),
    shortChips: chipsShort(material.chips),
    drills,
    drill,
    formDrill: formDrill(formWindow, request.stockedDrills),
    formWindow,
    cutHole: drill?.diameter ?? (window.min + window.max) / 2,
  };
}

/** A request with its thread read, its defaults taken and its hole sized: what every candidate is judged on. */

import type { ChamferSystem } from '../chamfer/classes';
import type { DrillChoice, DrillSeries } from '../drill/drill';
import { judgeDrill, judgeDrills, type HoleWindow } from '../drill/judge';
import { oversizeShare } from '../drill/oversize';
import { FORM_WINDOW, formHole, formPercent } from '../drill/percent';
import { pipeNotes } from '../gauge/pipe';
import { STOP_CLEARANCE } from '../hole/depth';
import type { Range, ThreadLimits } from '../limits/limits';
import { tapMajor } from '../tap/major';
import { referenceFlutes } from '../load/torque';
import type { Material } from '../material/material';
import { chipsShort } from '../material/table';
import { inchSystem } from '../thread/inch-system';
import type { Thread } from '../thread/thread';
import { limitedHole, taperHole, type JobParts } from './cut-hole';
import { taperPipe, WRENCH_TURNS, type TaperPipe } from './taper';
import { datumOf, seated, type Datum } from './part-fields';
import type { HoleRequest, Spindle } from './types';

export { holeWindow, wantsLargestHole } from './cut-hole';

export interface Job {
  /** As seen from where its depths count; see `datum`. */
  request: HoleRequest;
  /** Where depths count from, mm below the face at the axis. */
  datum: Datum;
  thread: Thread;
  /** Null for a taper pipe thread, which no two limits judge. */
  limits: ThreadLimits | null;
  /** What a taper pipe thread asks of its hole; null for every other thread. */
  taper: TaperPipe | null;
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
  /**
   * Hole the mechanics reckon with, mm: the drill's own size, not the likely oversize (the band holds that), or the
   * middle of the window where none fits. A taper thread's is no smaller than its minor diameter at the mouth.
   */
  cutHole: number;
}

/** Form-tap drills come in 0.05 mm steps beyond the ordinary stock. Common practice. */
function formDrill(
  window: HoleWindow,
  series: readonly DrillSeries[] | undefined,
): DrillChoice | null {
  if (series && !series.includes('metric')) {
    return judgeDrills(window, series).find((drill) => drill.verdict !== 'outside') ?? null;
  }
  const usual = formHole(window.major, window.pitch, FORM_WINDOW.usual);
  const step = usual < 1 ? 0.01 : 0.05;
  const size = Math.round(Math.round(usual / step) * step * 100) / 100;
  const name = size.toFixed(2).replace(/0$/, '');
  const judged = judgeDrill({ name, series: 'metric', diameter: size }, window);
  return judged.verdict === 'outside' ? null : judged;
}

function onFormScale(drill: DrillChoice | null, major: number, pitch: number): DrillChoice | null {
  if (!drill) return null;
  const form = formPercent(major, pitch, drill.diameter);
  return { ...drill, percent: { ...drill.percent, form } };
}

/** Sealing threads want what the gauge measures and the wrench takes up; others one and a half diameters. */
function usualThread(thread: Thread, taper: TaperPipe | null): number {
  if (taper) return taper.fullThread;
  const gauge = thread.form === 'Rp' ? pipeNotes(thread)?.gauge : null;
  return gauge ? gauge.length + WRENCH_TURNS * thread.pitch : 1.5 * thread.diameter;
}

function fullThreadOf({ request, thread }: JobParts, taper: TaperPipe | null): number {
  const { hole, fullThread } = request;
  if (fullThread !== undefined) return fullThread;
  if (hole.kind === 'blind') return usualThread(thread, taper);
  return taper ? Math.min(hole.thickness, taper.fullThread) : hole.thickness;
}

/** Sizes the hole and takes the defaults. Lengths mm. Sources: as the parts it calls. */
export function prepareJob(asked: JobParts): Job {
  const datum = datumOf(asked.request, asked.thread);
  const parts = { ...asked, request: seated(asked.request, datum) };
  const { request, thread, limits, material } = parts;
  const taper = taperPipe(thread);
  const major = taper?.major ?? tapMajor(thread);
  const { pitch } = thread;
  const spindle = request.spindle ?? { drive: 'synchronous' };
  const { window, drills, drill } = limits
    ? limitedHole(limits, parts, major)
    : taperHole(taper!, parts);
  const formWindow: HoleWindow = {
    min: formHole(major, pitch, FORM_WINDOW.max),
    max: formHole(major, pitch, FORM_WINDOW.min),
    major,
    pitch,
    oversizeShare: oversizeShare(material),
  };
  const hole = drill?.diameter ?? (window.min + window.max) / 2;
  return {
    request,
    datum,
    thread,
    limits,
    taper,
    material,
    spindle,
    major,
    pitch,
    system: inchSystem(thread) ? 'inch' : 'metric',
    window,
    windowUncertain: limits !== null && limits.minor.max === undefined,
    fullThread: fullThreadOf(parts, taper),
    pointAngle: request.drillPoint ?? 118,
    centre: request.externalCentre ?? 0,
    clearance: STOP_CLEARANCE[spindle.drive],
    flutes: referenceFlutes(major),
    shortChips: chipsShort(material.chips),
    drills,
    drill,
    // A taper thread is not formed here: its hole would have to be tapered too.
    formDrill: taper
      ? null
      : onFormScale(formDrill(formWindow, request.stockedDrills), major, pitch),
    formWindow,
    cutHole: taper ? Math.max(hole, taper.minor) : hole,
  };
}

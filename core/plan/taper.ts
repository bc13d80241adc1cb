/**
 * Taper pipe threads: no two limits judge them, so the hole comes from the lists and the depth from the gauge.
 * Nothing here says that a joint holds pressure.
 */

import type { Chamfer } from '../chamfer/chamfer';
import type { DrillChoice, DrillSeries } from '../drill/drill';
import { judgeDrills } from '../drill/judge';
import { PIPE_TAPER, pipeNotes } from '../gauge/pipe';
import { grooveGeometry, REFERENCE_CHAMFER, specificForce, toothGeometry } from '../load/torque';
import type { Groove } from '../load/torque';
import type { Material } from '../material/material';
import { basicDiameters } from '../thread/profile';
import type { Thread } from '../thread/thread';
import type { Range } from '../units';

export interface TaperPipe {
  /** Major and minor diameter of the thread at the mouth of the hole, mm. */
  major: number;
  minor: number;
  /** Holes that a straight-drilled start may have, mm: the listed drill, one turn of the gauge either way. */
  window: Range;
  /** Name of the drill that the lists give for a hole that is not taper-reamed. */
  listed?: string;
  /** Drill where the hole is taper-reamed first, mm. */
  reamed?: number;
  /** Length the plug gauge measures over, mm, and how many turns its place may be off. */
  gauge?: { length: number; turns: number };
  /** Full thread that gauging and making up want, mm. */
  fullThread: number;
}

/**
 * The chamfer of taper pipe taps, straight flutes or interrupted thread: they are made with one only, and the
 * threads behind it go on cutting. Common practice.
 */
export const TAPER_CHAMFER: Chamfer = { class: 'plug', form: '', threads: { min: 2.5, max: 3.5 } };

/** Turns of thread beyond the gauge that the wrench takes up. From memory of ASME B1.20.1 (L3). */
export const WRENCH_TURNS = 3;

/** Height of the 60 degree pipe thread, in pitches. From memory of ASME B1.20.1. */
const AMERICAN_HEIGHT = 0.8;

/** Turns over which the gauge is taken to reach where its length is not held: 4 to 8 in the sizes that are. Derived. */
const USUAL_GAUGE_TURNS = 6;

/** Sizes at the mouth: ISO 7-1 states them there; E0 = D - (0.05 D + 1.1) P and L1 lead to them in ASME B1.20.1. */
function mouthOf(thread: Thread, gaugeLength: number): { major: number; minor: number } {
  if (thread.form === 'Rc') {
    const { major, minor } = basicDiameters(thread);
    return { major, minor };
  }
  const { diameter, pitch } = thread;
  const smallEnd = diameter - (0.05 * (diameter / 25.4) + 1.1) * pitch;
  const mouth = smallEnd + PIPE_TAPER * gaugeLength;
  return { major: mouth + AMERICAN_HEIGHT * pitch, minor: mouth - AMERICAN_HEIGHT * pitch };
}

/**
 * What a taper pipe thread asks of its hole, mm; null for every other thread.
 * Sources: `asme-b1-20-1`, `iso-7-1`, drills `common-practice`; unlisted sizes derived from the taper.
 */
export function taperPipe(thread: Thread): TaperPipe | null {
  const { form, pitch } = thread;
  if (form !== 'NPT' && form !== 'NPTF' && form !== 'Rc') return null;
  const notes = pipeNotes(thread);
  const drill = notes?.drills.find(({ hole }) => hole === 'straight');
  const reamed = notes?.drills.find(({ hole }) => hole === 'reamed');
  const length = notes?.gauge?.length ?? USUAL_GAUGE_TURNS * pitch;
  const mouth = mouthOf(thread, length);
  // On this taper one turn of the gauge is P/16 of diameter.
  const turn = PIPE_TAPER * pitch;
  const middle = drill?.diameter ?? mouth.minor - (2 / 3) * PIPE_TAPER * length;
  return {
    ...mouth,
    window: { min: middle - turn, max: middle + turn },
    ...(drill && { listed: drill.name }),
    ...(reamed && { reamed: reamed.diameter }),
    ...(notes?.gauge && { gauge: { length, turns: notes.gauge.turns } }),
    fullThread: length + WRENCH_TURNS * pitch,
  };
}

/**
 * Drills near a taper thread's hole, judged by their own size: the lists already mean drilled holes, oversize
 * and all. mm. Sources: as `taperPipe`.
 */
export function taperDrills(
  taper: TaperPipe,
  pitch: number,
  oversizeShare: number,
  series?: readonly DrillSeries[],
): DrillChoice[] {
  const window = { ...taper.window, major: taper.major, pitch, oversizeShare };
  return judgeDrills(window, series).map((drill) =>
    drill.verdict === 'risk' ? { ...drill, verdict: 'inside' } : drill,
  );
}

/**
 * How much harder a taper tap turns than a parallel one of its size: the threads behind its chamfer go on
 * cutting, chips P/32 thick shared among the flutes, and thin chips cost more force for their section.
 * `groove` at the mouth and `fullThread` in mm. Source: `tap-chip-model`, derived.
 */
export function taperFactor(
  groove: Groove,
  material: Pick<Material, 'kc11' | 'mc'>,
  flutes: number,
  fullThread: number,
): number {
  const whole = grooveGeometry(groove).area;
  if (whole <= 0) return 1;
  const atBottom = { ...groove, major: groove.major - PIPE_TAPER * fullThread };
  const share = 1 - grooveGeometry(atBottom).area / whole;
  const thick = toothGeometry(groove, REFERENCE_CHAMFER, flutes).chip;
  const thin = (PIPE_TAPER * groove.pitch) / 2 / flutes;
  return 1 + share * (specificForce(material, thin) / specificForce(material, thick) - 1);
}

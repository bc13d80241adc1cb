/** The stroke that a lesson draws live, from what was studied while the page was built. Pure. */

import { engagedShare } from '../../../core/load/torque';
import { strokeBand, type StrokeBand } from '../../../core/plan/stroke-band';
import type { Stroke } from '../../../core/load/stroke';
import type { LoadedStyle } from '../../../core/plan/tap-load';
import type { StrokeChartModel } from '../../chart/strokeModel';
import { STROKES } from '../../words/en/torques';
import type { Unit } from '../../words/format';
import { fill } from '../../words/template';

/** One tap of the hole, ready to be sent in. Torque in N·m with the whole chamfer in thick metal. */
export interface StrokeTap {
  style: LoadedStyle;
  name: string;
  /** As studied in the hole of the lesson; the thickness may be changed. */
  stroke: Omit<Stroke, 'thickness' | 'travel'>;
  torque: { low: number; expected: number; high: number };
}

export interface StrokeCase {
  thread: string;
  material: string;
  blind: boolean;
  /** mm; of no account in a blind hole. */
  thickness: number;
  taps: StrokeTap[];
}

export interface StrokeTrial {
  style: LoadedStyle;
  /** Null while what was typed is no such number. */
  thickness: number | null;
}

/** Plate of a quarter diameter to work of two diameters, mm. */
export function thicknessLimits({ taps }: StrokeCase): { min: number; max: number } {
  const { major } = taps[0]!.stroke.groove;
  return { min: 0.25 * major, max: 2 * major };
}

function tapOf({ taps }: StrokeCase, style: LoadedStyle): StrokeTap {
  return taps.find((tap) => tap.style === style) ?? taps[0]!;
}

function strokeIn(job: StrokeCase, tap: StrokeTap, thickness: number): Stroke {
  const { pitch } = tap.stroke.groove;
  if (job.blind) return { ...tap.stroke, thickness: Infinity };
  // Out with the whole chamfer, and one pitch more.
  const travel = thickness + (tap.stroke.threads + 1) * pitch;
  return { ...tap.stroke, fullThread: thickness, thickness, travel };
}

/** Points along the curve: enough to look smooth, few enough to send. */
const POINTS = 36;

export interface Stroked {
  model: StrokeChartModel;
  sentence: string;
}

function bandOf(job: StrokeCase, tap: StrokeTap, thickness: number): StrokeBand {
  const stroke = strokeIn(job, tap, thickness);
  const band = strokeBand({ stroke, torque: tap.torque }, POINTS);
  if (!band.ok) throw new Error(`No stroke of ${job.thread}.`);
  return band.value;
}

/** The chart of a trial, with its peak in words. */
export function stroked(job: StrokeCase, trial: StrokeTrial, unit: Unit): Stroked {
  const tap = tapOf(job, trial.style);
  const thickness = trial.thickness ?? job.thickness;
  const band = bandOf(job, tap, thickness);
  const { low, expected, high } = tap.torque;
  const { torque, travel } = band.peak;
  const numbers = {
    torque,
    low: (torque * low) / expected,
    high: (torque * high) / expected,
    travel,
    engaged: job.blind ? 1 : engagedShare(tap.stroke.groove, tap.stroke.threads, thickness),
  };
  const told = fill(STROKES.sentence, numbers, unit);
  const words = { thread: job.thread, tap: tap.name.toLowerCase(), material: job.material };
  return {
    sentence: numbers.engaged < 0.995 ? `${told} ${fill(STROKES.thin, numbers, unit)}` : told,
    model: {
      band,
      conditions: fill(STROKES.conditions, words, unit),
      process: tap.stroke.process,
      blind: job.blind,
      unit,
    },
  };
}

/** Peak torque in thin plate over that in the lesson's own work, N·m. */
export function thinShare(
  job: StrokeCase,
  style: LoadedStyle,
  plate: number,
): { full: number; thin: number; share: number } {
  const tap = tapOf(job, style);
  const [full, thin] = [job.thickness, plate].map(
    (thickness) => bandOf(job, tap, thickness).peak.torque,
  );
  return { full: full!, thin: thin!, share: thin! / full! };
}

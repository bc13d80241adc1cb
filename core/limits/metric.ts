/** Limits of metric internal threads: ISO 965-1 tolerances on ISO 724 basic sizes. */

import {
  DEVIATION_G,
  DIAMETER_STEPS,
  MINOR_TOLERANCE,
  PITCH_TOLERANCE,
} from '../data/iso-965-tolerances';
import { answer, refuse, type Note, type Outcome } from '../outcome';
import { diameterStep } from '../thread/metric-series';
import { J_MINOR_DROP, MINOR_DROP, PITCH_DROP } from '../thread/profile';
import type { Thread } from '../thread/thread';
import { roundHalfUp, roundToR40 } from '../units';
import { limitsNote, limitsProblem } from './codes';
import type { ThreadLimits } from './limits';

type Position = 'G' | 'H';

interface MetricClass {
  pitchGrade: number;
  pitchPosition: Position;
  minorGrade: number;
  minorPosition: Position;
}

/** Grades as multiples of grade 6: internal pitch diameter (of external Td2), internal minor diameter. */
const PITCH_FACTOR: Readonly<Record<number, number>> = {
  4: 0.85,
  5: 1.06,
  6: 1.32,
  7: 1.7,
  8: 2.12,
};
const MINOR_FACTOR: Readonly<Record<number, number>> = { 4: 0.63, 5: 0.8, 6: 1, 7: 1.25, 8: 1.6 };

/** Micrometres, and whether the standard tabulates them. */
interface Cell {
  value: number;
  tabulated: boolean;
}

function cell(table: number | null | undefined, formula: () => number): Cell {
  return table === null || table === undefined
    ? { value: roundToR40(formula()), tabulated: false }
    : { value: table, tabulated: true };
}

/** A class such as `6H`, `5H6H` or `4H5H`: grade of the pitch diameter first, then of the minor. */
function readClass(text: string): MetricClass | null {
  const found = /^([4-8])([GH])(?:([4-8])([GH]))?$/.exec(text);
  if (!found) return null;
  const [, pitchGrade, pitchPosition, minorGrade = pitchGrade, minorPosition = pitchPosition] =
    found;
  return {
    pitchGrade: Number(pitchGrade),
    pitchPosition: pitchPosition as Position,
    minorGrade: Number(minorGrade),
    minorPosition: minorPosition as Position,
  };
}

/** External pitch-diameter tolerance of grade 6, micrometres: 90 P^0.4 d^0.1, d the mean of the step. */
export function externalPitchToleranceSix(diameter: number, pitch: number): number {
  const [over, to] = DIAMETER_STEPS[diameterStep(diameter)] ?? [diameter, diameter];
  return 90 * pitch ** 0.4 * Math.sqrt(over * to) ** 0.1;
}

function pitchTolerance(diameter: number, pitch: number, grade: number): Cell {
  const table = PITCH_TOLERANCE[diameterStep(diameter)]?.[pitch]?.[grade - 4];
  return cell(table, () => (PITCH_FACTOR[grade] ?? 1) * externalPitchToleranceSix(diameter, pitch));
}

function minorTolerance(pitch: number, grade: number): Cell {
  const six = pitch < 1 ? 433 * pitch - 190 * pitch ** 1.22 : 230 * pitch ** 0.7;
  return cell(MINOR_TOLERANCE[pitch]?.[grade - 4], () => (MINOR_FACTOR[grade] ?? 1) * six);
}

/** Deviation of position G: 15 + 11 P, smoothed by the table. */
export function deviationG(pitch: number): Cell {
  return cell(DEVIATION_G[pitch], () => 15 + 11 * pitch);
}

function deviation(position: Position, pitch: number): Cell {
  return position === 'G' ? deviationG(pitch) : { value: 0, tabulated: true };
}

/** Basic sizes of the hole, mm. A wire insert's hole is the thread shifted out by one thread height. */
function basics(thread: Thread): { major: number; pitch: number; minor: number } {
  const { diameter, pitch } = thread;
  const major = thread.insert ? diameter + 2 * PITCH_DROP * pitch : diameter;
  const drop = thread.form === 'MJ' && !thread.insert ? J_MINOR_DROP : MINOR_DROP;
  return {
    major: roundHalfUp(major, 0.001),
    pitch: roundHalfUp(major - PITCH_DROP * pitch, 0.001),
    minor: roundHalfUp(major - drop * pitch, 0.001),
  };
}

/** An insert's minor diameter is held to grade 5 by some insert makers and, as recalled, by DIN 8140. */
function insertNote(thread: Thread, minorMin: number, minorGrade: number): Note[] {
  if (!thread.insert || minorGrade <= 5) return [];
  const max = roundHalfUp(minorMin + minorTolerance(thread.pitch, 5).value / 1000, 0.001);
  return [{ ...limitsNote('insert-minor-closer', { minorMax: max }), source: 'from-memory' }];
}

/**
 * Limits of a metric thread in mm, to 0.001.
 * Table first; where ISO 965-1 has no cell, its formula and the nearest preferred number, `basis: computed`.
 * Refuses `class-unknown`, and `outside-tolerances` beyond 0.99 to 355 mm and pitches of 0.2 to 8 mm.
 */
export function metricLimits(thread: Thread): Outcome<ThreadLimits> {
  const grades = readClass(thread.class);
  if (!grades) return refuse(limitsProblem('class-unknown', thread, { class: thread.class }));
  const { diameter, pitch } = thread;
  if (diameterStep(diameter) < 0 || !(pitch >= 0.2 && pitch <= 8)) {
    return refuse(limitsProblem('outside-tolerances', thread));
  }
  const pitchShift = deviation(grades.pitchPosition, pitch);
  const minorShift = deviation(grades.minorPosition, pitch);
  const onPitch = pitchTolerance(diameter, pitch, grades.pitchGrade);
  const onMinor = minorTolerance(pitch, grades.minorGrade);
  const basic = basics(thread);
  const up = (size: number, ...micrometres: number[]) =>
    roundHalfUp(
      micrometres.reduce((sum, each) => sum + each / 1000, size),
      0.001,
    );
  const tabulated = [pitchShift, minorShift, onPitch, onMinor].every((each) => each.tabulated);
  const minorMin = up(basic.minor, minorShift.value);
  const limits: ThreadLimits = {
    unit: 'mm',
    pitch: {
      min: up(basic.pitch, pitchShift.value),
      max: up(basic.pitch, pitchShift.value, onPitch.value),
    },
    minor: { min: minorMin, max: up(basic.minor, minorShift.value, onMinor.value) },
    majorMin: up(basic.major, pitchShift.value),
    basis: tabulated ? 'tabulated' : 'computed',
  };
  const notes = tabulated ? [] : [limitsNote('not-tabulated')];
  return answer(limits, [...notes, ...insertNote(thread, minorMin, grades.minorGrade)]);
}

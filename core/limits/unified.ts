/**
 * Limits of Unified internal threads: ASME B1.1 formulas, computed and rounded in inches.
 * Whole numbers of millionths and ten-thousandths carry every sum, so that no half is flipped by a float.
 */

import { answer, refuse, type Note, type Outcome } from '../outcome';
import type { Thread } from '../thread/thread';
import { tenThousandths, unifiedSeries } from '../thread/unified-series';
import { roundHalfUp } from '../units';
import { limitsNote, limitsProblem } from './codes';
import type { ThreadLimits } from './limits';

/** Millionths of an inch in one ten-thousandth and in one thousandth. */
const FOUR_PLACES = 100;
const THREE_PLACES = 1000;

/** Smaller sizes, #0 to #5, keep four places in the minor diameter. Ten-thousandths of an inch. */
const THREE_PLACES_FROM = 1380;

/** Pitch-diameter tolerance of each class, as a multiple of the external class 2A one. */
const CLASS_FACTOR: Readonly<Record<string, number>> = { '1B': 1.95, '2B': 1.3, '3B': 0.975 };

/**
 * Diameters at which the printed tables of the constant-pitch, extra-fine and special threads compute
 * their pitch-diameter tolerance, inches: the nearest one, of two equally near the smaller.
 * Found by fitting printed rows, not read in the standard; above 2 they rest on few rows.
 */
const TOLERANCE_STEPS = [0.19, 0.25, 0.375, 0.5, 0.625, 0.75, 1, 1.25, 1.5, 2, 2.5, 3, 4, 5, 6];

/** The one printed cell that the formula misses by .0001: maximum pitch diameter of #6-32 UNC-3B, inches. */
const PRINTED_CELL = { size: 1380, tpi: 32, class: '3B', pitchMax: 0.1204 };

/** Largest diameter of the standard's tables, inches. */
const LARGEST = 6;

interface Basics {
  /** Basic major diameter, millionths of an inch (whole ten-thousandths). */
  major: number;
  /** Pitch, inches to eight places. */
  pitch: number;
  tpi: number;
  series: string;
}

/** A multiple of the pitch, rounded to six places, in millionths of an inch. */
export function pitchMultiple(factor: number, tpi: number): number {
  return Math.round(roundHalfUp(factor * roundHalfUp(1 / tpi, 1e-8), 1e-6) * 1e6);
}

/** Half-up to a coarser place, in millionths. */
function toPlaces(millionths: number, place: number): number {
  return roundHalfUp(millionths / place, 1) * place;
}

const inches = (millionths: number): number => Math.round(millionths) / 1e6;

/** Series whose tolerances assume an engagement of one diameter; the others assume nine pitches. */
function engagesOneDiameter(series: string, major: number, tpi: number): boolean {
  const listed = ['UNC', 'UNF', '4-UN', '6-UN', '8-UN'].includes(series);
  return listed || (series === 'UNS' && major === 1e6 && tpi === 14);
}

function nearestStep(diameter: number): number {
  return TOLERANCE_STEPS.reduce((near, step) =>
    Math.abs(step - diameter) < Math.abs(near - diameter) - 1e-9 ? step : near,
  );
}

/**
 * External class 2A pitch-diameter tolerance, inches to six places, on which all classes rest:
 * 0.0015 D^(1/3) + 0.0015 LE^(1/2) + 0.015 P^(2/3). Source: ASME B1.1 by way of open data; recomputed.
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
 * or to 15 P in the nine-pitch series; to twice that 1.25, beyond 1.5. `engagement` in mm.
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

/**
 * Minimum and maximum minor diameter, millionths of an inch. Listed series round the basic size to four
 * places first and then, from #6 up, classes 1B and 2B to three; specials round once, from six places.
 * Class 3B keeps four places in the maximum and adds a zero to the three of the minimum.
 */
function minorLimits({ major, tpi, series }: Basics, grade: string) {
  const exact = major - pitchMultiple(1.08253175, tpi);
  const basic = series === 'UNS' ? exact : toPlaces(exact, FOUR_PLACES);
  const tolerance = minorTolerance(major / 1e6, tpi, grade) * 1e6;
  const small = major / 100 < THREE_PLACES_FROM;
  const minPlaces = small ? FOUR_PLACES : THREE_PLACES;
  const maxPlaces = small || grade === '3B' ? FOUR_PLACES : THREE_PLACES;
  return { min: toPlaces(basic, minPlaces), max: toPlaces(basic + tolerance, maxPlaces) };
}

/** J threads: the minor diameter is D - 0.974279 P to four places; its maximum is not held with confidence. */
function minorLimitsJ({ major, tpi }: Basics) {
  return { min: toPlaces(major - pitchMultiple(0.97427858, tpi), FOUR_PLACES) };
}

/** Hole of a wire insert: one thread height further out, tolerances of the nominal thread. */
function insertShift(tpi: number): number {
  return pitchMultiple(1.2990381, tpi);
}

interface UnifiedOptions {
  /** Length of engagement, mm, where it is long: widens the pitch-diameter tolerance. */
  engagement?: number;
}

/**
 * Limits of a Unified thread in inches: four places, the minor diameter as its standard prints it.
 * `basis` is `computed`, save for the one printed cell that stands against its formula.
 * Refuses `class-unknown`, and `outside-tolerances` above 6 inches.
 */
export function unifiedLimits(thread: Thread, options: UnifiedOptions = {}): Outcome<ThreadLimits> {
  const factor = CLASS_FACTOR[thread.class];
  if (!thread.inch || factor === undefined) {
    return refuse(limitsProblem('class-unknown', thread, { class: thread.class }));
  }
  const { diameter, tpi } = thread.inch;
  if (diameter > LARGEST || !(diameter > 0))
    return refuse(limitsProblem('outside-tolerances', thread));
  const nominal = tenThousandths(diameter);
  const shift = thread.insert ? insertShift(tpi) : 0;
  const basics: Basics = {
    major: nominal * FOUR_PLACES,
    pitch: roundHalfUp(1 / tpi, 1e-8),
    tpi,
    series: unifiedSeries(diameter, tpi),
  };
  const longer =
    options.engagement === undefined ? 1 : engagementFactor(thread, options.engagement);
  const tolerance = factor * longer * pitchToleranceTwoA(nominal / 10000, tpi);
  const pitchMin = toPlaces(basics.major + shift - pitchMultiple(0.64951905, tpi), FOUR_PLACES);
  const pitchMax = pitchMin + roundHalfUp(tolerance, 0.0001) * 1e6;
  const printed =
    nominal === PRINTED_CELL.size &&
    tpi === PRINTED_CELL.tpi &&
    thread.class === PRINTED_CELL.class;
  const stands = printed && longer === 1 && !thread.insert;
  const minor = minorOf(thread, basics, shift);
  const notes: Note[] = [];
  if (longer !== 1) notes.push(limitsNote('long-engagement', { factor: longer }));
  if (minor.max === undefined) notes.push(limitsNote('minor-max-unknown'));
  if (stands) notes.push(limitsNote('printed-cell'));
  if (!thread.standard) notes.push(limitsNote('not-tabulated'));
  const limits: ThreadLimits = {
    unit: 'in',
    pitch: { min: inches(pitchMin), max: stands ? PRINTED_CELL.pitchMax : inches(pitchMax) },
    minor: {
      min: inches(minor.min),
      ...(minor.max === undefined ? {} : { max: inches(minor.max) }),
    },
    majorMin: inches(toPlaces(basics.major + shift, FOUR_PLACES)),
    basis: 'computed',
  };
  return answer(limits, notes);
}

function minorOf(thread: Thread, basics: Basics, shift: number): { min: number; max?: number } {
  if (thread.insert) {
    const exact = basics.major + shift - pitchMultiple(1.08253175, basics.tpi);
    const min = toPlaces(exact, FOUR_PLACES);
    const tolerance = minorTolerance(basics.major / 1e6, basics.tpi, thread.class) * 1e6;
    return { min, max: min + tolerance };
  }
  return thread.form === 'UNJ' ? minorLimitsJ(basics) : minorLimits(basics, thread.class);
}

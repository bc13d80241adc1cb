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
import {
  CLASS_FACTOR,
  engagementFactor,
  minorTolerance,
  pitchMultiple,
  pitchToleranceTwoA,
} from './unified-tolerances';

/** Millionths of an inch in one ten-thousandth and in one thousandth. */
const FOUR_PLACES = 100;
const THREE_PLACES = 1000;

/** Smaller sizes, #0 to #5, keep four places in the minor diameter. Ten-thousandths of an inch. */
const THREE_PLACES_FROM = 1380;

/** The one printed cell that the formula misses by .0001: maximum pitch diameter of #6-32 UNC-3B, inches. */
const PRINTED_CELL = { size: 1380, tpi: 32, class: '3B', pitchMax: 0.1204 };

/** Largest diameter of the standard's tables, inches. */
const LARGEST = 6;

interface Basics {
  /** Basic major diameter, millionths of an inch (whole ten-thousandths). */
  major: number;
  /** How much further out the hole of a wire insert lies, millionths: one thread height a side. */
  shift: number;
  tpi: number;
  series: string;
}

/** Half-up to a coarser place, in millionths. */
function toPlaces(millionths: number, place: number): number {
  return roundHalfUp(millionths / place, 1) * place;
}

const inches = (millionths: number): number => Math.round(millionths) / 1e6;

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

/** Hole of a wire insert: four places, the minor-diameter tolerance of the nominal thread. */
function minorLimitsInsert({ major, shift, tpi }: Basics, grade: string) {
  const min = toPlaces(major + shift - pitchMultiple(1.08253175, tpi), FOUR_PLACES);
  return { min, max: min + minorTolerance(major / 1e6, tpi, grade) * 1e6 };
}

function minorOf(thread: Thread, basics: Basics): { min: number; max?: number } {
  if (thread.insert) return minorLimitsInsert(basics, thread.class);
  return thread.form === 'UNJ' ? minorLimitsJ(basics) : minorLimits(basics, thread.class);
}

/** Minimum and maximum pitch diameter, millionths of an inch; `widening` for a long engagement. */
function pitchLimits({ major, shift, tpi }: Basics, factor: number, widening: number) {
  const min = toPlaces(major + shift - pitchMultiple(0.64951905, tpi), FOUR_PLACES);
  const tolerance = factor * widening * pitchToleranceTwoA(major / 1e6, tpi);
  return { min, max: min + roundHalfUp(tolerance, 0.0001) * 1e6 };
}

function isPrintedCell(thread: Thread, { major, tpi }: Basics): boolean {
  const { size, tpi: printedTpi, class: grade } = PRINTED_CELL;
  const same = major / FOUR_PLACES === size && tpi === printedTpi && thread.class === grade;
  return same && !thread.insert;
}

interface UnifiedOptions {
  /** Length of engagement, mm, where it is long: widens the pitch-diameter tolerance. */
  engagement?: number;
}

/**
 * Limits of a Unified thread in inches: four places, the minor diameter as its standard prints it.
 * `basis` is `computed`; the one printed cell that stands against its formula is noted.
 * Refuses `class-unknown`, and `outside-tolerances` above 6 inches.
 */
export function unifiedLimits(thread: Thread, options: UnifiedOptions = {}): Outcome<ThreadLimits> {
  const factor = CLASS_FACTOR[thread.class];
  if (!thread.inch || factor === undefined) {
    return refuse(limitsProblem('class-unknown', thread, { class: thread.class }));
  }
  const { diameter, tpi } = thread.inch;
  if (!(diameter > 0 && diameter <= LARGEST)) {
    return refuse(limitsProblem('outside-tolerances', thread));
  }
  const basics: Basics = {
    major: tenThousandths(diameter) * FOUR_PLACES,
    shift: thread.insert ? pitchMultiple(1.2990381, tpi) : 0,
    tpi,
    series: unifiedSeries(diameter, tpi),
  };
  const { engagement } = options;
  const widening = engagement === undefined ? 1 : engagementFactor(thread, engagement);
  const pitch = pitchLimits(basics, factor, widening);
  const minor = minorOf(thread, basics);
  const printed = widening === 1 && isPrintedCell(thread, basics);
  const notes: Note[] = [];
  if (widening !== 1) notes.push(limitsNote('long-engagement', { factor: widening }));
  if (minor.max === undefined) notes.push(limitsNote('minor-max-unknown'));
  if (printed) notes.push(limitsNote('printed-cell'));
  if (!thread.standard) notes.push(limitsNote('not-tabulated'));
  const limits: ThreadLimits = {
    unit: 'in',
    pitch: { min: inches(pitch.min), max: printed ? PRINTED_CELL.pitchMax : inches(pitch.max) },
    minor: {
      min: inches(minor.min),
      ...(minor.max === undefined ? {} : { max: inches(minor.max) }),
    },
    majorMin: inches(toPlaces(basics.major + basics.shift, FOUR_PLACES)),
    basis: 'computed',
  };
  return answer(limits, notes);
}

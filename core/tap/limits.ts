/**
 * Pitch-diameter limits of ground taps: the letter and number on the shank.
 *
 * - H and L (ASME B94.9): half-thousandths of an inch above or below the basic pitch diameter.
 * - D (ASME B94.9, metric): steps of 0.013 mm above the basic pitch diameter.
 * - ISO 2857 classes 1, 2, 3: shares of the grade 5 tolerance of the pitch diameter.
 */

import { PITCH_TOLERANCE } from '../data/iso-965-tolerances';
import { answer, refuse, type Outcome } from '../outcome';
import type { SourceId } from '../sources';
import { diameterStep } from '../thread/metric-series';
import type { Thread } from '../thread/thread';
import { mmToInch, roundHalfUp, type Range } from '../units';
import { basicInch, basicMetric } from './basic-pitch';
import { tapMajor } from './major';

export const TAP_LIMIT_SYSTEMS = ['H', 'L', 'D', 'ISO'] as const;

export type TapLimitSystem = (typeof TAP_LIMIT_SYSTEMS)[number];

/** Why there is no such tap limit. `data.limit` names what was asked for. */
export const TAP_LIMIT_PROBLEM_CODES = [
  /** H5 for M8, D5 for 1/4-20, any for a pipe thread. data: limit, designation. */
  'tap-limit-other-system',
  /** H0, ISO 4, D2.5. data: limit. */
  'tap-limit-number',
  /** Larger than the lists go, or no grade 5 cell for ISO 2857. data: limit, designation. */
  'tap-limit-beyond',
] as const;

export type TapLimitProblemCode = (typeof TAP_LIMIT_PROBLEM_CODES)[number];

export interface TapLimit {
  system: TapLimitSystem;
  number: number;
  /** As marked or spoken: `H5`, `L1`, `D6`, `ISO 2`. */
  name: string;
  unit: 'in' | 'mm';
  /** Pitch diameter of the tap, in `unit`. */
  pitch: Range;
  source: SourceId;
}

/** Largest major diameter the inch and metric lists speak for, inches and mm. Source: `handbook-tap-limits`, memory. */
const LARGEST_INCH = 2;
const LARGEST_METRIC = 36;

/** The most steps a list goes up: H11, D15; the least: L4. Common practice. */
export const MOST_STEPS = { H: 11, L: 4, D: 15, ISO: 3 } as const;

/** One step, and the width of a limit. Inches. */
const INCH_STEP = 0.0005;
const METRIC_STEP = 0.013;

/** Width of a metric limit by pitch, mm: to 0.75 and from 2 mm pitch from memory, the others read. */
function metricWidth(pitch: number): number {
  if (pitch < 0.8) return 0.015;
  if (pitch < 1) return 0.02;
  if (pitch < 1.25) return 0.025;
  return pitch < 2 ? 0.031 : 0.041;
}

/** Tolerance of the ISO 2857 classes as shares of grade 5, from and to. */
const ISO_SHARES: readonly (readonly [number, number])[] = [
  [0.1, 0.3],
  [0.3, 0.5],
  [0.5, 0.7],
];

const name = (system: TapLimitSystem, number: number): string =>
  system === 'ISO' ? `ISO ${number}` : `${system}${number}`;

function inchLimit(thread: Thread, system: 'H' | 'L', number: number): TapLimit {
  const basic = basicInch(thread);
  // Insert taps above 1 inch are printed twice as wide; plain ones are not.
  const width = thread.insert && mmToInch(tapMajor(thread)) > 1 ? 0.001 : INCH_STEP;
  const far = basic + (system === 'H' ? number : -number) * INCH_STEP;
  const [min, max] = system === 'H' ? [far - width, far] : [far, far + width];
  const pitch = { min: roundHalfUp(min, 0.0001), max: roundHalfUp(max, 0.0001) };
  return {
    system,
    number,
    name: name(system, number),
    unit: 'in',
    pitch,
    source: 'handbook-tap-limits',
  };
}

function metricLimit(thread: Thread, number: number): TapLimit {
  const max = basicMetric(thread) + number * METRIC_STEP;
  const min = max - metricWidth(thread.pitch);
  const read = thread.pitch >= 0.8 && thread.pitch < 2;
  const pitch = { min: roundHalfUp(min, 0.001), max: roundHalfUp(max, 0.001) };
  const source = read ? 'asme-b94-9' : 'from-memory';
  return { system: 'D', number, name: name('D', number), unit: 'mm', pitch, source };
}

function isoLimit(thread: Thread, number: number): TapLimit | null {
  const grade = PITCH_TOLERANCE[diameterStep(thread.diameter)]?.[thread.pitch]?.[1];
  const shares = ISO_SHARES[number - 1];
  if (grade === null || grade === undefined || !shares) return null;
  const [from, to] = shares.map((share) => roundHalfUp(share * grade, 1) / 1000);
  const basic = basicMetric(thread);
  const at = (up = 0) => roundHalfUp(basic + up, 0.001);
  const pitch = { min: at(from), max: at(to) };
  return {
    system: 'ISO',
    number,
    name: name('ISO', number),
    unit: 'mm',
    pitch,
    source: 'iso-2857',
  };
}

/** Which systems a thread's taps are marked in. Inch limits also mark metric wire-insert taps. Source: `handbook-tap-limits`. */
export function tapLimitSystems(thread: Thread): TapLimitSystem[] {
  if (thread.system === 'pipe') return [];
  if (thread.system === 'unified' || thread.insert) return ['H', 'L'];
  return ['D', 'ISO'];
}

/**
 * The pitch diameter of a tap marked so, for this thread.
 *
 * @param number 1 to 11 (H), 1 to 4 (L), 1 to 15 (D), 1 to 3 (ISO): whole.
 * @returns the limits in inches (H, L; to 0.0001) or mm (D, ISO; to 0.001). Refuses with
 *   `TAP_LIMIT_PROBLEM_CODES`. Sources: `handbook-tap-limits`, `asme-b94-9`, `iso-2857`.
 *
 * @example
 * tapLimit(readThread('3/8-16 UNC').value, 'H', 1).value.pitch // { min: 0.3344, max: 0.3349 }
 */
export function tapLimit(
  thread: Thread,
  system: TapLimitSystem,
  number: number,
): Outcome<TapLimit> {
  const data = { limit: name(system, number), designation: thread.designation };
  const no = (code: TapLimitProblemCode) => refuse({ code, field: 'limit', data });
  if (!tapLimitSystems(thread).includes(system)) return no('tap-limit-other-system');
  if (!Number.isInteger(number) || number < 1 || number > MOST_STEPS[system]) {
    return no('tap-limit-number');
  }
  if (system === 'ISO') {
    const found = isoLimit(thread, number);
    return found ? answer(found) : no('tap-limit-beyond');
  }
  if (system === 'D') {
    return thread.diameter > LARGEST_METRIC
      ? no('tap-limit-beyond')
      : answer(metricLimit(thread, number));
  }
  const tooLarge = mmToInch(thread.diameter) > LARGEST_INCH + 1e-9;
  return tooLarge ? no('tap-limit-beyond') : answer(inchLimit(thread, system, number));
}

/** Which tap limits suit the class on the drawing: checked against its pitch-diameter zone, not taken from a list. */

import {
  INCH_LIST_RECALLED,
  INSERT_H,
  INSERT_H_METRIC,
  METRIC_LIST_READ,
  RECOMMENDED_D,
  RECOMMENDED_H,
} from '../data/tap-limit-lists';
import type { ThreadLimits } from '../limits/limits';
import type { SourceId } from '../sources';
import type { Thread } from '../thread/thread';
import { inchToMm, mmToInch, type Range } from '../units';
import {
  MOST_STEPS,
  tapLimit,
  tapLimitSystems,
  type TapLimit,
  type TapLimitSystem,
} from './limits';

/** How much larger than itself a sound tap may cut: one inch step, one metric step. Common practice. */
export const LIKELY_OVERCUT = { in: 0.0005, mm: 0.013 } as const;

/** Slack for comparing decimals; far below the last digit. */
const HAIR = 1e-7;

export interface TapLimitChoice extends TapLimit {
  /**
   * `inside`: the tap lies in the zone and does even if it cuts a step large; `risk`: only if it cuts its own
   * size; `outside`: too large, or too small to let the GO gauge in.
   */
  verdict: 'inside' | 'risk' | 'outside';
  /** What a smallest such tap may wear before the GO gauge stops, in `unit`; below 0: too small new. */
  wear: number;
  /** How much larger than itself a largest such tap may cut before the NOT GO enters, in `unit`. */
  spare: number;
  /** In a printed list for this thread and class; with the list it stands in. */
  listed: SourceId | null;
}

/** Judges one tap limit against a zone of pitch diameters in the limit's own unit. Source: derived. */
export function judgeTapLimit(
  limit: TapLimit,
  zone: Range,
  listed: SourceId | null,
): TapLimitChoice {
  const wear = limit.pitch.min - zone.min;
  const spare = zone.max - limit.pitch.max;
  const outside = wear < -HAIR || spare < -HAIR;
  const verdict = outside
    ? 'outside'
    : spare >= LIKELY_OVERCUT[limit.unit] - HAIR
      ? 'inside'
      : 'risk';
  return { ...limit, verdict, wear, spare, listed };
}

/** Internal classes that each ISO 2857 class is meant for. */
const ISO_CLASSES: readonly (readonly string[])[] = [
  ['4H', '5H'],
  ['6H', '4G', '5G'],
  ['6G', '7H', '8H'],
];

function insertNumber(thread: Thread): number | undefined {
  if (thread.system === 'unified') {
    const row = INSERT_H[`${thread.inch?.size}-${thread.inch?.tpi}`];
    return row?.[thread.class === '3B' ? 1 : 0];
  }
  return INSERT_H_METRIC[`${thread.diameter}x${thread.pitch}`]?.[thread.class === '4H' ? 0 : 1];
}

function inchListed(thread: Thread): { number: number; source: SourceId } | null {
  if (thread.insert) {
    const number = insertNumber(thread);
    return number === undefined ? null : { number, source: 'handbook-tap-limits' };
  }
  const key = `${thread.inch?.size}-${thread.inch?.tpi}`;
  const row = RECOMMENDED_H[key];
  if (!row || thread.class === '1B') return null;
  const number = row[thread.class === '3B' ? 1 : 0];
  if ((thread.inch?.diameter ?? 0) > 1) return { number, source: 'handbook-tap-limits' };
  return { number, source: INCH_LIST_RECALLED.includes(key) ? 'from-memory' : 'tap-limit-lists' };
}

/** The list that names this limit for the thread and its class, or null. */
function listing(thread: Thread, system: TapLimitSystem, number: number): SourceId | null {
  if (system === 'ISO') {
    // In a double class like 4H5H the first grade is that of the pitch diameter.
    return ISO_CLASSES[number - 1]?.includes(thread.class.slice(0, 2)) ? 'iso-2857' : null;
  }
  if (system === 'H') {
    const listed = inchListed(thread);
    return listed?.number === number ? listed.source : null;
  }
  const key = `${thread.diameter}x${thread.pitch}`;
  if (system !== 'D' || thread.class !== '6H' || RECOMMENDED_D[key] !== number) return null;
  return METRIC_LIST_READ.includes(key) ? 'tap-limit-lists' : 'from-memory';
}

function inUnit(zone: Range, from: 'mm' | 'in', to: 'mm' | 'in'): Range {
  if (from === to) return zone;
  const convert = to === 'in' ? mmToInch : inchToMm;
  return { min: convert(zone.min), max: convert(zone.max) };
}

/**
 * Every tap limit near this thread's zone, judged: by system, small to large, each system's neighbours just
 * outside included, so that a reader sees why they will not do.
 *
 * @param limits of the thread's class; @param zone pitch diameters to hit, in the unit of `limits`, mm or inches; `limits` from `threadLimits`: the class's
 *   own unless a coating moves it; @param which `all` keeps those far outside too. Never refuses: empty for pipe threads and sizes no list speaks for.
 *   Sources: `tap-limit-lists`, `handbook-tap-limits`, `iso-2857`; the verdict derived.
 */
export function judgeTapLimits(
  thread: Thread,
  limits: ThreadLimits,
  zone: Range = limits.pitch,
  which: 'near' | 'all' = 'near',
): TapLimitChoice[] {
  return tapLimitSystems(thread).flatMap((system) => {
    const steps = Array.from({ length: MOST_STEPS[system] }, (_, index) => index + 1);
    const judged = steps.flatMap((number) => {
      const found = tapLimit(thread, system, number);
      if (!found.ok) return [];
      const { value } = found;
      const own = inUnit(zone, limits.unit, value.unit);
      return [judgeTapLimit(value, own, listing(thread, system, number))];
    });
    return which === 'all' ? judged : nearOnes(judged, system);
  });
}

/** A system's limits inside the zone, with one neighbour to either side; the ISO classes are all shown. */
function nearOnes(judged: TapLimitChoice[], system: TapLimitSystem): TapLimitChoice[] {
  if (system === 'ISO') return judged;
  const inside = (choice: TapLimitChoice | undefined) =>
    choice !== undefined && choice.verdict !== 'outside';
  return judged.filter(
    (choice, index) => inside(choice) || inside(judged[index - 1]) || inside(judged[index + 1]),
  );
}

/** The chart of percent of thread against the hole, from the core's own rule. */

import { holeForPercent, percentThread } from '../../../core/drill/percent';
import { inchToMm, mmToInch } from '../../../core/units';
import type { Chart, Reference } from '../../chart/types';
import { PERCENT } from '../../words/en/percents';
import { decimals, limitNumber, type Unit } from '../../words/format';
import { fill } from '../../words/template';

/** What the chart needs of a thread, read while the page is built. Lengths mm. */
export interface HoleCase {
  designation: string;
  class: string;
  major: number;
  pitch: number;
  /** Holes that the class allows. */
  min: number;
  max: number;
}

/** Percent on the shop base that the chart runs between. */
const MOST = 95;
const LEAST = 50;

/** Holes that can be tried, mm. */
export function holeSpan({ major, pitch }: HoleCase): { min: number; max: number } {
  return {
    min: holeForPercent(major, pitch, MOST, 'shop'),
    max: holeForPercent(major, pitch, LEAST, 'shop'),
  };
}

/** For one press of a button, mm: a tenth, or four thousandths of an inch. */
export function holeStep(unit: Unit): number {
  return unit === 'mm' ? 0.1 : inchToMm(0.004);
}

export interface Tried {
  chart: Chart;
  sentence: string;
  passes: boolean;
}

function verdictOf(thread: HoleCase, hole: number): { template: string; by: number } {
  const hair = 1e-6;
  if (hole > thread.max + hair) return { template: PERCENT.large, by: hole - thread.max };
  if (hole < thread.min - hair) return { template: PERCENT.small, by: thread.min - hole };
  return { template: PERCENT.inside, by: 0 };
}

function lines(thread: HoleCase, show: (mm: number) => number) {
  const { min, max } = holeSpan(thread);
  const ends = Array.from({ length: 10 }, (_, index) => min + ((max - min) * index) / 9);
  return (['shop', 'iso'] as const).map((base) => ({
    label: { short: PERCENT[base], long: PERCENT[`${base}Long`] },
    look: base === 'shop' ? (0 as const) : (1 as const),
    strong: base === 'shop',
    data: ends.map((hole) => ({
      x: show(hole),
      mid: percentThread(thread.major, thread.pitch, hole)[base],
    })),
  }));
}

/** Percent of thread that a hole leaves, on both bases, and whether its class allows it. Hole mm; null while none is typed. */
export function tried(
  thread: HoleCase,
  hole: number | null,
  guess: number | null,
  unit: Unit,
): Tried {
  const show = (mm: number) => (unit === 'mm' ? mm : mmToInch(mm));
  const size = hole ?? thread.max;
  const { shop, iso } = percentThread(thread.major, thread.pitch, size);
  const { template, by } = verdictOf(thread, size);
  const values = {
    thread: thread.designation,
    class: thread.class,
    hole: size,
    shop,
    iso,
    by,
    min: thread.min,
    max: thread.max,
  };
  const sentence = `${fill(PERCENT.sentence, values, unit)} ${fill(template, values, unit)}`;
  const span = holeSpan(thread);
  const write = (value: number) => `${decimals(value, 0)} %`;
  const references: Reference[] =
    guess === null || guess < LEAST || guess > 115
      ? []
      : [{ at: guess, label: fill(PERCENT.guessHere, { guess }, unit), tone: 'amber' }];
  return {
    sentence,
    passes: by === 0,
    chart: {
      title: PERCENT.title,
      subtitle: fill(PERCENT.subtitle, values, unit),
      description: fill(PERCENT.description, { ...values, sentence }, unit),
      x: {
        label: PERCENT.x,
        unit,
        domain: [show(span.min), show(span.max)],
        write: (value) => limitNumber(unit === 'mm' ? value : inchToMm(value), unit),
      },
      panels: [
        {
          y: { label: PERCENT.y, unit: '%', domain: [40, 120], write },
          series: lines(thread, show),
          references,
          ...(hole !== null && {
            here: { x: show(size), y: shop, label: [fill(PERCENT.here, values, unit)] },
          }),
        },
      ],
      zones: [
        {
          from: show(thread.min),
          to: show(thread.max),
          label: {
            short: fill(PERCENT.zone, values, unit),
            long: fill(PERCENT.zoneLong, values, unit),
          },
        },
      ],
    },
  };
}

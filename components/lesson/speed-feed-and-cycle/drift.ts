/** How a rounded feed lets the tap drift off its own thread: chart and sentence, from the core's check. */

import { checkFeed, exactFeed, roundedFeed, type FeedCheck } from '../../../core/cycle/feed';
import type { Chart } from '../../chart/types';
import { DRIFT } from '../../words/en/cycle';
import { decimals, length, limitLength, type Unit } from '../../words/format';
import { fill } from '../../words/template';

/** The thread in a program in inches. Lengths mm. */
export interface DriftCase {
  thread: string;
  pitch: number;
  depth: number;
}

export interface DriftTrial {
  /** rev/min; null while what was typed is no such number. */
  rpm: number | null;
  /** Decimals the feed is written with. */
  places: number;
}

/** Spindle speeds to try, rev/min. */
export const SPEEDS_TO_TRY = { min: 100, max: 1000, step: 1 } as const;
export const PLACES = [0, 1, 2, 3] as const;

/** The check of the rounded feed. */
export function checked({ pitch, depth }: DriftCase, rpm: number, places: number): FeedCheck {
  const programmed = roundedFeed(exactFeed(pitch, rpm, 'in', 'per-minute'), places);
  return checkFeed({ pitch, rpm, unit: 'in', mode: 'per-minute', programmed, thread: depth });
}

/** Drift with the sense taken off: mm. */
export const size = ({ drift }: FeedCheck): number => Math.abs(drift);

export interface Drifted {
  chart: Chart;
  sentence: string;
}

/** Chart and sentence for a trial; the last good speed stays when there is none. */
export function drifted(one: DriftCase, trial: DriftTrial, unit: Unit): Drifted {
  const { pitch, depth } = one;
  const speed = trial.rpm ?? SPEEDS_TO_TRY.min;
  const check = checked(one, speed, trial.places);
  const values = {
    thread: one.thread,
    rpm: speed,
    exact: decimals(check.exact, 4),
    feed: decimals(check.programmed, trial.places, trial.places),
    drift: limitLength(size(check), unit),
    way: size(check) < 0.0005 ? DRIFT.none : check.drift < 0 ? DRIFT.back : DRIFT.ahead,
    pitches: decimals(size(check) / pitch, 3),
    turns: check.turns,
    verdict: DRIFT.verdicts[check.verdict],
  };
  const sentence = fill(DRIFT.sentence, values, unit);
  const own = unit === 'mm' ? 1 : 1 / 25.4;
  const write = (value: number) => decimals(value, unit === 'mm' ? 3 : 4);
  return {
    sentence,
    chart: {
      title: DRIFT.titles[check.verdict],
      subtitle: fill(DRIFT.subtitle, values, unit),
      description: fill(DRIFT.description, { ...values, sentence }, unit),
      x: {
        label: DRIFT.depth,
        unit,
        domain: [0, depth * own],
        write: (value) => decimals(value, 2),
      },
      panels: [
        {
          y: { label: DRIFT.drift, unit, domain: [0, 0.5 * pitch * own], write },
          series: [
            {
              label: { short: DRIFT.line, long: DRIFT.lineLong },
              look: 0,
              strong: true,
              data: [0, 0.25, 0.5, 0.75, 1].map((share) => ({
                x: share * depth * own,
                mid: Math.min(share * size(check), 0.5 * pitch) * own,
              })),
            },
          ],
          references: [{ at: 0.05 * pitch * own, label: DRIFT.most, tone: 'amber' }],
          here: {
            x: depth * own,
            y: Math.min(size(check), 0.5 * pitch) * own,
            label: [length(size(check), unit)],
          },
        },
      ],
    },
  };
}

/** One tap held against a class, bare or coated: bar and sentence, from the core's judgement. */

import { PLATING_FACTOR, beforePlating } from '../../../core/gauge/plating';
import type { ThreadLimits } from '../../../core/limits/limits';
import type { TapLimit } from '../../../core/tap/limits';
import { judgeTapLimit, type TapLimitChoice } from '../../../core/tap/limits-judge';
import { mmToInch, type Range } from '../../../core/units';
import type { LimitBarModel } from '../../chart/limitBarMarks';
import { LIMITS } from '../../words/en/tapLimits';
import { decimals } from '../../words/format';
import { fill } from '../../words/template';

/** Limits of the classes and the taps on offer, read while the page is built; inches throughout. */
export interface LimitCase {
  thread: string;
  classes: readonly { class: string; limits: ThreadLimits }[];
  taps: readonly TapLimit[];
}

export interface LimitTrial {
  class: string;
  /** Limit number, and growth of each surface in µm; null while what was typed is no such number. */
  number: number | null;
  layer: number | null;
}

export const LAYER = { min: 0, max: 15, step: 1 } as const;

const inches = (value: number) => decimals(value, 4, 4);
const thou = (value: number) => decimals(Math.abs(value) * 1000, 1, 1);

export interface Held {
  tap: TapLimitChoice;
  zone: Range;
  bar: LimitBarModel;
  sentence: string;
}

function sentenceOf(tap: TapLimitChoice, zone: Range, trial: LimitTrial): string {
  const what = tap.verdict === 'outside' ? (tap.wear < -1e-7 ? 'small' : 'large') : tap.verdict;
  const values = {
    tap: tap.name,
    class: trial.class,
    wear: thou(tap.wear),
    spare: thou(tap.spare),
    least: inches(zone.min),
    most: inches(zone.max),
    shrink: thou(PLATING_FACTOR.pitch * mmToInch((trial.layer ?? 0) / 1000)),
  };
  const coat = trial.layer ? fill(LIMITS.coat, values, 'in') + ' ' : '';
  return coat + fill(LIMITS.verdicts[what], values, 'in');
}

/** The chosen tap against the zone; null while a number is missing or the coating leaves no zone. */
export function held(one: LimitCase, trial: LimitTrial): Held | null {
  const limits = one.classes.find((each) => each.class === trial.class)?.limits;
  const limit = one.taps.find(({ number }) => number === trial.number);
  if (!limits || !limit || trial.layer === null) return null;
  const thickness = trial.layer / 1000;
  const before = beforePlating(limits, [thickness, thickness], 'after');
  if (!before.ok) return null;
  const zone = before.value.pitch;
  const tap = judgeTapLimit(limit, zone, null);
  const sentence = sentenceOf(tap, zone, trial);
  const rows = one.taps.map((each) => {
    const { verdict, pitch, name } = judgeTapLimit(each, zone, null);
    return { name, at: pitch.min, to: pitch.max, verdict, span: true, strong: each === limit };
  });
  return {
    tap,
    zone,
    sentence,
    bar: {
      title: fill(LIMITS.title, { tap: tap.name, class: trial.class }, 'in'),
      description: fill(LIMITS.description, { class: trial.class, sentence }, 'in'),
      name: fill(trial.layer ? LIMITS.zoneBare : LIMITS.zone, { class: trial.class }, 'in'),
      ...zone,
      others: [],
      rows,
      write: inches,
    },
  };
}

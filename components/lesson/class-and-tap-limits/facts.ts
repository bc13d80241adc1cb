/** Numbers in the text of the lesson on class limits and tap limits. */

import { readThread } from '../../../core';
import { PLATING_FACTOR } from '../../../core/gauge/plating';
import { threadLimits } from '../../../core/limits/thread-limits';
import { platingStudy } from '../../../core/plan/plating-study';
import { tapLimit, type TapLimit, type TapLimitSystem } from '../../../core/tap/limits';
import { judgeTapLimits } from '../../../core/tap/limits-judge';
import type { Thread } from '../../../core/thread/thread';
import { mmToInch, type Range } from '../../../core/units';
import { decimals } from '../../words';
import { PUMP, ZINC_INCH, ZINC_METRIC } from './jobs';
import { FROM_TO } from '../../words/en/lesson';
import { say } from '../../words/say';

export function threadOf(text: string): Thread {
  const read = readThread(text);
  if (!read.ok) throw new Error(`A lesson cannot read its own thread ${text}.`);
  return read.value;
}

export function limitsOf(thread: Thread) {
  const limits = threadLimits(thread);
  if (!limits.ok) throw new Error(`No limits of ${thread.designation}.`);
  return limits.value;
}

/** A thread, its class's limits and every tap that is near them. */
export function matched(text: string) {
  const thread = threadOf(text);
  const limits = limitsOf(thread);
  return { thread, limits, taps: judgeTapLimits(thread, limits) };
}

export function tapOf(text: string, system: TapLimitSystem, number: number): TapLimit {
  const tap = tapLimit(threadOf(text), system, number);
  if (!tap.ok) throw new Error(`No ${system}${number} for ${text}.`);
  return tap.value;
}

const PLACES = { mm: 3, in: 4 } as const;
type Unit = keyof typeof PLACES;

/** A size in its own unit, with the digits its standard prints. */
export const size = (value: number, unit: Unit): string =>
  `${decimals(value, PLACES[unit], PLACES[unit])} ${unit}`;

export const between = ({ min, max }: Range, unit: Unit): string =>
  say(FROM_TO, { from: decimals(min, PLACES[unit], PLACES[unit]), to: size(max, unit) });

/** Thousandths of an inch. */
const thou = (inches: number): number => Math.round(inches * 1e7) / 1e4;

const second = limitsOf(threadOf('1/4-20 UNC-2B'));
const third = limitsOf(threadOf('1/4-20 UNC-3B'));
const [h3, h4, h5] = [3, 4, 5].map((number) => tapOf('1/4-20 UNC-2B', 'H', number)) as [
  TapLimit,
  TapLimit,
  TapLimit,
];
const [h2] = [tapOf('1/4-20 UNC-2B', 'H', 2)];
const d6 = tapOf(PUMP, 'D', 6);
const iso2 = tapOf(PUMP, 'ISO', 2);

function coated({ thread, layer }: { thread: string; layer: readonly [number, number] }) {
  const study = platingStudy(threadOf(thread), layer);
  if (!study.ok) throw new Error(`No plated window of ${thread}.`);
  const { before, best, limits, listed } = study.value;
  const { unit } = limits;
  const own = (mm: number) => (unit === 'in' ? mmToInch(mm) : mm);
  const [least, most] = layer.map(own) as [number, number];
  const range = (from: number, to: number) =>
    say(FROM_TO, { from: decimals(from, PLACES[unit], PLACES[unit]), to: size(to, unit) });
  return {
    class: between(limits.pitch, unit),
    bare: between(before.pitch, unit),
    layer: range(least, most),
    shrink: range(PLATING_FACTOR.pitch * least, PLATING_FACTOR.pitch * most),
    best: best.map(({ name }) => name).join(', '),
    bestSize: best[0] ? between(best[0].pitch, best[0].unit) : '',
    listed: listed.map(({ name, verdict }) => `${name} ${verdict}`).join(', '),
  };
}

const layer = ZINC_INCH.layer[1];
const layerThou = thou(mmToInch(layer));

export const limitFacts = {
  basic: size(second.pitch.min, 'in'),
  second: between(second.pitch, 'in'),
  third: between(third.pitch, 'in'),
  secondWidth: decimals(thou(second.pitch.max - second.pitch.min), 1),
  thirdWidth: decimals(thou(third.pitch.max - third.pitch.min), 1),
  h3: between(h3.pitch, 'in'),
  h5: between(h5.pitch, 'in'),
  h5Up: thou(h5.pitch.max - second.pitch.min),
  h4Up: thou(h4.pitch.max - second.pitch.min),
  h4Low: thou(h4.pitch.min - second.pitch.min),
  h2Wear: decimals(thou(h2.pitch.min - second.pitch.min), 1),
  h5Wear: decimals(thou(h5.pitch.min - second.pitch.min), 1),
  h5SpareSecond: decimals(thou(second.pitch.max - h5.pitch.max), 1),
  h5SpareThird: decimals(thou(third.pitch.max - h5.pitch.max), 1),
  pump: between(limitsOf(threadOf(PUMP)).pitch, 'mm'),
  d6: between(d6.pitch, 'mm'),
  iso2: between(iso2.pitch, 'mm'),
  inch: coated(ZINC_INCH),
  metric: coated(ZINC_METRIC),
  layer: layerThou,
  layerText: size(mmToInch(layer), 'in'),
  shrink: PLATING_FACTOR.pitch * layerThou,
  minorShrink: PLATING_FACTOR.minor * layerThou,
} as const;

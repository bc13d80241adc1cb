/**
 * How doubt in the inputs becomes doubt in an answer. Each input has a likely value and the ends of its
 * spread; 2,000 sets are drawn from them (seeded, so the answer stands still) and the answer's own
 * spread is read off. Beside it, each input is moved alone, to see which one matters.
 */

import { seeded } from './seeded';

/** A likely value and the ends of its spread, in the input's own unit; low ≤ likely ≤ high. */
export interface Spread {
  low: number;
  likely: number;
  high: number;
}

/** Where most answers lie: 1 in 20 below `low`, 1 in 20 above `high`, as many below `middle` as above. */
export interface Spread90 {
  low: number;
  middle: number;
  high: number;
}

/** What the answer becomes when one input alone goes to the ends of its spread. */
export interface Swing<Name extends string = string> {
  input: Name;
  low: number;
  high: number;
}

/** Sets drawn unless told otherwise, and the seed. */
export const SAMPLES = 2000;
const SEED = 20;

/** A draw from a triangle over the spread: the likely value most often, the ends never quite. */
function drawn({ low, likely, high }: Spread, chance: number): number {
  const width = high - low;
  if (!(width > 0)) return likely;
  const peak = (likely - low) / width;
  return chance < peak
    ? low + Math.sqrt(chance * width * (likely - low))
    : high - Math.sqrt((1 - chance) * width * (high - likely));
}

/** The value below which a share of a sorted row lies, by linear interpolation. Any unit. Source: derived. */
export function quantile(sorted: ArrayLike<number>, share: number): number {
  const place = share * (sorted.length - 1);
  const below = Math.floor(place);
  const low = sorted[below] ?? Number.NaN;
  const high = sorted[below + 1] ?? low;
  return low + (high - low) * (place - below);
}

/**
 * Draws sets of inputs and gives, for each named answer, where nine in ten lie. The inputs are taken as
 * independent and triangular. Units are those of the inputs and answers. Source: derived.
 */
export function propagate<Input extends string, Answer extends string>(
  inputs: Record<Input, Spread>,
  answersOf: (values: Record<Input, number>) => Record<Answer, number>,
  { samples = SAMPLES, seed = SEED } = {},
): Record<Answer, Spread90> {
  const draw = seeded(seed);
  const names = Object.keys(inputs) as Input[];
  const values = {} as Record<Input, number>;
  const sample = () => {
    for (const name of names) values[name] = drawn(inputs[name], draw());
    return answersOf(values);
  };
  const drawnAnswers = Array.from({ length: samples }, sample);
  const result = {} as Record<Answer, Spread90>;
  for (const key of Object.keys(drawnAnswers[0] ?? {}) as Answer[]) {
    const row = Float64Array.from(drawnAnswers, (answers) => answers[key]).sort();
    result[key] = {
      low: quantile(row, 0.05),
      middle: quantile(row, 0.5),
      high: quantile(row, 0.95),
    };
  }
  return result;
}

/**
 * Moves one input at a time over its spread, the others at their likely value; the one that moves the
 * answer most comes first. Units are those of the answer. Source: derived.
 */
export function swings<Input extends string>(
  inputs: Record<Input, Spread>,
  answerOf: (values: Record<Input, number>) => number,
): Swing<Input>[] {
  const names = Object.keys(inputs) as Input[];
  const likely = {} as Record<Input, number>;
  for (const name of names) likely[name] = inputs[name].likely;
  const at = (name: Input, value: number) => answerOf({ ...likely, [name]: value });
  return names
    .map((input) => {
      const ends = [at(input, inputs[input].low), at(input, inputs[input].high)] as const;
      return { input, low: Math.min(...ends), high: Math.max(...ends) };
    })
    .sort((a, b) => b.high - b.low - (a.high - a.low));
}

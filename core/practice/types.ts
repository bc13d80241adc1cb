/** Exercises made from the core's own answers: data only, no sentences. Lengths mm. */

export const EXERCISE_KINDS = [
  'reach',
  'drill',
  'choose',
  'error',
  'order',
  'gauges',
  'diagnose',
  'drawing',
] as const;

export type ExerciseKind = (typeof EXERCISE_KINDS)[number];

export const LEVELS = [1, 2, 3] as const;
export type Level = (typeof LEVELS)[number];

export type Facts = Readonly<Record<string, number | string>>;

export interface Option {
  id: string;
  facts: Facts;
}

/** A length to work out, mm. */
export interface LengthAsk {
  type: 'length';
  answer: number;
  tolerance: number;
  /** Wrong lengths that have a known cause. */
  slips: readonly { value: number; code: string }[];
}

/** One of several, of which exactly one is right. */
export interface ChoiceAsk {
  type: 'choice';
  options: readonly Option[];
  answer: string;
}

/** Steps to put in order; `steps` as they are shown. */
export interface OrderAsk {
  type: 'order';
  steps: readonly string[];
  answer: readonly string[];
}

export interface Exercise {
  kind: ExerciseKind;
  seed: number;
  level: Level;
  /** What exactly is asked, where a kind asks several things. */
  variant: string;
  given: Facts;
  ask: LengthAsk | ChoiceAsk | OrderAsk;
  /** Numbers of the full working. */
  working: Facts;
}

/** What a kind makes; null where its draw came to nothing usable, and another one is drawn. */
export type Made = Omit<Exercise, 'kind' | 'seed' | 'level'> | null;

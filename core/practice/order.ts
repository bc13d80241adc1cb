/** Jobs as steps, to be put in order. Only how many there are is known here; the words are elsewhere. */

import type { Draw } from '../seeded';
import { mixed, oneOf } from './draw';
import type { Level, Made } from './types';

/** Steps of each job, in the right order as they are numbered. Common practice. */
export const JOBS_IN_STEPS = {
  'plan-a-hole': 5,
  'first-off': 5,
  'by-hand': 6,
  'broken-tap': 5,
  'gauge-it': 6,
  'left-hand-job': 5,
} as const;

export type JobInSteps = keyof typeof JOBS_IN_STEPS;

const BY_LEVEL: Record<Level, readonly JobInSteps[]> = {
  1: ['plan-a-hole', 'by-hand', 'gauge-it'],
  2: ['first-off', 'plan-a-hole', 'by-hand', 'gauge-it'],
  3: ['broken-tap', 'left-hand-job', 'first-off'],
};

/** Steps in a wrong order. No unit. Source: common practice. */
export function makeOrder(draw: Draw, level: Level): Made {
  const job = oneOf(draw, BY_LEVEL[level]);
  const answer = Array.from({ length: JOBS_IN_STEPS[job] }, (_, at) => `${job}.${at + 1}`);
  const steps = mixed(draw, answer);
  if (steps.join() === answer.join()) return null;
  return { variant: job, given: {}, working: {}, ask: { type: 'order', steps, answer } };
}

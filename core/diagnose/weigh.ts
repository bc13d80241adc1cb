/** How answers move the weight of causes, and how much a check is expected to tell. No units but bits. */

import type { CauseId } from './causes';
import { answersOf, CHECKS, type CheckAnswers, type CheckId } from './checks';

/** How much more often a cause gives an answer that names it. An estimate, common practice. */
const SPEAKS = 8;

/** A check that is expected to tell less than this, in bits, is not worth the walk. */
const LEAST_GAIN = 0.02;

/** Chance that a cause gives an answer of a check, 0 to 1. Source: `common-practice`. */
export function chance(cause: CauseId, check: CheckId, said: string): number {
  const answers: CheckAnswers = CHECKS[check];
  const entries = Object.entries(answers);
  const named = entries.some(([, causes]) => causes !== 'rest' && causes.includes(cause));
  const weight = (causes: readonly CauseId[] | 'rest') =>
    (causes === 'rest' ? !named : causes.includes(cause)) ? SPEAKS : 1;
  const whole = entries.reduce((sum, [, causes]) => sum + weight(causes), 0);
  return weight(answers[said] ?? []) / whole;
}

export interface Weighed {
  cause: CauseId;
  weight: number;
}

/** Shares that add up to one. No unit. Source: derived. */
export function shares(weighed: readonly Weighed[]): Weighed[] {
  const whole = weighed.reduce((sum, { weight }) => sum + weight, 0);
  return weighed.map(({ cause, weight }) => ({ cause, weight: weight / whole }));
}

/** Doubt that is left, bits. */
function entropy(weighed: readonly Weighed[]): number {
  return shares(weighed).reduce(
    (sum, { weight }) => (weight > 0 ? sum - weight * Math.log2(weight) : sum),
    0,
  );
}

/** Doubt that a check is expected to take away, bits. */
function gain(weighed: readonly Weighed[], check: CheckId): number {
  const now = shares(weighed);
  const left = answersOf(check).reduce((sum, said) => {
    const after = now.map(({ cause, weight }) => ({
      cause,
      weight: weight * chance(cause, check, said),
    }));
    const likely = after.reduce((total, { weight }) => total + weight, 0);
    return sum + likely * entropy(after);
  }, 0);
  return entropy(now) - left;
}

/** The check that takes away most doubt; null where none takes enough. Source: derived. */
export function bestCheck(weighed: readonly Weighed[], open: readonly CheckId[]): CheckId | null {
  let best: { check: CheckId; tells: number } | null = null;
  for (const check of open) {
    const tells = gain(weighed, check);
    if (tells > LEAST_GAIN && (!best || tells > best.tells + 1e-9)) best = { check, tells };
  }
  return best?.check ?? null;
}

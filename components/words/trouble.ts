/** Symptoms, checks, causes and the plan's facts, in words. */

import { FIGURES } from '../../core/diagnose/figures';
import type { CauseId } from '../../core/diagnose/causes';
import { CANNOT_CHECK } from '../../core/diagnose/finder';
import type { CheckId } from '../../core/diagnose/checks';
import type { PlanFact } from '../../core/diagnose/plan-facts';
import { CAUSE_WORDS, type CauseWords } from './en/causes';
import { CANNOT, CHECK_WORDS } from './en/checks';
import { PLAN_FACT_WORDS } from './en/trouble';
import type { Unit } from './format';
import { fill } from './template';

const figured = (text: string, unit: Unit) => fill(text, FIGURES, unit);

/** Name, change and proof of a cause, with the trade's figures in them. */
export function causeText(cause: CauseId, unit: Unit): CauseWords {
  const { name, change, proof } = CAUSE_WORDS[cause];
  return { name, change: figured(change, unit), proof: figured(proof, unit) };
}

/** What to check and how. */
export function checkText(check: CheckId, unit: Unit): { ask: string; how: string } {
  const { ask, how } = CHECK_WORDS[check];
  return { ask, how: figured(how, unit) };
}

/** One answer to a check. */
export function answerText(check: CheckId, said: string): string {
  if (said === CANNOT_CHECK) return CANNOT;
  return (CHECK_WORDS[check].answers as Record<string, string>)[said] ?? said;
}

export function planFactText({ code, numbers }: PlanFact, unit: Unit): string {
  return fill(PLAN_FACT_WORDS[code], numbers, unit);
}

/**
 * From what was seen to the causes, most likely first, and the one check that would tell most.
 *
 * A cause starts with a weight of one over its rank. An answer that a cause would give counts eight times
 * as much as one it would not; a fact of the plan twice. The factors are an estimate, chosen so that one clear
 * answer outweighs the rank, and a fact of the plan does not. Common practice.
 */

import { answer, refuse, type Outcome } from '../outcome';
import type { SourceId } from '../sources';
import { causeSource, type CauseId } from './causes';
import { answersOf, CHECKS, type CheckAnswers, type CheckId } from './checks';
import type { PlanFact } from './plan-facts';
import { SYMPTOMS, type Symptom, type SymptomId } from './symptoms';
import { bestCheck, chance, shares, type Weighed } from './weigh';

const PLAN_SPEAKS = 2;

/** A leader with this share is worth trying before anything more is checked. */
const SETTLED = 0.85;

/** The answer to a check that cannot be made; it moves nothing. */
export const CANNOT_CHECK = 'cannot';

export interface CheckAnswer {
  check: CheckId;
  answer: string;
}

export interface Evidence {
  symptom: SymptomId;
  /** In any order. */
  answers: readonly CheckAnswer[];
  /** What the plan of this hole says, from `planFacts`. */
  plan?: readonly PlanFact[];
  /** Causes whose change was tried, and nothing got better. */
  ruledOut?: readonly CauseId[];
}

export interface RankedCause {
  cause: CauseId;
  /** 0 to 1; all of them together 1. For ranking, not a frequency. */
  share: number;
  /** Answers that speak for it. */
  because: CheckAnswer[];
  /** Facts of the plan that speak for it. */
  plan: PlanFact[];
  source: SourceId;
}

export interface Diagnosis {
  symptom: SymptomId;
  /** Most likely first; empty once everything was ruled out. */
  ranked: RankedCause[];
  /** The check that separates the causes best; null when none would tell enough. */
  next: CheckId | null;
  /** True when the first cause is worth trying now. */
  settled: boolean;
}

/** True where an answer speaks for a cause by name. */
function namesCause(cause: CauseId, { check, answer: said }: CheckAnswer): boolean {
  const causes = (CHECKS[check] as CheckAnswers)[said];
  return causes !== undefined && causes !== 'rest' && causes.includes(cause);
}

function problemsOf({ symptom, answers }: Evidence): { code: string; field: string }[] {
  if (!(symptom in SYMPTOMS)) return [{ code: 'symptom-unknown', field: 'symptom' }];
  const found: { code: string; field: string }[] = [];
  const given = new Map<string, string>();
  for (const { check, answer: said } of answers) {
    if (!(check in CHECKS)) found.push({ code: 'check-unknown', field: check });
    else if (said !== CANNOT_CHECK && !answersOf(check).includes(said)) {
      found.push({ code: 'answer-unknown', field: check });
    }
    if (given.has(check) && given.get(check) !== said) {
      found.push({ code: 'answered-twice', field: check });
    }
    given.set(check, said);
  }
  return found;
}

/**
 * Ranks the causes of a symptom. The order in which checks were answered makes no difference: weights are
 * taken in the matrix's own order. Answers to checks of another symptom are kept out.
 *
 * @param evidence what was seen; no units.
 * @returns the ranking and the next check. Refuses `symptom-unknown`, `check-unknown`, `answer-unknown` and
 *   `answered-twice` (two answers to one check). Source: `common-practice`; each cause names its own.
 */
export function diagnose(evidence: Evidence): Outcome<Diagnosis> {
  const [first, ...more] = problemsOf(evidence);
  if (first) return refuse(first, ...more);
  const { symptom, plan = [], ruledOut = [] } = evidence;
  const { causes, checks }: Symptom = SYMPTOMS[symptom];
  const told = checks.flatMap((check) => {
    const said = evidence.answers.find((each) => each.check === check)?.answer;
    return said === undefined ? [] : [{ check, answer: said }];
  });
  const counted = told.filter(({ answer: said }) => said !== CANNOT_CHECK);
  const weighed = causes
    .map((cause, index): Weighed => {
      const prior = counted.reduce(
        (weight, each) => weight * chance(cause, each.check, each.answer),
        1 / (index + 1),
      );
      const facts = plan.filter(({ speaksFor }) => speaksFor.includes(cause));
      return { cause, weight: prior * PLAN_SPEAKS ** facts.length };
    })
    .filter(({ cause }) => !ruledOut.includes(cause));
  const ranked = shares(weighed)
    .sort((a, b) => b.weight - a.weight)
    .map(({ cause, weight }): RankedCause => ({
      cause,
      share: weight,
      because: counted.filter((each) => namesCause(cause, each)),
      plan: plan.filter(({ speaksFor }) => speaksFor.includes(cause)),
      source: causeSource(cause),
    }));
  const open = checks.filter((check) => !told.some((each) => each.check === check));
  const settled = (ranked[0]?.share ?? 0) >= SETTLED && (counted.length > 0 || ranked.length === 1);
  const next = settled || ranked.length < 2 ? null : bestCheck(weighed, open);
  return answer({ symptom, ranked, next, settled: settled || next === null });
}

/** What was seen and what one check showed: the likeliest cause. */

import { CHECKS, type CheckId } from '../diagnose/checks';
import { diagnose } from '../diagnose/finder';
import { SYMPTOM_IDS, SYMPTOMS, type SymptomId } from '../diagnose/symptoms';
import type { Draw } from '../seeded';
import { mixed, oneOf } from './draw';
import type { Level, Made } from './types';

/** How far the first cause must lead the second, for the question to have one answer. */
const LEAD = 2;

const EASY: readonly SymptomId[] = [
  'broke-bottom',
  'broke-entry',
  'broke-middle',
  'teeth-chipped',
  'go-refuses',
  'not-go-goes',
];

/** A symptom, one answered check, and causes of which exactly one stands out. No unit. Source: common practice. */
export function makeDiagnose(draw: Draw, level: Level): Made {
  const symptom = oneOf(draw, level === 1 ? EASY : SYMPTOM_IDS);
  const { causes, checks } = SYMPTOMS[symptom];
  if (causes.length < 3) return null;
  const check: CheckId = oneOf(draw, checks);
  const answers = Object.keys(CHECKS[check]);
  const seen = oneOf(draw, answers);
  const found = diagnose({ symptom, answers: [{ check, answer: seen }] });
  if (!found.ok) return null;
  const [first, second] = found.value.ranked;
  if (!first || !second || first.share < LEAD * second.share) return null;
  // The check itself must speak for it: otherwise the answer would be a guess at what is usual.
  if (!first.because.some((each) => each.check === check)) return null;
  const others = mixed(
    draw,
    causes.filter((cause) => cause !== first.cause),
  ).slice(0, 3);
  return {
    variant: symptom,
    given: { symptom, check, seen },
    working: { cause: first.cause },
    ask: {
      type: 'choice',
      answer: first.cause,
      options: mixed(draw, [first.cause, ...others]).map((id) => ({ id, facts: {} })),
    },
  };
}

/** What is wrong with a field, and what to type instead. */

import type { Problem } from '../../core/outcome';
import { problemText, type Unit } from '../words';
import type { InputName } from './inputs';
import { FIELD_PROBLEMS, LABELS, LENGTHS_LIKE, MISSING } from '../words/en/planner';
import { say } from '../words/say';

function lengthLike(field: InputName, unit: Unit): string {
  return LENGTHS_LIKE[field.startsWith('coat-') ? 'coating' : unit];
}

/** The complaint for beside a field. */
export function fieldProblemText(field: InputName, problem: Problem, unit: Unit): string {
  const label = LABELS[field];
  if (problem.code === 'missing')
    return MISSING[field] ?? say(FIELD_PROBLEMS.missing, { label: label.toLowerCase() });
  const words = (FIELD_PROBLEMS as Record<string, string | undefined>)[problem.code];
  if (words === undefined) return problemText(problem, unit);
  return say(words, { label, like: lengthLike(field, unit) });
}

/** What is wrong with a field and what to type instead. Part of the engines. */

import type { Problem } from '../../core/outcome';
import { problemText } from '../words/codes';
import type { Unit } from '../words/format';
import { fill } from '../words/template';
import type { CalculatorWords } from './calculator';
import { EXAMPLES, MISSING, PROBLEMS } from '../words/en/calculators/shared';
import { say } from '../words/say';

/** The complaint for beside a field, in a calculator's own words where it has some. */
export function complaints<Name extends string>(words: CalculatorWords<Name>) {
  return (field: Name, problem: Problem, unit: Unit): string => {
    const label = words.labels[field];
    if (problem.code === 'missing') {
      return words.missing[field]?.ask ?? say(MISSING, { label: label.toLowerCase() });
    }
    const pattern = words.problems?.[problem.code] ?? PROBLEMS[problem.code];
    if (pattern === undefined) return problemText(problem, unit);
    return fill(pattern, { label, length: EXAMPLES[unit], ...problem.data }, unit);
  };
}

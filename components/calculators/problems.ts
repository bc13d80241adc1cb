/** What is wrong with a field and what to type instead. Part of the engines. */

import type { Problem } from '../../core/outcome';
import { problemText } from '../words/codes';
import type { Unit } from '../words/format';
import { fill } from '../words/template';
import type { CalculatorWords } from './calculator';

const PATTERNS: Record<string, string> = {
  'not-a-length': '“{label}” must be a length, like {length}.',
  'not-a-torque': '“{label}” must be a torque, like 30 or 22 lbf·ft.',
  'not-an-angle': '“{label}” must be a number of degrees, like 118.',
  'angle-outside': '“{label}” must be between {min}° and {max}°.',
  'not-a-count': '“{label}” must be a number of threads, like 2.5 or 4.',
  'count-outside': '“{label}” must be between {min} and {max} threads.',
  'not-above-zero': '“{label}” must be more than 0.',
  'below-zero': '“{label}” must be 0 or more.',
  'absurd-length': '“{label}” is longer than any tapped hole. Enter a length, like {length}.',
};

/** The complaint for beside a field, in a calculator's own words where it has some. */
export function complaints<Name extends string>(words: CalculatorWords<Name>) {
  return (field: Name, problem: Problem, unit: Unit): string => {
    const label = words.labels[field];
    if (problem.code === 'missing') {
      return words.missing[field]?.ask ?? `Enter: ${label.toLowerCase()}.`;
    }
    const pattern = words.problems?.[problem.code] ?? PATTERNS[problem.code];
    if (pattern === undefined) return problemText(problem, unit);
    const example = unit === 'mm' ? '16, 12,5 or 3/4 in' : '.75, 3/4 or 16 mm';
    return fill(pattern, { label, length: example, ...problem.data }, unit);
  };
}

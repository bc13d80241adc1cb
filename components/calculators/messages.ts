/** Words that every calculator shares. English. */

import type { Problem } from '../../core/outcome';
import type { AddressNote } from '../state/address';
import { length, problemText, type Unit } from '../words';
import { fill } from '../words/template';
import type { CalculatorWords } from './calculator';

export const TEXT = {
  clear: 'Start again',
  example: 'Example',
  exampleEnd: 'It goes when you type your own.',
  takeExample: 'Put the example in the form',
  answer: 'Answer',
  noAnswer: 'No answer yet',
  waitingFor: 'Still needed for an answer',
  mend: 'To be mended first',
  errors: 'Before this can be worked out',
  errorTitle: 'Error: ',
  address: 'Not all of the address could be used',
  chooseMaterial: 'Choose a material',
  anyMaterial: 'Not said',
  numbers: 'The numbers',
  assumed: 'Assumed',
  sources: 'Where it comes from',
  onward: 'From here',
  why: 'Why?',
  calculators: 'Calculators',
  index:
    'One question each. What you type stays in the address, so an answer can be kept, sent or printed. The planner answers all of them at once for a whole hole.',
  noScript:
    'The form needs script, which is off in this browser. Below is a worked example of what it answers. Do not work to it.',
} as const;

const PATTERNS: Record<string, string> = {
  'not-a-torque': '{label} must be a torque, like 30 or 22 lbf·ft.',
  'not-an-angle': '{label} must be a number of degrees, like 118.',
  'angle-outside': '{label} must be between {min}° and {max}°.',
  'not-a-count': '{label} must be a number of threads, like 2.5 or 4.',
  'count-outside': '{label} must be between {min} and {max} threads.',
  'not-above-zero': '{label} must be more than 0.',
  'below-zero': '{label} must be 0 or more.',
  'absurd-length': '{label} is longer than any tapped hole. Enter it in mm or in, like {length}.',
  'not-a-length': '{label} must be a length, like {length}.',
};

/** What is wrong with a field and what to type instead. */
export function fieldText<Name extends string>(
  words: CalculatorWords<Name>,
  field: Name,
  problem: Problem,
  unit: Unit,
): string {
  const label = words.labels[field];
  if (problem.code === 'missing') {
    return words.missing[field]?.ask ?? `Enter: ${label.toLowerCase()}.`;
  }
  const pattern = words.problems?.[problem.code] ?? PATTERNS[problem.code];
  if (pattern === undefined) return problemText(problem, unit);
  const example = unit === 'mm' ? '16, 12,5 or 3/4 in' : '.75, 3/4 or 16 mm';
  return fill(pattern, { label, length: example, ...problem.data }, unit);
}

/** Something in the address that a page could not use. */
export function addressText(note: AddressNote, label: string | undefined): string {
  return note.reason === 'unknown-name' || label === undefined
    ? `The address says ${note.name}=${note.typed}, which this page does not know. It was left out.`
    : `The address asks for “${note.typed}” as ${label.toLowerCase()}, which is not on the list. Choose again.`;
}

/** A length in both units, the one it was typed in first. */
export function bothUnits(mm: number, typedIn: Unit): string {
  return `${length(mm, typedIn)} = ${length(mm, typedIn === 'mm' ? 'in' : 'mm')}`;
}

/** What is wrong with a field, and what to type instead. */

import type { Problem } from '../../core/outcome';
import { problemText, type Unit } from '../words';
import type { InputName } from './inputs';
import { LABELS } from '../words/en/planner';

const MISSING: Partial<Record<InputName, string>> = {
  thread: 'Enter the thread as the drawing gives it, like M8x1.25-6H or 1/4-20 UNC-2B.',
  hole: 'Choose whether the hole is blind or through.',
  thickness: 'Enter how thick the part is, like 12.',
  material: 'Choose the material.',
  'measured-style': 'Choose the tap that was measured.',
  'measured-chamfer': 'Choose the chamfer of the tap that was measured.',
  own: 'Enter what you call the material, so that its card says which numbers were used.',
};

function lengthPattern(field: InputName, unit: Unit): string {
  if (field.startsWith('coat-')) return '8 µm or 0.0003 in';
  return unit === 'mm' ? '16, 12,5 or 3/4 in' : '.75, 3/4 or 16 mm';
}

/** The complaint for beside a field. */
export function fieldProblemText(field: InputName, problem: Problem, unit: Unit): string {
  const label = LABELS[field];
  switch (problem.code) {
    case 'missing':
      return MISSING[field] ?? `Enter: ${label.toLowerCase()}.`;
    case 'not-a-length':
      return `“${label}” must be a length, like ${lengthPattern(field, unit)}.`;
    case 'not-a-torque':
      return `“${label}” must be a torque, like 30 or 22 lbf·ft.`;
    case 'not-a-speed':
      return `“${label}” must be a number of turns a minute, like 3000.`;
    case 'not-an-angle':
      return `“${label}” must be a number of degrees, like 118 or 140.`;
    case 'not-a-force':
      return `“${label}” must be a number of N/mm², like 1800.`;
    case 'not-an-exponent':
      return `“${label}” must be a number, like 0.25.`;
    case 'not-a-hardness':
      return `“${label}” must be a hardness, like 30 HRC, 180 HB or 190 HV.`;
    case 'no-drills':
      return 'Choose at least one kind of drill.';
    default:
      return problemText(problem, unit);
  }
}

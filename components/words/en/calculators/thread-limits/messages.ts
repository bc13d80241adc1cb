/** Words of the form of the thread-limits calculator. English. */

import type { CalculatorWords } from '../../../../calculators/calculator';
import type { Name } from '../../../../calculators/thread-limits/inputs';

export const WORDS: CalculatorWords<Name> = {
  labels: { thread: 'Thread, as on the drawing', engagement: 'Length of engagement' },
  form: 'The thread',
  submit: 'Show its limits',
  example: 'M20x1.5-6H left hand, 30 mm in engagement.',
  missing: {
    thread: {
      ask: 'Enter the thread as the drawing gives it, like M8x1.25-6H or 1/4-20 UNC-2B.',
      need: 'the thread',
    },
  },
  problems: { 'engagement-not-positive': '“{label}” must be more than 0.' },
};

export const HINTS = {
  engagement: 'How much thread the screw will be in. Empty: not asked.',
} as const;

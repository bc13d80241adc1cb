/** Words of the form of the form-tap calculator. English. */

import type { CalculatorWords } from '../../../../calculators/calculator';
import type { Name } from '../../../../calculators/form-tap-hole/inputs';

export const WORDS: CalculatorWords<Name> = {
  labels: {
    thread: 'Thread, as on the drawing',
    material: 'Material',
    drills: 'Drills in the drawer',
    hole: 'A hole as you measured it',
  },
  form: 'The thread to be formed',
  submit: 'Which hole?',
  example: 'M6x1-6H formed in 6061; a hole was measured at 5.60 mm.',
  missing: {
    thread: {
      ask: 'Enter the thread as the drawing gives it, like M6x1-6H or #10-32 UNF-2B.',
      need: 'the thread',
    },
  },
  problems: {
    'hole-out-of-range': '“{label}” must be more than 0 and less than the thread’s own diameter.',
  },
  refusals: {
    'not-formable': {
      title: 'This material is not formed',
      text: 'It cracks or tears instead of flowing into the thread. A form tap wants about a tenth of stretch before the metal breaks. Cut this thread.',
    },
    'form-other-thread': {
      title: 'No rule for forming this thread is held here',
      text: 'Pipe threads and the holes of wire inserts have form-tap holes of their own: ask whoever made the tap.',
    },
  },
};

export const HINTS = { hole: 'Empty: not asked.' } as const;

/** Words of the form of the chamfer calculator. English. */

import type { CalculatorWords } from '../../../../calculators/calculator';
import type { Name } from '../../../../calculators/chamfer/inputs';

export const WORDS: CalculatorWords<Name> = {
  labels: {
    thread: 'Thread on the tap',
    count: 'Threads on the chamfer',
    tap: 'The tap',
    material: 'Material',
    thickness: 'Thickness of a plate',
  },
  form: 'The chamfer',
  submit: 'What is it?',
  example: 'An M10 spiral-point tap with 4 threads of chamfer, for a 5 mm plate of 1045 steel.',
  missing: {
    thread: {
      ask: 'Enter the thread that stands on the tap’s shank, like M10x1.5 or 3/8-16.',
      need: 'the thread',
    },
    count: {
      ask: 'Count the threads on the chamfer and enter them, like 4 or 2.5.',
      need: 'the count',
    },
  },
};

export const HINTS = {
  count: 'From the first mark of a thread at the nose to the first that is whole. Halves count.',
  thickness: 'Only where the hole goes through and the work is thin.',
  thick: 'empty: thicker than any chamfer',
} as const;

/** Words of the form of the tap-strength calculator. English. */

import type { CalculatorWords } from '../../../../calculators/calculator';
import type { Name } from '../../../../calculators/tap-strength/inputs';

export const WORDS: CalculatorWords<Name> = {
  labels: {
    thread: 'Thread',
    tap: 'The tap',
    flutes: 'Its flutes',
    web: 'Core of the tap, measured',
    torque: 'Torque of the sharp tap',
  },
  form: 'The tap and its torque',
  submit: 'How strong?',
  example: 'A spiral-flute tap M8x1.25 that takes 4.5 N·m when it is sharp, in 304 stainless.',
  missing: {
    thread: {
      ask: 'Enter the thread the tap cuts, like M8x1.25 or #6-32 UNC.',
      need: 'the thread',
    },
    tap: { ask: 'Choose the tap.', need: 'the tap' },
  },
  problems: {
    'web-out-of-range':
      'A core is thinner than the tap and thicker than a fifth of it. Measure across the bottoms of the flutes.',
  },
};

export const HINTS = {
  torque: 'Measured, or from the torque calculator. Empty: only what breaks the tap.',
  web: 'Across the bottoms of the flutes. Empty: usual for the style.',
  flutesUsual: 'Usual for the size',
  flutes: { 3: 'three flutes', 4: 'four flutes' },
} as const;

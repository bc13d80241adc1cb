/** Words of the form of the torque calculator. English. */

import type { CalculatorWords } from '../calculator';
import type { Name } from './inputs';

export const WORDS: CalculatorWords<Name> = {
  labels: {
    thread: 'Thread, as on the drawing',
    tap: 'The tap',
    hole: 'The hole',
    depth: 'Full thread, or thickness',
    material: 'Material',
    spindle: 'Torque of the spindle',
    chamfer: 'Chamfer',
    web: 'Core of the tap, measured',
  },
  form: 'The tap and its work',
  submit: 'How hard?',
  example:
    '1/2-13 UNC, 3/4 in of full thread in 4140 of 30 HRC, spiral-flute tap, a spindle that gives 30 N·m.',
  missing: {
    thread: {
      ask: 'Enter the thread as the drawing gives it, like M12x1.75-6H or 1/2-13 UNC-2B.',
      need: 'the thread',
    },
    tap: { ask: 'Choose the tap.', need: 'the tap' },
    depth: {
      ask: 'Enter how much full thread is wanted, or how thick the part is, like 18.',
      need: 'the full thread',
    },
    material: { ask: 'Choose the material.', need: 'the material' },
  },
  refusals: {
    'too-hard': {
      title: 'Too hard to tap',
      text: 'Steel of 45 HRC and over breaks HSS taps at any torque, so none is worked out. Thread it before hardening, or mill the thread.',
    },
    'form-brittle': {
      title: 'This material is not formed',
      text: 'It cracks instead of flowing, so there is no torque to work out. Choose a tap that cuts.',
    },
    'form-taper': {
      title: 'Form taps have no chamfer that long',
      text: 'Choose a shorter chamfer, or leave it to the usual one.',
    },
  },
};

export const HINTS = {
  blind: 'Blind',
  through: 'Through',
  spindle: 'At tapping speed, from the machine’s own curve. N·m or lbf·ft.',
  more: 'Chamfer, measured core',
  chamfer: 'Usual for the hole',
  web: 'Across the bottoms of the flutes. Empty: usual for the style.',
} as const;

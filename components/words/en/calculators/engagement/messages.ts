/** Words of the form of the engagement calculator. English. */

import type { Purpose } from '../../../../../core/engagement/purposes';
import type { CalculatorWords } from '../../../../calculators/calculator';
import type { Name } from '../../../../calculators/engagement/inputs';

export const WORDS: CalculatorWords<Name> = {
  labels: {
    thread: 'Thread, as on the drawing',
    screw: 'Grade of the screw',
    material: 'Tapped metal',
    purpose: 'What the joint is for',
    have: 'Full thread there is, or may be',
    shear: 'Shear strength from its certificate',
  },
  form: 'The thread, the screw and the metal',
  submit: 'How deep is enough?',
  example: 'M10x1.5-6H in 6061 under an 8.8 screw; 12 mm of full thread is what the part allows.',
  missing: {
    thread: {
      ask: 'Enter the thread as the drawing gives it, like M10x1.5-6H or 3/8-16 UNC-2B.',
      need: 'the thread',
    },
    screw: { ask: 'Choose the grade on the screw’s head.', need: 'the grade of the screw' },
    material: { ask: 'Choose the tapped metal.', need: 'the tapped metal' },
  },
  problems: {
    'not-a-strength': '“{label}” must be a number of N/mm², like 207.',
    'shear-not-positive': '“{label}” must be more than 0, like 207.',
    'have-not-positive': '“{label}” must be more than 0.',
  },
  refusals: {
    'not-rated': {
      title: 'That is not answered here',
      text: 'Only one steady pull until something gives is worked out: geometry with strengths put in. What a joint may carry, lift, hold under pressure, stand again and again, or whether a repaired thread may be used, is for the responsible engineer, the code that governs the work, and a test.',
    },
    'strength-unknown': {
      title: 'The strength of this metal varies too much to state',
      text: 'Enter the shear strength from its certificate, about 0.6 of the tensile strength.',
    },
    'engagement-other-thread': {
      title: 'Another rule holds for this thread',
      text: 'Pipe threads are not reckoned this way. With a wire insert, length and material follow the insert maker’s tables.',
    },
    'engagement-minor-unknown': {
      title: 'The largest minor diameter of this thread is not known here',
      text: 'Without it the screw’s side cannot be worked out. Take it from the drawing, or ask for the UN thread of the same size, which has no less metal.',
    },
    'taper-pipe': {
      title: 'Another rule holds for this thread',
      text: 'Pipe threads are not reckoned this way. Whether a joint holds pressure is for the responsible engineer.',
    },
    'outside-tolerances': {
      title: 'Beyond the tables of its standard',
      text: 'Its limits are not known here, so its areas cannot be worked out.',
    },
  },
};

export const PURPOSE_LABELS: Record<Purpose, string> = {
  static: 'Holding parts together',
  'load-rating': 'A load it is rated to carry',
  lifting: 'Lifting, or holding people',
  pressure: 'Holding pressure',
  'repeated-load': 'Changing load, shaking, heat',
  rework: 'A repaired thread, to be accepted',
};

export const HINTS = {
  chooseScrew: 'Choose a grade',
  purpose: 'Only one steady pull is worked out here.',
  have: 'Empty: only what is needed.',
  more: 'Strength of the metal',
  shear: 'N/mm². About 0.6 of the tensile strength. Empty: from the table.',
} as const;

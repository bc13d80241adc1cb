/** Words of the form of the hand-tapping calculator. English. */

import type { CalculatorWords } from '../../../../calculators/calculator';
import type { HOLES, Name, SETS } from '../../../../calculators/hand-tapping/inputs';

export const WORDS: CalculatorWords<Name> = {
  labels: {
    thread: 'Thread, as on the drawing',
    hole: 'The hole',
    full: 'Full thread',
    shoulder: 'Drilled to the shoulder',
    set: 'The set of taps',
    flutes: 'Flutes of the tap',
    material: 'Material',
  },
  form: 'The hole to tap by hand',
  submit: 'Show me how',
  example:
    'M6 by hand in a mild-steel bracket on the bench, 12 mm of full thread in a hole 16.5 mm deep.',
  missing: {
    thread: {
      ask: 'Enter the thread as the drawing gives it, like M6x1 or 1/4-20.',
      need: 'the thread',
    },
    hole: { ask: 'Choose whether the hole is blind or through.', need: 'blind or through' },
    full: { ask: 'Enter how much full thread you want, like 12.', need: 'the full thread' },
    shoulder: {
      ask: 'Enter how deep the hole is drilled to its shoulder, like 16.5.',
      need: 'the drilled depth',
    },
  },
  problems: {
    'full-thread-not-positive': '“{label}” must be more than 0.',
    'thread-deeper-than-hole':
      'The hole must be deeper than the full thread. Enter the depth to the shoulder.',
    'spiral-point-blind':
      'A spiral point pushes its chips ahead, onto the floor. Choose straight or spiral flutes for a blind hole.',
  },
  refusals: {
    'taper-by-hand': {
      title: 'Pipe threads are not planned here',
      text: 'A taper tap is turned in until its gauge says enough, not to a depth. Whether the joint holds is for whoever answers for it.',
    },
  },
};

export const HOLE_LABELS: Record<(typeof HOLES)[number], string> = {
  blind: 'Blind',
  through: 'Through',
};

export const SET_LABELS: Record<(typeof SETS)[number], string> = {
  'same-diameter': 'All of one diameter, chamfers differ',
  serial: 'Serial: each cuts larger than the last',
};

export const HINTS = {
  set: 'Measure across the threads of all the taps. If they differ, it is a serial set; rings on the shanks count them.',
  shoulder: 'Full diameter, without the drill’s point.',
} as const;

/** Words of the form of the chip-direction calculator. English. */

import type { CalculatorWords } from '../../../../calculators/calculator';
import type { HOLES, Name, Seen } from '../../../../calculators/chip-direction/inputs';

export const WORDS: CalculatorWords<Name> = {
  labels: {
    see: 'What you see of the tap',
    angle: 'Lean of the cutting face',
    hand: 'It cuts a',
    hole: 'The hole',
    material: 'Material',
  },
  form: 'The tap and the hole',
  submit: 'Where do they go?',
  example: 'A right-hand tap with a slanting cut at its point, over a blind hole in 304 stainless.',
  missing: {
    see: { ask: 'Choose what you see of the tap.', need: 'what you see of the tap' },
    angle: {
      ask: 'Enter the lean in degrees, like 10, or −10 when it leans to the left.',
      need: 'the lean of the cutting face',
    },
    hole: { ask: 'Choose the hole.', need: 'the hole' },
  },
  problems: {
    'not-an-angle': '“{label}” must be a number of degrees, like 10 or −10.',
    'angle-outside': '“{label}” must be between −60° and 60°: no tap leans further.',
  },
};

export const HINTS = {
  see: 'Hold the tap upright and look at the flute that faces you. Either end may be up.',
  angle: 'Degrees from the axis. To the right as it rises: plus. To the left: minus.',
} as const;

export const HAND_LABELS = { right: 'right-hand thread', left: 'left-hand thread' } as const;

export const SEEN_LABELS: Record<Seen, string> = {
  straight: 'Straight flutes',
  'climbs-right': 'Flutes climb to the right',
  'climbs-left': 'Flutes climb to the left',
  gash: 'Straight, with a slanting cut at the point',
  none: 'No flutes that cut',
  angle: 'I know the angle of the face',
};

export const HOLE_LABELS: Record<(typeof HOLES)[number], string> = {
  blind: 'Blind',
  'blind-deep': 'Blind, with a deep pocket below',
  through: 'Through, open below',
  'through-closed': 'Through, but nothing may fall',
};

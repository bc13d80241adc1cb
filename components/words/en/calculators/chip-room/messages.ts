/** Words of the form of the chip-room calculator. English. */

import type { CalculatorWords } from '../../../../calculators/calculator';
import type { Name } from '../../../../calculators/chip-room/inputs';

export const WORDS: CalculatorWords<Name> = {
  labels: {
    thread: 'Thread, as on the drawing',
    full: 'Full thread',
    hole: 'Drilled to the shoulder',
    chamfer: 'Chamfer of the spiral-point tap',
    material: 'Material',
    point: 'Drill point angle',
  },
  form: 'The blind hole and its thread',
  submit: 'Will they fit?',
  example:
    '20 mm of full thread M10 in a blind hole 35 mm deep, 1045 steel, spiral-point tap with the usual chamfer.',
  missing: {
    thread: {
      ask: 'Enter the thread as the drawing gives it, like M10x1.5-6H or 3/8-16 UNC-2B.',
      need: 'the thread',
    },
    full: { ask: 'Enter how much full thread is wanted, like 20.', need: 'the full thread' },
    hole: {
      ask: 'Enter how deep the hole is drilled to its shoulder, like 35.',
      need: 'the drilled depth',
    },
    material: { ask: 'Choose the material: it says how the chips pack.', need: 'the material' },
  },
  problems: {
    'thread-deeper-than-hole': 'The hole must be deeper than the full thread.',
  },
};

export const HINTS = {
  shoulder: 'Full diameter, without the drill’s point.',
  more: 'Drill point',
  point: 'Degrees. Empty: 118. A flat bottom is 180.',
} as const;

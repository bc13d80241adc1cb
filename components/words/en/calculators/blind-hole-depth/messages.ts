/** Words of the form of the blind-hole calculator. English. */

import type { CalculatorWords } from '../../../../calculators/calculator';
import type { Find, Name } from '../../../../calculators/blind-hole-depth/inputs';

export const WORDS: CalculatorWords<Name> = {
  labels: {
    find: 'Work out',
    thread: 'Thread, as on the drawing',
    full: 'Full thread',
    hole: 'Drilled to the shoulder',
    chamfer: 'Chamfer of the tap',
    drive: 'Spindle',
    centre: 'Male centre on the tap’s nose',
    point: 'Drill point angle',
  },
  form: 'The blind hole',
  submit: 'Work it out',
  example:
    '12 mm of full thread M6, a tap with 2–3 threads of chamfer, synchronous spindle: how deep to drill?',
  missing: {
    thread: {
      ask: 'Enter the thread as the drawing gives it, like M8x1.25-6H or 1/4-20 UNC-2B.',
      need: 'the thread',
    },
    full: { ask: 'Enter how much full thread you want, like 16.', need: 'the full thread' },
    hole: {
      ask: 'Enter how deep the hole is drilled to its shoulder, like 21.',
      need: 'the drilled depth',
    },
    chamfer: { ask: 'Choose the chamfer of the tap.', need: 'the chamfer' },
  },
  problems: {
    'no-room':
      'There is no room for any chamfer: the hole must be deeper than the full thread and the stop clearance together.',
  },
};

export const FIND_LABELS: Record<Find, string> = {
  hole: 'How deep to drill',
  full: 'Full thread I get',
  chamfer: 'Which chamfer fits',
};

export const HINTS = {
  more: 'Male centre, drill point',
  chooseChamfer: 'Choose a chamfer',
  formF: '1–1.5 threads, last of a hand set (form F)',
  shoulder: 'Full diameter, without the drill’s point.',
  centre: 'How far it stands out. Empty: flat-nosed.',
  point: 'Degrees. Empty: 118. A flat bottom is 180.',
} as const;

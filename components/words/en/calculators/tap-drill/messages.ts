/** Words of the form of the tap-drill calculator. English. */

import type { CalculatorWords } from '../../../../calculators/calculator';
import type { Name } from '../../../../calculators/tap-drill/inputs';

export const WORDS: CalculatorWords<Name> = {
  labels: {
    thread: 'Thread, as on the drawing',
    material: 'Material',
    drills: 'Drills in the drawer',
    oversize: 'Your drill cuts larger than itself by',
  },
  form: 'The thread and the drawer',
  submit: 'Which drill?',
  example: 'M10x1.5-6H in 6061, any drill.',
  missing: {
    thread: {
      ask: 'Enter the thread as the drawing gives it, like M8x1.25-6H or 1/4-20 UNC-2B.',
      need: 'the thread',
    },
  },
  problems: { 'oversize-negative': '“{label}” must be 0 or more, like 0.05.' },
  refusals: {
    'taper-pipe': {
      title: 'A taper thread has no limits of diameter',
      text: 'Its drill follows a list, not a class. Look at the thread’s own page, or ask for its limits: both give the listed drills and the gauge.',
    },
    'no-limits-held': {
      title: 'No limits are held here for this thread',
      text: 'A drill cannot be judged without them. Take the hole from the thread’s own standard.',
    },
    'outside-tolerances': {
      title: 'Beyond the tables of its standard',
      text: 'There is no class to judge a drill by. Take the limits of the hole from the drawing.',
    },
  },
};

export const HINTS = {
  more: 'How your drill cuts',
  oversize: 'Measured on a hole of yours. Empty: as such drills usually do.',
} as const;

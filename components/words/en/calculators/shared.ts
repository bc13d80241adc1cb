/** Words that every calculator shares. English. */

import type { Drawer } from '../../../calculators/drawer';
import type { AddressNote } from '../../../state/address';

export const TEXT = {
  clear: 'Start again',
  example: 'Example',
  exampleGoes: 'It goes when you type your own.',
  takeExample: 'Try it with the example',
  workedExample: 'Worked example',
  answer: 'Answer',
  loading: 'One moment …',
  notLoaded: 'The calculator did not load',
  notLoadedText: 'Check the network, then load the page again. What you typed is in its address.',
  noAnswer: 'No answer yet',
  waitingFor: 'Still needed for an answer',
  mend: 'To mend',
  errors: 'Before this can be worked out',
  errorTitle: 'Error: ',
  address: 'Not all of the address could be used',
  chooseMaterial: 'Choose a material',
  anyMaterial: 'Not said',
  assumed: 'Assumed',
  sources: 'Where it comes from',
  machine: 'At the machine',
  safety: 'More on safety',
  onward: 'From here',
  why: 'Why?',
  calculators: 'Calculators',
  index:
    'One question each. What you type stays in the address, so an answer can be kept, sent or printed. The planner answers all of them at once for a whole hole.',
  noScript:
    'The form needs script, which is off in this browser. Below is a worked example of what it answers. Do not work to it.',
} as const;

/** Something in the address that a page could not use. */
export const ADDRESS_NOTES: Record<AddressNote['reason'], string> = {
  'unknown-name':
    'The address says {name}={typed}, which this page does not know. It was left out.',
  'unknown-choice':
    'The address asks for “{typed}” as “{label}”, which is not on the list. Choose again.',
};

/** Beside the numbers of more than one calculator. */
export const BESIDE = {
  worn: 'worn {worn}; at worst {worst}',
  breaks: 'breaks at about {about}, at least {least}',
  chip: 'chip {chip} thick',
  at: 'at {rpm}',
} as const;

export const DRAWER_LABELS: Record<Drawer, string> = {
  all: 'All four series',
  metric: 'Metric only',
  inch: 'Inch only: fraction, number, letter',
};

/** What is wrong with a field, where a calculator has no words of its own for it. */
export const PROBLEMS: Record<string, string> = {
  'not-a-length': '“{label}” must be a length, like {length}.',
  'not-a-torque': '“{label}” must be a torque, like 30 or 22 lbf·ft.',
  'not-an-angle': '“{label}” must be a number of degrees, like 118.',
  'angle-outside': '“{label}” must be between {min}° and {max}°.',
  'not-a-count': '“{label}” must be a number of threads, like 2.5 or 4.',
  'count-outside': '“{label}” must be between {min} and {max} threads.',
  'not-above-zero': '“{label}” must be more than 0.',
  'below-zero': '“{label}” must be 0 or more.',
  'absurd-length': '“{label}” is longer than any tapped hole. Enter a length, like {length}.',
};

export const MISSING = 'Enter: {label}.';

/** Lengths that a complaint shows how to type. */
export const EXAMPLES = { mm: '16, 12,5 or 3/4 in', in: '.75, 3/4 or 16 mm' } as const;

export const READ_AS = 'Read as {thread}.';

/** Words of a callout in the thread's field. */
export const NOT_READ =
  'Not understood, and not part of this answer: “{words}”. Find out what it asks for before you cut.';

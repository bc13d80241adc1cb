/** Words that every calculator shares. English. */

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

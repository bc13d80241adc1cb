/** Words that fields, notices and the switch of units bring along on every page. English. */

export const FIELDS = {
  optional: '(optional)',
  error: 'Error:',
} as const;

/** How loud a notice is, in a word. */
export const LEVELS = { note: 'Note', amber: 'Caution', stop: 'Stop' } as const;

export const UNITS = {
  lengthsIn: 'Lengths in',
  mm: 'mm',
  in: 'inch',
  readIn: { mm: 'Depths here are in mm.', in: 'Depths here are in inches.' },
  notSaved: 'Not saved for your next visit.',
  turnTo: { mm: 'Use mm', in: 'Use inches' },
} as const;

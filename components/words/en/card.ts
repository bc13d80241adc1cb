/** Words of the job card. */

export const CARD = {
  title: 'Job card: tapped hole',
  example: 'Example. Not for use.',
  print: 'Print this card',
  back: 'Back to the plan',
  blanks: 'What stands on top of the card',
  blanksHint: 'All optional: what is left empty prints as a line to write on.',
  noHole: 'There is no hole on this card yet.',
  planOne: 'Plan one',
  notReady: 'Something in this card’s address cannot be read or is missing.',
  mend: 'Mend it in the planner',
  stop: 'Do not run: no tap fits this hole as drawn',
  run: 'What to run',
  watch: 'Watch',
  record: 'First-off and record',
  assumed: 'Assumed',
  address: 'This plan, live:',
  qr: 'Code of the plan’s address',
  made: 'Made',
  version: 'by Tapped Hole Handbook',
} as const;

/** Boxes to fill in by hand. */
export const RECORD = [
  'Tap ID',
  'Drilled size',
  'GO enters',
  'NO-GO stops',
  'Plain plug',
  'Depth',
  'Holes run',
  'Torque seen',
  'Initials',
  'Date, shift',
] as const;

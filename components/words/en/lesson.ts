/** Words around questions, answers and reminders in lessons. English. */

export const LESSON = {
  check: 'Check',
  guess: 'That is my guess',
  guessFirst: 'Guess first: the controls come with the answer.',
  showAnswer: 'Show the answer',
  yourAnswer: 'Your answer',
  right: 'Right.',
  close: 'Right, within the tolerance.',
  wrong: 'Not that.',
  guessed: 'You guessed',
  chooseFirst: 'Choose one first.',
  typeNumber: 'Enter a number, like 21.5. A decimal comma is fine.',
  wrongNumber: 'Not yet. Check the sum again, one part at a time.',
  within: 'Within {tolerance} counts.',
  eitherUnit: 'Type mm or in behind the number to use the other unit.',
  less: 'Less',
  more: 'More',
  between: 'Enter a number between {min} and {max}.',
  up: 'Move up',
  down: 'Move down',
  movedTo: '{step} is now number {place}.',
  inOrder: 'That is the order.',
  firstOut: 'Look at number {place}. {why}',
  pitfall: 'Watch out',
  worked: 'Worked example',
  recall: 'Can you still say it?',
  recallHint:
    'Answer aloud or on paper before you open each one. Come back in a few days and try again.',
  before: 'From an earlier lesson',
  instructor: 'For the instructor',
  caution: 'Caution',
  allCautions: 'All cautions, with the rules behind them',
  tryIt: 'Try it in the planner',
} as const;

/** The chain of depths as a table. */
export const CHAIN_WORDS = {
  caption: '{thread}: from the face to the drill’s shoulder',
  part: 'Part of the chain',
  pitches: 'Pitches',
  fullThread: 'Full thread',
  chamfer: 'Chamfer, longest of {threads} threads',
  clearance: 'Stop clearance',
  shoulder: 'Shoulder at least',
  middle: 'with a chamfer in the middle of its class',
} as const;

/** The quarter rule, tried. */
export const RULE_WORDS = {
  caption: 'Drilled a quarter deeper than the thread',
  thread: 'Thread',
  fullThread: 'Full thread, mm',
  rule: 'Rule drills, mm',
  room: 'Room it leaves, pitches',
  wants: 'Chamfer of {chamfer} and stop want, pitches',
  result: 'Full thread you get',
  fits: 'all of it',
  short: '{got}, no more',
} as const;

/** Two numbers with what lies between them. */
export const FROM_TO = '{from} to {to}';

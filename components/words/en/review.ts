/** Words of the review and its paper cards. English. */

export const REVIEW = {
  title: 'Review',
  intro:
    'The questions at the end of the lessons, asked again when they are about to be forgotten. Say the answer aloud before you look.',
  onDevice: 'How you stand is kept in this browser and nowhere else. Save a file to carry it off.',
  noScript:
    'Asking again at the right time needs script, which is off in this browser. All questions with their answers stand below: cover the answer, or print the cards.',
  cards: 'Paper cards to print',
  choose: 'Lessons you have read',
  chooseHint: 'Only their questions are asked.',
  noneChosen: 'Tick the lessons you have read, and their questions are asked here.',
  due: '{count} to answer now, {fresh} of them new.',
  nothingDue: 'Nothing to answer now.',
  next: 'The next is due {when}.',
  start: 'Start',
  goOn: 'Go on',
  left: '{left} left',
  show: 'Show the answer',
  knew: 'I had it',
  forgot: 'Not yet',
  judge: 'Did you have it, the reason too?',
  stop: 'Stop here',
  rests: 'Asked again {when}.',
  again: 'It comes again in this sitting.',
  done: 'Done for now: {right} of {count} at the first try.',
  today: 'today',
  tomorrow: 'tomorrow',
  inDays: 'in {days} days',
  save: 'Save to a file',
  open: 'Open a file',
  clear: 'Clear my progress',
  clearAsk: 'Your progress on this device goes for good. Save a file first.',
  cleared: 'Cleared.',
  opened: 'Opened. Of each question, what was asked last counts.',
  notOurs: 'This is no file of a review. Nothing was changed.',
  newerFile: 'This file is from a newer version of the handbook. Nothing was changed.',
  notOpened: 'The file could not be read from the disk.',
  all: 'All questions, by lesson',
  read: 'Read the lesson',
} as const;

export const CARDS = {
  title: 'Review cards on paper',
  intro:
    'Print, cut along the full lines, fold along the dashed one: the question on one side, the answer on the other.',
  boxes:
    'Keep them in three piles: every day, every week, every month. What you had moves to the next pile, what you had not goes back to the first.',
  print: 'Print',
  which: 'Which lessons',
  back: 'Review on this device',
  question: 'Question',
  answer: 'Answer',
} as const;

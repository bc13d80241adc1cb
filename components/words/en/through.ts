/** Words of the lesson on through holes: its tables and its live figure. English. */

export const PAST = {
  caption: 'How far past the far side the tap has to go, {thread}',
  class: 'Chamfer, threads',
  pitches: 'Pitches past',
  chamfer: 'Chamfer',
  thickness: 'Thickness of the work',
  thicknessHint: 'From thin plate to two diameters.',
  below: 'Clear space below',
  belowHint: 'Down to the first thing the tap could meet.',
  threadsHint: 'Counted on the tap.',
  threadsUnit: 'threads',
  clear: 'The nose comes out {past:length} past the far side. Below it {spare:length} are left.',
  strikes:
    'The tap wants {past:length} below the far side, and there is {below:length}. It would strike {short:length} before the thread is whole. Stopped in time, it leaves {full:length} of whole thread in {thickness:length} of work.',
  none: 'The tap wants {past:length} below the far side, and there is {below:length}. Stopped in time, it leaves not one whole thread.',
  guessField: 'Travel past the far side, your guess',
  guessComplaint: 'Enter a length, like 4.',
  answer: '{past:length}: the whole chamfer, and one pitch more.',
  guessed:
    'You guessed {guess:length}. It is {past:length}: the whole chamfer, and one pitch more.',
  figure: 'Drawn to scale, with the tap at the end of its travel.',
  reset: 'Back to the start',
  outside: 'Enter numbers within the limits, and the figure comes back.',
} as const;

export const PASS_CHAIN = {
  caption: '{thread} through {thickness}: from the face to the end of the travel',
  part: 'Part of the way',
  pitches: 'Pitches',
  work: 'Thickness of the work',
  chamfer: 'Chamfer, longest of {threads} threads',
  beyond: 'A little more, so that the last thread is whole',
  tip: 'The nose ends at',
  past: 'of that, past the far side',
} as const;

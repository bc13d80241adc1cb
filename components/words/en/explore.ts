/** Words of the live figure in the lesson on blind holes. English. */

export const EXPLORE = {
  title: 'A longer chamfer costs hole depth, whatever the thread depth',
  subtitle: '{thread}, synchronous spindle: one pitch of stop clearance, flat-nosed tap',
  description:
    'Four slanting bands, one for each chamfer class of {thread}. In every band a deeper hole gives the same amount more of full thread. The bands lie side by side: the longer the chamfer, the deeper the hole must be for the same thread. {sentence}',
  needs:
    '{fullThread:length} of full thread with a chamfer of {threads} threads needs the shoulder at {promised:length} (middle of the class: {middle:length}).',
  fits: 'It fits, with {spare:length} to spare.',
  short:
    'That is {short:length} deeper than the drawing allows: for certain you get {obtainable:length} of full thread.',
  threads: '{threads} threads',
  guessMark: 'your guess {guess}',
  guessField: 'Shoulder depth, your guess',
  guessRange: 'Enter a depth, like 25 or 1 in.',
  guessClose: 'You guessed {guess:length}: that is it.',
  guessDeep: 'You guessed {guess:length}, {by:length} deeper than it must be.',
  guessShallow:
    'You guessed {guess:length}. In a hole that deep the thread is whole for certain only to {obtainable:length}.',
  controls: 'Try it',
  thread: 'Thread',
  threadHint: 'A coarser pitch makes every chamfer longer.',
  chamfer: 'Chamfer',
  chamferHint: 'The class your tap belongs to.',
  fullThread: 'Full thread',
  fullThreadHint: 'From half a diameter to two and a half.',
  limit: 'Drawing allows, to the shoulder',
  limitHint: 'Where the floor, a wall or a note stops the drill.',
  reset: 'Back to the start',
  planner: 'Open this hole in the planner',
  outside: 'Enter a length within the limits, and the chart comes back.',
  source: 'the chain of depths, worked out here; chamfer classes of ISO 8830 and ASME B94.9',
} as const;

/** Words of the lesson on speed, feed and the cycle: its tables and live figures. English. */

export const SPEEDS = {
  caption: 'Speeds for {thread}, plain HSS tap, oil',
  material: 'Material',
  surface: 'Surface speed, m/min',
  rpm: 'Spindle, rev/min',
} as const;

export const POWER = {
  caption: 'Sharp straight-flute tap in medium-carbon steel, 1.5 diameters deep',
  thread: 'Thread',
  torque: 'Torque, N·m',
  rpm: 'Speed, rev/min',
  power: 'Power, kW',
} as const;

export const DRIFT = {
  titles: {
    good: 'This feed follows the pitch as closely as anybody can measure',
    check: 'This feed drifts, turn by turn: a rigid holder feels it',
    refuse: 'This feed shaves the flanks of its own thread',
  },
  subtitle: '{thread}, program in inches, {rpm:rpm}, F{feed} in place of F{exact}',
  description:
    'One straight line from nothing at the mouth of the hole to its largest value at the bottom, and a level line at one twentieth of a pitch. {sentence}',
  sentence:
    'F{feed} in place of F{exact}: after {turns:whole} turns the tap {way}, {drift} or {pitches} of a pitch. {verdict}',
  none: 'is where its thread wants it',
  back: 'is held back',
  ahead: 'is pushed ahead',
  verdicts: {
    good: 'Nothing to worry about.',
    check: 'Use more decimals, or a speed that needs fewer.',
    refuse: 'Never run it.',
  },
  depth: 'Depth in the thread',
  drift: 'Drift off the pitch',
  line: 'drift',
  lineLong: 'drift of the tap',
  most: 'a twentieth of a pitch',
  places: ['none', 'one', 'two', 'three'],
  placesField: 'Decimals in the feed',
  rpmField: 'Spindle speed',
  rpmHint: 'Look for a speed whose feed comes out even.',
  guessField: 'Drift at the bottom, your guess',
  guessComplaint: 'Enter a length, like 0.1.',
  answer: '{answer}.',
  guessed: 'You guessed {guess}. It is {answer}.',
  reset: 'Back to the start',
  outside: 'Enter a number within the limits, and the chart comes back.',
  source:
    'turns times the difference between feed and pitch, worked out here; limits common practice',
} as const;

export const REACH = {
  title: 'Past a point, a higher speed saves no time',
  subtitle: '{thread}, in and out, spindle gathering {acceleration} rev/s²',
  description:
    'Two lines over the programmed speed. The lower one, for a spindle that is at speed at once, falls and falls. The upper one leaves it, and lies level from where the spindle must slow down before it has come to speed. {sentence}',
  there:
    'The spindle reaches its {rpm:rpm}. In and out takes {time}; without the ramps it would be {ideal}.',
  short:
    'The spindle never reaches {rpm:rpm}: it turns back at {reached:rpm}. In and out takes {time}, not the {ideal} of the sum.',
  rpm: 'Programmed speed',
  time: 'Time in and out',
  real: { short: 'with ramps', long: 'spindle with ramps' },
  atOnce: { short: 'at once', long: 'at speed at once' },
  rpmField: 'Programmed speed',
  rpmHint: 'What the program says.',
  accelerationField: 'Spindle acceleration',
  accelerationHint: 'Machine’s manual, or time it with a watch.',
  reset: 'Back to the start',
  outside: 'Enter numbers within the limits, and the chart comes back.',
  source: 'even ramps in and out, worked out here',
} as const;

export const PER_TURN = '{turns} turns a minute, {pitch} mm each: {feed} mm/min.';

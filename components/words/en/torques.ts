/** Words of the lesson on torque and tap strength: its tables and its live figures. English. */

export const STROKES = {
  style: 'The tap',
  hole: 'The hole',
  blind: 'blind',
  through: 'through',
  thickness: 'Thickness of the work',
  thicknessHint: 'From thin plate to two diameters.',
  reset: 'Back to the start',
  outside: 'Enter a number within the limits, and the chart comes back.',
  source: 'torque along the stroke, worked out here',
  conditions: '{thread}, {tap}, {material}',
  sentence:
    'The most is about {torque:torque} ({low:torque} to {high:torque}), {travel:length} in.',
  thin: 'Work as thick as this holds {engaged:percent} of the chamfer’s cut at once.',
  guessField: 'Share of the full torque, your guess',
  guessComplaint: 'Enter a share between 1 and 200 %, like 75.',
  answer: '{share:percent}: {thin:torque} in place of {full:torque}.',
  guessed:
    'You guessed {guess:percent}. It is {share:percent}: {thin:torque} in place of {full:torque}.',
} as const;

export const FACTORS = {
  caption: 'What multiplies the torque of a sharp, oiled straight-flute tap',
  what: 'What changes',
  times: 'Times',
  ground: 'Where it comes from',
  spiralPoint: 'Spiral point',
  spiralFlute: 'Spiral flute',
  form: 'Form tap in place of a tap that cuts',
  worn: 'Worn to where it is usually changed',
  dry: 'Dry instead of oil, aluminium',
  maker: 'one maker’s test and table',
  makers: 'published, they disagree',
  practice: 'common practice',
  measured: 'measured',
} as const;

export const STRENGTHS = {
  caption: 'One hole, four taps: {thread} in {material}',
  tap: 'Tap',
  core: 'Web',
  breaks: 'Breaks at about',
  takes: 'Takes, sharp',
  share: 'Of its strength, worn',
} as const;

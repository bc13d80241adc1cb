/** Words of the lesson on class limits and tap limits: its tables, drawing and live figure. English. */

export const ZONE_TABLE = {
  caption: 'Two windows of a class',
  thread: 'Thread and class',
  hole: 'Hole (minor diameter)',
  pitch: 'Pitch diameter',
} as const;

export const MATCH = {
  caption: 'The tap that lists name, and what it leaves',
  thread: 'Thread and class',
  tap: 'Tap',
  wear: 'May wear',
  spare: 'May cut large',
} as const;

export const LIMITS = {
  title: '{tap} against class {class}',
  description:
    'A bar for the pitch diameter of class {class}, with the taps H1 to H8 as short bars one below the other, each further right than the last. {sentence}',
  zone: 'pitch diameter of class {class}, in',
  zoneBare: 'pitch diameter to tap for class {class}, in',
  verdicts: {
    inside:
      '{tap} suits class {class}: it may wear by {wear} thousandths before the GO stops, and may cut {spare} large before the NOT GO goes.',
    risk: '{tap} in class {class} is a gamble: if it cuts more than {spare} thousandths larger than itself, the NOT GO goes.',
    small: '{tap} is too small for class {class}: the GO needs {least} in at least.',
    large: '{tap} is too large for class {class}: the NOT GO goes from {most} in up.',
  },
  coat: 'The coating takes {shrink} thousandths off the pitch diameter.',
  caption: 'Each short bar is one tap: from its smallest to its largest pitch diameter when new.',
  metricCaption:
    'D is the inch makers’ mark for metric taps; ISO 1 to 3 are the classes of ISO 2857.',
  classField: 'Class on the drawing',
  tapField: 'Tap',
  layerField: 'Coating on each surface',
  layerHint: 'Bare is 0. One thousandth of an inch is 25.4 µm.',
  thou: 'thousandths of an inch',
  guessField: 'Above basic, your guess',
  guessComplaint: 'Enter a number of thousandths, like 3.',
  answer: '{answer} thousandths of an inch.',
  guessed: 'You guessed {guess}. It is {answer}',
  reset: 'Back to the start',
  outside: 'No tap to show: enter a number within the limits.',
} as const;

export const LAYER_WORDS = {
  title: 'A layer counts double on the flank',
  description:
    'One ridge of an internal thread in section, hatched, with a layer on it drawn as a dashed outline. Square to the flank the layer is t thick. Measured straight along the radius the flank has moved by 2 t. On the flat crest it has moved by t only.',
  ridge: 'metal',
  coating: 'dashed: coated, far too thick',
  square: 't',
  radial: '2 t',
  crest: 't',
  caption:
    'Both sides of the hole do this, so the pitch diameter loses twice what is drawn here: four times t.',
} as const;

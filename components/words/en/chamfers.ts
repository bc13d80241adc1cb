/** Words of the lesson on chamfer classes: its tables and its live figure. English. */

export const CLASSES = {
  caption: 'One chamfer, many words',
  threads: 'Threads, inch taps',
  us: 'US word',
  uk: 'UK word, hand set',
  iso: 'ISO and DIN form',
  isoThreads: 'Threads, metric taps',
  formF: 'the shortest, for finishing by hand',
  spiralPointB: '{form} (B on a spiral point)',
} as const;

export const THIN = {
  caption: 'Peak torque of a thin plate as a share of thick work',
  chamfer: 'Chamfer, threads',
  thick: 'thick',
  plate: '{thickness} plate',
} as const;

export const LOAD = {
  title: 'A longer chamfer spares every tooth, and hardly changes the torque',
  titleThin: 'Where the chamfer outgrows the work, the torque falls',
  subtitle: '{thread}, drilled {hole}, {material}, sharp straight-flute tap with {flutes} flutes',
  description:
    'Two panels over one axis, the length of the chamfer from one thread to ten. Above, the torque, a flat line inside a band that is widest for short chamfers. Below, the load on the heaviest tooth, falling steeply at first and then ever less. {sentence}',
  sentence:
    'With {threads:threads} of chamfer the heaviest tooth carries {load:force}, and the tap takes about {torque:torque}',
  apart: ' ({low:torque} to {high:torque} by theory and by published factors).',
  together: ', where theory and published factors meet.',
  thin: 'The work holds {engaged:percent} of that chamfer’s cut at once.',
  work: 'this work',
  workLong: 'in work {thickness} thick',
  thickWork: 'thick work',
  thickLong: 'in work thicker than any chamfer',
  guessField: 'Load that is left, your guess',
  guessComplaint: 'Enter a share between 1 and 200 %, like 75.',
  answer: '{share:percent}: from {from:force} down to {to:force}.',
  guessed:
    'You guessed {guess:percent}. It is {share:percent}: from {from:force} down to {to:force}.',
  controls: 'Try it',
  chamfer: 'Chamfer',
  chamferHint: 'From a bottoming tap to a long taper.',
  unit: 'threads',
  thickness: 'Thickness of the work',
  thicknessHint: 'From thin plate to two diameters.',
  material: 'Material',
  reset: 'Back to the start',
  outside: 'Enter a number within the limits, and the chart comes back.',
  source: 'torque and tooth load, worked out here; the band from published factors',
} as const;

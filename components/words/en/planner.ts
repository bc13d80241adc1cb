/** The planner's own words: labels, hints, what is missing. Sentences about the plan live in `words/`. */

import type { ChipCourse } from '../../../core/chips/direction';
import type { AddressNote } from '../../state/address';
import type { InputName } from '../../planner/inputs';

export const LABELS: Record<InputName, string> = {
  thread: 'Thread, as on the drawing',
  hole: 'The hole',
  depth: 'Full thread',
  limit: 'No deeper than',
  at: 'Measured to the drill’s',
  thickness: 'Thickness',
  below: 'Clear space below',
  fall: 'May chips fall out below?',
  partial: 'Full thread, if less than the thickness',
  designation: 'Its grade, as the drawing writes it',
  material: 'Material',
  drive: 'Spindle',
  torque: 'Its torque',
  rpm: 'Its highest tapping speed',
  acceleration: 'Its acceleration',
  point: 'Drill point angle',
  drills: 'Drills in the drawer',
  web: 'Core of the tap, measured',
  centre: 'Male centre on the tap’s nose',
  interrupted: 'Another hole crosses this one',
  entry: 'Slope of the face it enters',
  'entry-flat': 'Spotfaced flat first',
  crossing: 'What cuts across the hole',
  'crossing-width': 'Its width',
  'crossing-from': 'Begins below the face at',
  'crossing-cut': 'Cut before or after tapping',
  'bore-diameter': 'Counterbore, diameter',
  'bore-depth': 'Counterbore, depth',
  cored: 'The hole is cast in',
  later: 'Done to the part after tapping',
  duty: 'What the thread carries',
  substrate: 'What the tap is made of',
  coated: 'The tap is coated',
  'coat-min': 'Coating, thinnest',
  'coat-max': 'Coating, thickest',
  measured: 'Torque measured here',
  'measured-style': 'With which tap',
  'measured-chamfer': 'Its chamfer',
  'measured-worn': 'That tap was worn',
  learned: 'Torque learned here, against the handbook’s',
  'learned-band': 'How far the readings spread',
  own: 'What you call the material',
  kc: 'Its specific force kc1.1',
  mc: 'Its exponent mc',
  hardness: 'Its hardness',
  units: 'Lengths in',
  job: 'Job',
  part: 'Part',
  operation: 'Operation',
  machine: 'Machine',
  holes: 'Holes to run',
};

export const TEXT = {
  ownHint: 'Your own numbers for the material above, which lends the rest: its chips, its speeds.',
  kcHint: 'At 1 mm of chip. Empty: the handbook’s.',
  mcHint: 'Empty: the handbook’s.',
  hardnessHint: 'Only written down beside the name; the force is what counts.',
  form: 'The hole to plan',
  submit: 'Plan it',
  clear: 'Start again',
  around: 'Slanting face, counterbore, what crosses it, cast-in, later work, duty …',
  more: 'Drill point, drills in the drawer, coating, measured torque, own material …',
  ownUsed: 'Reckoned with your own numbers for {name}.',
  address: 'From the address',
  designer: 'A note for the designer',
  copy: 'Copy it',
  copied: 'Copied',
  notCopied: 'Not copied: mark the text and copy it yourself',
  mend: 'To mend',
  usualTool: 'Usual: bright high-speed steel',
  coatedTap: 'Yes, it is coated',
  chooseMaterial: 'Choose a material',
  designationLike: 'Like 1.4301, 304L, 42CrMo4+QT, 6061-T6, GG25: chosen for you.',
  chooseTap: 'Choose a tap',
  chooseChamfer: 'Choose a chamfer',
  blind: 'Blind',
  through: 'Through',
  shoulder: 'shoulder',
  point: 'point',
  yes: 'Yes',
  no: 'No',
  worn: 'It was worn',
  crossed: 'Yes, but nobody knows how wide',
  slopeHint: 'Degrees from square to the hole. Empty: square.',
  flat: 'A flat is cut first',
  nothingCrosses: 'Nothing',
  fromUnknown: 'empty: all in the thread',
  before: 'before',
  after: 'after',
  counterboreHint: 'With a counterbore, enter thickness and depths as they count from its floor.',
  fromFloor: 'From the counterbore’s floor',
  none: 'empty: none',
  cored: 'The hole is cast in',
  noDuty: 'None of these',
  dutyHint: 'Where a rule or a responsible person decides, not a shop.',
  usual: 'empty: 1½ diameters',
  noLimit: 'empty: no limit',
  noTorque: 'empty: not judged',
  threadLike: 'Like M8x1.25-6H, 1/4-20 UNC-2B, #10-32',
  noBelow: 'empty: plenty',
  pointHint: 'Degrees. Empty: 118. A flat bottom is 180.',
  webHint: 'Across the bottoms of the flutes. Empty: usual for the style.',
  centreHint: 'How far it stands out. Empty: flat-nosed.',
  coatingHint: 'Growth of one surface. The thread closes by four times as much.',
  measuredHint: 'Same thread and material, on this machine: the plan is scaled to it.',
  errors: 'Before this hole can be planned',
  errorTitle: 'Error: ',
  example: 'Example',
  exampleText:
    'M8x1.25-6H in 304 stainless, blind, 16 mm of full thread, drill no deeper than 22 mm to its shoulder, synchronous spindle with 30 N·m.',
  examplePart: 'Pump cover PC-16',
  exampleGoes: 'It goes when you type your own.',
  takeExample: 'Try it with the example',
  loading: 'One moment …',
  notLoaded: 'The planner did not load',
  notLoadedText:
    'Check the connection and load the page again. What you typed stands in the address and comes back.',
  waitingFor: 'Still needed',
  blocked: 'No answer yet.',
  answer: 'Answer',
  readAs: 'Read as {reading}.',
  readCallout: 'Read as a callout: {callout}. The other fields were filled from it.',
  notRead: 'Not understood: “{words}”.',
  notReadTitle: 'Not understood in the callout: “{words}”',
  notReadText:
    'These words of the drawing changed nothing in this plan. Find out what they ask for before you cut. When that is settled, take them out of the thread’s field.',
  card: 'Print the job card',
  trouble: 'Something went wrong in this hole? Find the cause',
  why: 'Why?',
  watch: 'Watch',
  numbers: 'The numbers',
  taps: 'Other taps, and why not',
  allTaps: 'Every tap judged',
  nearDrills: 'The drills that serve, and their neighbours',
  allDrills: 'Every near drill',
  drills: 'Drills judged',
  remedies: 'What would make it work, cheapest first',
  helps: 'What would help, cheapest first',
  assumed: 'Assumed',
  machine: 'At the machine',
  safety: 'More on safety',
} as const;

export const CROSSINGS = { bore: 'A bore across it', slot: 'A slot along it' } as const;

export const LATER = {
  harden: 'Hardened',
  plate: 'Plated',
  anodise: 'Anodised',
  weld: 'Welded',
} as const;

export const DUTIES = {
  lifting: 'It lifts',
  pressure: 'It holds pressure',
  structure: 'It holds up a structure',
  vehicle: 'It is part of a vehicle',
  medical: 'It is part of a medical device',
} as const;

export const CHIPS: Record<ChipCourse, string> = {
  ahead: 'Go out ahead',
  back: 'Come back up',
  stays: 'Stay in the flutes',
  none: 'None',
};

/** A field that is still empty, in two words, for the list of what is needed. */
export const NEEDED: Partial<Record<InputName, string>> = {
  thread: 'the thread',
  hole: 'blind or through',
  thickness: 'the thickness',
  material: 'the material',
  'measured-style': 'which tap was measured',
  'measured-chamfer': 'its chamfer',
  'crossing-width': 'how wide the crossing is',
  'bore-diameter': 'how wide the counterbore is',
  'bore-depth': 'how deep the counterbore is',
};

/** Something in the address that this page could not use. */
export const ADDRESS_NOTES: Record<AddressNote['reason'], string> = {
  'unknown-name':
    'The address says {name}={typed}, which this page does not know. It was left out.',
  'unknown-choice':
    'The address asks for “{typed}” as {label}, which is not on the list. Choose again.',
};

/** What to do about a field that is still empty. */
export const MISSING: Partial<Record<InputName, string>> = {
  thread: 'Enter the thread as the drawing gives it, like M8x1.25-6H or 1/4-20 UNC-2B.',
  hole: 'Choose whether the hole is blind or through.',
  thickness: 'Enter how thick the part is, like 12.',
  material: 'Choose the material.',
  'measured-style': 'Choose the tap that was measured.',
  'measured-chamfer': 'Choose the chamfer of the tap that was measured.',
  'crossing-width': 'Enter how wide the crossing is, like 8.',
  'bore-diameter': 'Enter how wide the counterbore is, like 14.',
  'bore-depth': 'Enter how deep the counterbore is, like 8.',
  own: 'Enter what you call the material, so that its card says which numbers were used.',
};

/** What is wrong with what was typed, by the code of the problem. */
export const FIELD_PROBLEMS = {
  missing: 'Enter: {label}.',
  'not-a-length': '“{label}” must be a length, like {like}.',
  'not-a-torque': '“{label}” must be a torque, like 30 or 22 lbf·ft.',
  'not-a-speed': '“{label}” must be a number of turns a minute, like 3000.',
  'not-an-angle': '“{label}” must be a number of degrees, like 118 or 140.',
  'not-an-acceleration': '“{label}” must be a number of rev/s², like 300.',
  'not-a-factor': '“{label}” must be a factor, like 1.2.',
  'not-a-force': '“{label}” must be a number of N/mm², like 1800.',
  'not-an-exponent': '“{label}” must be a number, like 0.25.',
  'not-a-hardness': '“{label}” must be a hardness, like 30 HRC, 180 HB or 190 HV.',
  'no-drills': 'Choose at least one kind of drill.',
} as const;

export const LENGTHS_LIKE = {
  coating: '8 µm or 0.0003 in',
  mm: '16, 12,5 or 3/4 in',
  in: '.75, 3/4 or 16 mm',
} as const;

export const DRILL_SERIES = {
  metric: 'Metric',
  fraction: 'Fraction',
  number: 'Number',
  letter: 'Letter',
} as const;

export const TAP_TABLE = {
  tap: 'Tap',
  why: 'Verdict and why',
  verdicts: { best: 'First choice', works: 'Works', no: 'No' },
} as const;

export const DRILL_TABLE = {
  drill: 'Drill',
  size: 'Size, {unit}',
  thread: 'Thread, shop base',
  likely: 'Likely hole, {unit}',
  verdict: 'Verdict',
  verdicts: { inside: 'Inside', risk: 'At risk', outside: 'Outside' },
  chosen: '{verdict}, chosen',
  minor: 'Minor diameter: {limits}.',
} as const;

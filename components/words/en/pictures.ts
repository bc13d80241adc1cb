/** Words on and under the drawings. English. */

export const SECTION = {
  fromFace: '{unit} from face',
  fullThread: 'full thread',
  thickness: 'thickness',
  chamfer: 'chamfer',
  centre: 'centre',
  clearance: 'clearance',
  runPast: 'run past',
  cone: 'drill cone',
  tapTo: 'tap to',
  shoulder: 'shoulder',
  point: 'drill point',
  farFace: 'far face',
  clearBelow: 'clear below',
  limitAt: { shoulder: 'max shoulder', point: 'max point' },
  asked: 'asked for',
  drill: 'drill',
  bore: 'bore to',
  leftHand: 'left hand',
} as const;

export const SECTION_NOTES = {
  short: '× {short} of {asked} of thread missing',
  strikes: '× {strikes} too little room below',
} as const;

export const SECTION_TEXT = {
  title: 'Section of the hole, to scale: {designation}, {kind}',
  blind: 'blind',
  through: 'through',
  hole: 'Hole: {drill}.',
  thread: 'Full thread to {fullThread} from the face.',
  short: 'That is {short} short of the {asked} asked for.',
  tap: 'The tap is shown at its deepest, {tip}, with the longest chamfer of its class, {threads} threads or {chamfer}.',
  blindEnd: 'The drill’s shoulder is at {shoulder} and its point at {point}.',
  clearance: 'Between nose and shoulder {clearance} stay free.',
  limit: 'The drawing allows no {at} deeper than {limit}.',
  limitWords: { shoulder: 'shoulder', point: 'point' },
  throughEnd: 'The work is {thickness} thick.',
  clear: 'Below it {clear} are clear.',
  strikes: 'The tap would run {strikes} into what is beneath.',
  left: 'The thread is left hand.',
  broken: 'Part of the depth is left out between the wavy lines.',
} as const;

export const SECTION_CAPTION = {
  scale: 'To scale.',
  tap: 'Tap at its deepest, {tip}, with the longest chamfer its class allows ({middle} at the middle of the class).',
  broken: 'Part of the depth is left out between the wavy lines.',
  table: 'Depths on this drawing',
  part: 'What',
  depth: 'From the face, {unit}',
  length: 'Length, {unit}',
} as const;

export const TIP = {
  title: 'Ends of {style} taps to one scale, standing on one floor',
  description: 'From left to right: {list}. Above each chamfer the thread has its full height.',
  one: '{words}, drawn with {threads} threads of chamfer',
  styles: {
    'spiral-point': 'spiral-point',
    'spiral-flute': 'spiral-flute',
    'straight-flute': 'straight-flute',
    form: 'form',
    'thread-mill': 'thread-milling',
  },
} as const;

export const CHIP = {
  title: '{course}: {cut}',
  description:
    'A tap in a {hole}, seen from the side. Its cutting face leans {lean}° {way}. The chips are {chips}. {course}.',
  way: {
    none: 'to neither side of the axis',
    right: 'as a right-hand helix does',
    left: 'as a left-hand helix does',
  },
  cut: { right: 'right-hand tap', left: 'left-hand tap' },
  leans: 'face leans {lean}°',
  upright: 'face upright',
  face: ['cutting', 'face'],
  flute: ['flute'],
  chips: { long: 'long curls', short: 'short pieces' },
  hole: { blind: 'blind hole', through: 'through hole' },
  course: {
    ahead: 'Pushed ahead of the tap',
    back: 'Drawn back up the flute',
    stays: 'Left lying in the flute',
  },
} as const;

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
  short: '× {short} short of the {asked} asked for',
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
  throughEnd: 'The work is {thickness} thick.',
  clear: 'Below it {clear} are clear.',
  strikes: 'The tap would run {strikes} into what is beneath.',
  left: 'The thread is left hand.',
  broken: 'A stretch of full thread is left out between the wavy lines.',
} as const;

export const SECTION_CAPTION = {
  scale: 'To scale.',
  tap: 'Tap at its deepest, {tip}, with the longest chamfer its class allows ({middle} at the middle of the class).',
  broken: 'Some of the thread is left out between the wavy lines.',
  table: 'Depths on this drawing',
  part: 'What',
  depth: 'From the face, {unit}',
  length: 'Length, {unit}',
} as const;

/** Puts values into a sentence. */
export function say(sentence: string, values: Record<string, string>): string {
  return sentence.replace(/\{(\w+)\}/g, (whole, name: string) => values[name] ?? whole);
}

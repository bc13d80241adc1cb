/** Words of the lesson on naming a tap: its tables and its live figure. English. */

import type { ChipHole } from '../../../core/chips/advice';
import type { ChipCourse } from '../../../core/chips/direction';
import type { Face } from '../../../core/chips/face';

/** What is seen of a tap held upright. */
export const SEEN: Record<Face, string> = {
  straight: 'Straight flutes',
  'climbs-right': 'Flutes that wind and climb to the right',
  'climbs-left': 'Flutes that wind and climb to the left',
  gash: 'Straight flutes, with a slanting cut through the first threads',
  none: 'No flutes that cut',
};

/** What such a tap is called where it cuts a right-hand thread. */
export const CALLED: Record<Face, string> = {
  straight: 'straight flute',
  'climbs-right': 'spiral flute',
  'climbs-left': 'left-hand spiral flute',
  gash: 'spiral point',
  none: 'form tap',
};

export const GOES: Record<ChipCourse, string> = {
  ahead: 'ahead of the tap, down the hole',
  back: 'back up the flutes, out at the mouth',
  stays: 'nowhere: they lie in the flutes',
  none: 'it makes no chips',
};

export const HOLES: Record<ChipHole, string> = {
  blind: 'Blind, the floor near',
  'blind-deep': 'Blind, with a deep pocket below the thread',
  through: 'Through, open below',
  'through-closed': 'Through, into something that must stay clean',
};

export const NAMING = {
  faces: 'The face, the name, and where the chips of a right-hand tap go',
  seen: 'What you see',
  called: 'Called',
  goes: 'Its chips go',
  materials: 'How the chip comes off',
  material: 'Material',
  chip: 'Chip',
  formed: 'Can be formed',
  holes: 'Where the chips of each tap end, in metal that makes {chips} chips',
  hole: 'The hole',
  long: 'long',
  short: 'short',
} as const;

/** The core's rulings on a tap over a hole, with the sign that stands beside the word. */
export const RULINGS = {
  right: { word: 'Right', sign: 'good' },
  works: { word: 'Works', sign: 'good' },
  check: { word: 'Careful', sign: 'amber' },
  wrong: { word: 'Wrong', sign: 'stop' },
} as const;

/** Can it be pressed into a thread? */
export const FORMING = {
  yes: 'yes',
  'if-ductile': 'if ductile',
  marginal: 'at the limit',
  rarely: 'rarely',
  no: 'no',
} as const;

export const TURN = {
  controls: 'Turn it',
  lean: 'Lean of the cutting face',
  leanHint: 'Plus: it leans to the right as it rises. Minus: to the left.',
  hand: 'The tap cuts a',
  right: 'right-hand thread',
  left: 'left-hand thread',
  hole: 'The hole',
  blind: 'Blind',
  through: 'Through',
  chips: 'Chips',
  longChips: 'Long',
  shortChips: 'Short',
  told: {
    ahead: 'The face pushes the chip ahead of the tap, {way}.',
    back: 'The face draws the chip back up the flute and out at the mouth.',
    stays: 'The face pushes the chip neither way. It lies in the flute.',
  },
  way: { blind: 'onto the floor', through: 'out below' },
  packs: 'In a blind hole it has no way out.',
  winds: 'A long chip winds up there and jams; a short one does not mind.',
  outside: 'Enter an angle within the limits, and the figure comes back.',
  reset: 'Back to the start',
} as const;

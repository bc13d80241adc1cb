/** The answer of the chip-direction calculator in words. English. */

import type { ChipAdviceCode, ChipHole } from '../../../../../core/chips/advice';
import type { ChipCourse } from '../../../../../core/chips/direction';
import { findMaterial } from '../../../../../core/material/table';
import type { Part } from '../../../answer';
import { CHIP_FORMS } from '../../names';
import { decimals } from '../../../format';
import { materialShort } from '../../../names';
import type { Seen } from '../../../../calculators/chip-direction/inputs';
import type { ChipAnswer } from '../../../../calculators/chip-direction/state';

export const TEXT = {
  inHole: 'This tap in every kind of hole',
  rule: 'The rule, for both hands',
  ruleText:
    'Only which way the face leans counts, and the hand the tap cuts. A left-hand tap is a right-hand one seen in a mirror.',
  lean: 'Face leans',
  right: 'Right-hand tap',
  left: 'Left-hand tap',
  hole: 'Hole',
  verdict: 'Is that right?',
  tap: 'The tap',
  face: 'Its face leans',
  chips: 'Chips go',
  wants: 'This hole wants them',
  reach: 'Tap for that',
  room: 'Will they fit? Work out the room below the tap',
  plan: 'Plan this hole',
  drawnAt: 'Drawn at 45°, the steepest that is drawn.',
} as const;

const IN_HOLE: Record<ChipHole, string> = {
  blind: 'in a blind hole',
  'blind-deep': 'in a blind hole with a pocket',
  through: 'in a through hole',
  'through-closed': 'where nothing may fall',
};

export const COURSE: Record<ChipCourse, string> = {
  ahead: 'ahead of the tap',
  back: 'back up the flutes',
  stays: 'nowhere: they lie in the flutes',
  none: 'nowhere: there are none',
};

export const WANTED = {
  ahead: 'ahead, out below',
  back: 'back up',
  stays: 'where they fall',
} as const;

export const VERDICTS = {
  right: { word: 'Right', sign: 'good', said: 'right' },
  works: { word: 'Works', sign: 'good', said: 'it works' },
  check: { word: 'Careful', sign: 'amber', said: 'careful' },
  wrong: { word: 'Wrong', sign: 'stop', said: 'wrong' },
} as const;

export const ADVICE: Record<ChipAdviceCode, string> = {
  'packs-on-floor':
    'They have no way out: they pack on the floor, and the tap breaks on its own chips.',
  'needs-room-below':
    'Only if the pocket holds all of them, packed as they fall. Work out the room before you trust it.',
  'falls-clear': 'They drop out below, clear of the thread.',
  'must-not-fall': 'They end up below, where none may be.',
  'clears-the-hole': 'They come out at the top, and the bottom stays clear.',
  'lifted-for-nothing':
    'It does the job, but it carries chips up that could have dropped, and its flutes are cut deeper than this hole needs.',
  'short-need-no-lift':
    'It does the job. Chips this short may lie in straight flutes, on a stiffer and cheaper tap.',
  'kept-out-below': 'They come out at the top, and what lies below stays clean.',
  'short-chips-lie': 'They crumble and lie in the flutes until the tap comes out.',
  'long-chips-pack':
    'Long chips wind up in the flutes and pack. In a shallow hole, or backing off by hand, it can be done.',
  'depends-on-chip':
    'Right where chips come short: grey iron, brass. Long chips pack. Choose the material.',
  'some-fall': 'Most stay in the flutes, but some drop. Plug the far side, or bring them back up.',
  'no-chip': 'The thread is pressed, not cut. The hole before it is larger.',
  'form-if-ductile':
    'No chip, where the metal can flow: it must stretch about a tenth before it breaks. Brittle metal cracks.',
  'not-formable': 'This material cannot be pressed into a thread: it breaks or tears.',
};

/** Which tap sends chips the way this hole wants them, for this hand. */
export function reachFor({ advice, hand }: ChipAnswer): string {
  if (advice.wanted === 'ahead') {
    return hand === 'left' ? 'spiral point, left hand' : 'spiral point';
  }
  return advice.wanted === 'back' ? `flutes that climb to the ${hand}` : 'straight flutes';
}

/** `10° to the left`, `along the axis`. */
export function leanText(lean: number | null): string {
  if (lean === null) return 'nothing cuts';
  if (lean === 0) return 'not at all: along the axis';
  return `${decimals(Math.abs(lean), 1)}° to the ${lean > 0 ? 'right' : 'left'}`;
}

/** Which way, without a number. */
export function leanSide(lean: number): string {
  if (lean === 0) return 'Not at all';
  return lean > 0 ? 'To the right' : 'To the left';
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** The tap in the hand, as the trade names it. */
export function tapNamed({ seen, hand, course, lean }: ChipAnswer): string {
  const winding = course === 'back' ? 'spiral-flute tap' : 'reverse spiral-flute tap';
  const names: Record<Seen, string> = {
    straight: 'straight-flute tap',
    'climbs-right': winding,
    'climbs-left': winding,
    gash: 'spiral-point tap (gun tap)',
    none: 'form tap (roll tap)',
    angle: `tap, face ${leanText(lean)}`,
  };
  return capital((hand === 'left' ? 'left-hand ' : '') + names[seen]);
}

/** Where the chips go, and whether that is right. */
export function answerParts({ course, advice, hole }: ChipAnswer): Part[] {
  const verdict = { text: VERDICTS[advice.verdict].said, strong: true };
  const tail = { text: ` ${IN_HOLE[hole]}.` };
  if (course === 'none') {
    return [
      { text: 'This tap makes ' },
      { text: 'no chips', strong: true },
      { text: ': ' },
      verdict,
      tail,
    ];
  }
  const goes = course === 'stays' ? 'stay in the flutes' : `go ${COURSE[course]}`;
  return [{ text: 'Chips ' }, { text: goes, strong: true }, { text: ': ' }, verdict, tail];
}

/** Why, and what the material has to do with it. */
export function becauseText({ advice, material }: ChipAnswer): string {
  const found = material && findMaterial(material);
  if (!found) return ADVICE[advice.code];
  return `${ADVICE[advice.code]} ${capital(materialShort(found.id))} ${CHIP_FORMS[found.chips]}.`;
}

export function assumed({ seen, material }: ChipAnswer): string[] {
  return [
    ...(seen === 'gash'
      ? ['The gash is as its maker ground it: it drives chips ahead, whatever the hand.']
      : []),
    ...(material ? [] : ['No material said: what depends on the length of the chip is left open.']),
    'Sharp tap, turning forward without a stop, fluid that reaches the bottom.',
    'Only which way the face leans is judged, not how strongly it drives its chips.',
  ];
}

/** Words of the chip-direction calculator. English. */

import type { ChipAdviceCode, ChipHole } from '../../../core/chips/advice';
import type { ChipCourse } from '../../../core/chips/direction';
import type { Part } from '../../words';
import { decimals, materialShort } from '../../words';
import { CHIP_FORMS } from '../../words/en/names';
import { findMaterial } from '../../../core/material/table';
import type { CalculatorWords } from '../calculator';
import type { ChipAnswer, Name, Seen } from './state';

export const WORDS: CalculatorWords<Name> = {
  labels: {
    see: 'What you see of the tap',
    angle: 'Lean of the cutting face',
    hand: 'It cuts a',
    hole: 'The hole',
    material: 'Material',
  },
  form: 'The tap and the hole',
  submit: 'Where do they go?',
  example: 'A right-hand tap with a slanting cut at its point, over a blind hole in 304 stainless.',
  missing: {
    see: { ask: 'Choose what you see of the tap.', need: 'what you see of the tap' },
    angle: {
      ask: 'Enter the lean in degrees, like 10, or −10 when it leans to the left.',
      need: 'the lean of the cutting face',
    },
    hole: { ask: 'Choose the hole.', need: 'the hole' },
  },
  problems: {
    'not-an-angle': '{label} must be a number of degrees, like 10 or −10.',
    'angle-outside': '{label} must be between −60° and 60°: no tap leans further.',
  },
};

export const TEXT = {
  seeHint: 'Hold the tap upright and look at the flute that faces you. Either end may be up.',
  angleHint: 'Degrees from the axis. To the right as it rises: plus. To the left: minus.',
  rightThread: 'right-hand thread',
  leftThread: 'left-hand thread',
  goes: 'Chips go ',
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
  figure: 'Cutting face and chip',
  room: 'Will they fit? Work out the room below the tap',
  plan: 'Plan this hole',
} as const;

export const SEEN_LABELS: Record<Seen, string> = {
  straight: 'Straight flutes',
  'climbs-right': 'Flutes climb to the right',
  'climbs-left': 'Flutes climb to the left',
  gash: 'Straight, with a slanting cut at the point',
  none: 'No flutes that cut',
  angle: 'I know the angle of the face',
};

export const HOLE_LABELS: Record<ChipHole, string> = {
  blind: 'Blind',
  'blind-deep': 'Blind, with a deep pocket below',
  through: 'Through, open below',
  'through-closed': 'Through, but nothing may fall',
};

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
  stays: 'where they fall: short chips may lie',
} as const;

const VERDICT = {
  right: 'Right',
  works: 'Works',
  check: 'Careful',
  wrong: 'Wrong',
} as const;

export const VERDICTS = {
  right: { word: VERDICT.right, sign: 'good' },
  works: { word: VERDICT.works, sign: 'good' },
  check: { word: VERDICT.check, sign: 'amber' },
  wrong: { word: VERDICT.wrong, sign: 'stop' },
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
    'It does the job, but its thinner core carries chips up that could have dropped.',
  'short-need-no-lift':
    'It does the job. Chips this short may lie in straight flutes, on a stronger and cheaper tap.',
  'kept-out-below': 'They come out at the top, and what lies below stays clean.',
  'short-chips-lie': 'They crumble and lie in the flutes until the tap comes out.',
  'long-chips-pack':
    'Long chips wind up in the flutes and pack. In a shallow hole, or backing off by hand, it can be done.',
  'depends-on-chip':
    'Right where chips come short: grey iron, brass. Long chips pack. Choose the material.',
  'some-fall': 'Most stay in the flutes, but some drop. Plug the far side, or bring them back up.',
  'no-chip': 'The thread is pressed, not cut. The hole before it is larger.',
  'form-if-ductile':
    'No chip, where the metal can flow: about a tenth of stretch before it breaks. Brittle metal cracks.',
  'not-formable': 'This material cannot be pressed into a thread: it breaks or tears.',
};

/** Which tap sends chips that way in this hole, for this hand. */
export function reachFor(answer: ChipAnswer): string {
  const left = answer.hand === 'left';
  switch (answer.advice.wanted) {
    case 'ahead':
      return left ? 'spiral point, left hand' : 'spiral point';
    case 'back':
      return left ? 'flutes that climb to the left' : 'flutes that climb to the right';
    case 'stays':
      return 'straight flutes';
    default:
      return 'depends on the chip';
  }
}

/** The tap in the hand, as the trade names it. */
export function tapNamed({ seen, hand, course, lean }: ChipAnswer): string {
  const start = hand === 'left' ? 'Left-hand ' : '';
  const names: Record<Exclude<Seen, 'angle'>, string> = {
    straight: 'straight-flute tap',
    'climbs-right':
      course === 'back' ? 'spiral-flute tap' : 'reverse spiral-flute tap, against its thread',
    'climbs-left':
      course === 'back' ? 'spiral-flute tap' : 'reverse spiral-flute tap, against its thread',
    gash: 'spiral-point tap (gun tap)',
    none: 'form tap (roll tap)',
  };
  const name = seen === 'angle' ? `tap with its face at ${leanText(lean)}` : names[seen];
  const whole = start + name;
  return whole.charAt(0).toUpperCase() + whole.slice(1);
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

const END: Record<keyof typeof VERDICT, string> = {
  right: 'right ',
  works: 'it works ',
  check: 'careful ',
  wrong: 'wrong ',
};

/** Where the chips go, and whether that is right. */
export function answerParts({ course, advice, hole }: ChipAnswer): Part[] {
  const verdict = { text: END[advice.verdict].trim(), strong: true };
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
  const chips = found
    ? ` ${sentenceCase(materialShort(material))} ${CHIP_FORMS[found.chips]}.`
    : '';
  return ADVICE[advice.code] + chips;
}

function sentenceCase(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

export function assumed({ seen, material }: ChipAnswer): string[] {
  return [
    ...(seen === 'angle'
      ? []
      : ['The tap is as its maker ground it: a gash drives chips ahead, whatever the hand.']),
    ...(material ? [] : ['No material said: what depends on the length of the chip is left open.']),
    'Sharp tap, turning forward without a stop, fluid that reaches the bottom.',
    'Only which way the face leans is judged; how strongly it drives its chips is not.',
  ];
}

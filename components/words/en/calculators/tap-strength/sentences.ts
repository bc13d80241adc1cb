/** The answer of the tap-strength calculator in words. English. */

import { WORN } from '../../../../../core/tap/styles';
import type { ShareJudgement } from '../../../../../core/tap/twist';
import { WORN_TIMES } from '../../factors';
import type { Part } from '../../../answer';
import {
  decimals,
  length,
  lengthNumber,
  percent,
  torque,
  torqueBand,
  type Unit,
} from '../../../format';
import { styleBefore, styleName } from '../../../names';
import { unbroken } from '../../../../calculators/numbers';
import type { StrengthAnswer } from '../../../../calculators/tap-strength/state';

export const TEXT = {
  breaks: 'Breaks at about',
  core: 'Core reckoned with',
  share: 'Of what breaks it, sharp',
  clutch: 'Set a clutch to',
  arm: 'Wrench, axis to hand',
  danger: 'Danger of its shape',
  measured: 'as measured',
  usual: 'usual for the style',
  easyHand: 'for easy hands, about 50 N each, to stay within half of what breaks it',
  dangerOf: '(pitch ÷ diameter)², which is what torque over strength goes with',
  noClutchTitle: 'No clutch setting will save this tap',
  noClutch:
    'Sharp, it already takes half of what breaks it, so a clutch that lets it cut also lets it break. Ease the job first: a larger hole within the class, a stronger style of tap, better oil.',
  bandsTitle: {
    clear: 'Even worn, the torque stays below the weakest tap of the kind',
    near: 'A worn tap and a weak one come near each other',
    over: 'Worn, the torque reaches what breaks a weak tap of the kind',
  },
  bandsSubtitle: 'Torque of the tap against what breaks it: {conditions}',
  bandsDescription:
    'Three level bars on one scale of torque: the sharp torque, the same tap worn, and what breaks taps of this kind, from the weakest to the strongest.',
  bandsRows: 'What',
  bandsAre: `for the worn tap ${WORN_TIMES} times the sharp torque; for breaking, core, shape of the section and steel together at their weak and strong ends. The marks are the expected values.`,
  bandsAxis: { label: 'Torque', unit: 'N·m' },
  sharpRow: 'Sharp',
  wornRow: 'Worn',
  breaksRow: 'Breaks at',
  dangerTitle: 'By shape alone, {thread} is {times} as dangerous to its tap as M10x1.5',
  dangerSame:
    'By shape alone, {thread} is as safe for its tap as M10x1.5, and safer than small threads',
  dangerSubtitle: 'Danger index (pitch ÷ diameter)² of familiar threads',
  dangerDescription:
    'One level bar for each thread, the safest shape on top; number sizes have the longest bars.',
  dangerRows: 'Thread',
  dangerAxis: { label: 'Danger index', unit: 'no unit' },
  source: 'estimate of the steel, idealised sections',
  derived: 'worked out here from the sizes',
  torque: 'Work out the torque of a job',
  spindle: 'Has the spindle the torque for it?',
  plan: 'Plan a hole with this thread',
  atMost: 'at most {arm}',
} as const;

const strong = (text: string): Part => ({ text, strong: true });

const JUDGED: Record<ShareJudgement, string> = {
  easy: 'It has plenty left.',
  good: 'It will do, with a fresh tap and good oil.',
  high: 'That is hard on it: count the holes and change it early.',
  breaks: 'Worn, it will break.',
};

const WEAK = 'The weakest of its kind, worn out, would still break.';

/** What breaks the tap, and what the torque is of that. */
export function answerParts({ study }: StrengthAnswer, unit: Unit): Part[] {
  const { breaks, torque: load } = study;
  const breaking = [{ text: 'It breaks at about ' }, strong(torque(breaks.expected, unit))];
  if (!load) return [...breaking, { text: `, at least ${torque(breaks.low, unit)}.` }];
  return [
    ...breaking,
    { text: '. Sharp, the job takes ' },
    strong(percent(load.share.sharp)),
    { text: ' of that; worn, ' },
    strong(percent(load.share.worn)),
    { text: '.' },
  ];
}

/** What to think of it. */
export function becauseText({ study }: StrengthAnswer, unit: Unit): string {
  const { breaks, torque: load } = study;
  const differ = `Taps of this kind differ: ${torqueBand(breaks.low, breaks.high, unit)} from the weakest to the strongest.`;
  const band = study.webMeasured ? differ : `${differ} Measuring its core narrows that most.`;
  if (!load) return band;
  const { judgement } = load.share;
  const weak = load.gap === 'over' && judgement !== 'breaks' ? ` ${WEAK}` : '';
  return `${JUDGED[judgement]}${weak} ${band}`;
}

/** `2.3 times`, and in words what it is set against. */
export function dangerText({ study }: StrengthAnswer): string {
  const { index, overM10 } = study.danger;
  return `${decimals(index, 3, 3)}, ${decimals(overM10, 1, 1)} times M10x1.5`;
}

export function coreText({ study }: StrengthAnswer, unit: Unit): string {
  const { low, high, likely } = study.web;
  if (study.webMeasured) return length(likely, unit);
  return `${unbroken(`${lengthNumber(low, unit)}–${lengthNumber(high, unit)}`)} ${unit}`;
}

export function assumed({ study, style, flutesGiven }: StrengthAnswer, unit: Unit): string[] {
  const { webMeasured, flutes, web } = study;
  return [
    ...(webMeasured
      ? []
      : [`Core ${length(web.likely, unit)}, usual for the style: measure yours.`]),
    ...(style === 'straight-flute' && !flutesGiven
      ? [`${flutes} flutes, usual for the size.`]
      : []),
    'HSS, hardened as usual, about 1500 N/mm² in shear, give or take a quarter: an estimate, no published figure was found.',
    'Section 1.5 times as stiff as its core alone, 1.2 at least: flutes differ.',
    `Worn means ${decimals(WORN, 2)} times the sharp torque.`,
    'Straight twisting. A tap that is bent, hammered or run onto the floor breaks at far less.',
  ];
}

export function askedParts({ study, style }: StrengthAnswer, unit: Unit): string[] {
  const { thread, torque: load, webMeasured, web } = study;
  return [
    thread.designation,
    styleName(style).toLowerCase(),
    webMeasured ? `core ${length(web.likely, unit)}` : '',
    load ? `sharp ${torque(load.sharp, unit)}` : '',
  ];
}

/** `M8x1.25-6H, spiral-flute tap`, for a title. */
export function subjectOf({ study, style }: StrengthAnswer): string {
  return `${study.thread.designation}, ${styleBefore(style).toLowerCase()} tap`;
}

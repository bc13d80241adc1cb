/** The answer of the spindle calculator in words. English. */

import { WORN } from '../../../../../core/tap/styles';
import type { SpindleVerdict } from '../../../../../core/plan/spindle-study';
import type { Range } from '../../../../../core/units';
import type { Part } from '../../../answer';
import { FORM_TIMES } from '../../factors';
import { decimals, percent, significant, torque, torqueBand, type Unit } from '../../../format';
import { materialShort, styleBefore, styleName } from '../../../names';
import { unbroken } from '../../../../calculators/numbers';
import type { SpindleAnswer } from '../../../../calculators/spindle/state';

export const TEXT = {
  sharp: 'Needs, sharp',
  worn: 'Needs, worn',
  gives: 'Spindle gives',
  share: 'Of that, worn',
  speed: 'At',
  speeds: 'Speeds with enough',
  range: 'Speeds the material wants',
  power: 'Power the cut needs',
  hasPower: 'Most power of the spindle',
  none: 'none',
  notSaid: 'not known there',
  measured: 'as measured',
  tenth: 'a worn tap leaves a tenth over',
  chosen: 'chosen for you from the material’s range',
  given: 'as you gave it',
  notPower: 'Torque is the limit, not power',
  notPowerText:
    'The cut needs {need} kW of the {have} kW that the spindle can have. At tapping speed a spindle never gets to use its power: what counts is the torque it gives there.',
  chartTitle: {
    in: 'At {rpm} rev/min the spindle has torque to spare',
    tight: 'At {rpm} rev/min a worn tap takes nearly all the spindle gives',
    over: 'At {rpm} rev/min a worn tap needs more than the spindle gives',
    'off-curve': 'What the spindle gives at {rpm} rev/min is not known',
  },
  chartSubtitle: 'Torque of the spindle over speed against what the tap needs: {conditions}',
  chartDescription:
    'A line of the spindle’s torque through the points that were typed, level or falling with speed, and two level lines: what the tap needs sharp and worn.',
  chartX: { label: 'Spindle speed', unit: 'rev/min' },
  chartY: { label: 'Torque', unit: 'N·m' },
  line: { short: 'gives', long: 'spindle gives' },
  needsSharp: 'sharp {torque}',
  needsWorn: 'worn {torque}',
  wanted: { short: 'material', long: 'speeds for the material' },
  source: 'the points typed; torque worked out here',
  torque: 'What the torque is made of',
  strength: 'Will the tap stand it?',
  plan: 'Plan this hole on this spindle',
  sharpShare: 'sharp {share}',
  wornAt: 'worn, at {rpm}',
} as const;

const strong = (text: string): Part => ({ text, strong: true });

const SAID: Record<SpindleVerdict, string> = {
  in: 'Yes: ',
  tight: 'Barely: ',
  over: 'No: ',
  'off-curve': 'Not known: ',
};

/** Tens of revolutions above a hundred, inward, so that both ends still hold. */
const inward = (rpm: number, round: (value: number) => number) =>
  rpm > 100 ? round(rpm / 10) * 10 : round(rpm);

/** `110–150 rev/min`, one speed alone, several ranges with “and”. */
export function rangesText(ranges: readonly Range[]): string {
  if (ranges.length === 0) return TEXT.none;
  const one = ({ min, max }: Range) => {
    const [from, to] = [inward(min, Math.ceil), inward(max, Math.floor)];
    return to > from ? unbroken(`${decimals(from, 0)}–${decimals(to, 0)}`) : decimals(max, 0);
  };
  return `${ranges.map(one).join(' and ')} rev/min`;
}

/** Whether the spindle has the torque, at that speed. */
export function answerParts({ study }: SpindleAnswer, unit: Unit): Part[] {
  const { verdict, needed, rpm, worn } = study;
  const at = { text: ` at ${decimals(rpm, 0)} rev/min` };
  if (worn.given === null || worn.share === null) {
    return [{ text: `${SAID[verdict]}the points do not reach` }, at, { text: '.' }];
  }
  return [
    { text: `${SAID[verdict]}a worn tap needs ` },
    strong(torque(needed.worn, unit)),
    { text: ', the spindle gives ' },
    strong(torque(worn.given, unit)),
    at,
    { text: ', and ' },
    strong(percent(worn.share)),
    { text: ' of it is used.' },
  ];
}

/** What to do about it. */
export function becauseText({ study }: SpindleAnswer): string {
  const { verdict, speeds, within, needed } = study;
  if (verdict === 'in') return 'A worn tap still leaves a tenth over.';
  if (within.length > 0) {
    return `It has enough at ${rangesText(within)}, within what the material wants.`;
  }
  if (speeds.length > 0) {
    return `It has enough at ${rangesText(speeds)}, outside the usual range for this material: slower is harmless except in metal that hardens when rubbed; faster wears the tap.`;
  }
  return `It has enough at no speed of its points: ${significant(needed.worn, 2)} N·m wants another machine, a tap that takes less, or a milled thread. Changing the speed does not lower the torque.`;
}

export function assumed({ study, style, depthGiven }: SpindleAnswer, unit: Unit): string[] {
  const { load, needed } = study;
  return [
    ...(needed.measured
      ? []
      : [
          `Sharp torque ${torque(load.torque.expected, unit)}, good to 40 % either way: ${torqueBand(load.torque.low, load.torque.high, unit)}.`,
        ]),
    `Worn means ${decimals(WORN, 2)} times the sharp torque; a tenth of the spindle is kept in hand.`,
    ...(depthGiven ? [] : ['One and a half diameters of full thread.']),
    'Between two points the torque is taken as a power of the speed, which fits level torque and level power; beyond the last point nothing is taken.',
    ...(style === 'form'
      ? [`A form tap’s torque is the least sure: ${FORM_TIMES} times a cutting tap’s.`]
      : []),
    'The points are for the gear and the rating you run: short-time ratings do not hold for a long shift.',
  ];
}

export function askedParts(
  { thread, style, material, study }: SpindleAnswer,
  unit: Unit,
): string[] {
  return [
    thread.designation,
    styleName(style).toLowerCase(),
    materialShort(material),
    study.needed.measured ? `measured ${torque(study.needed.sharp, unit)}` : '',
    study.curve.points.map((point) => `${point.rpm} rev/min ${point.torque} N·m`).join(', '),
  ];
}

/** `M12x1.75-6H, spiral-point tap`, for a title. */
export function subjectOf({ thread, style }: SpindleAnswer): string {
  return `${thread.designation}, ${styleBefore(style).toLowerCase()} tap`;
}

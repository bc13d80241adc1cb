/** The answer of the torque calculator in words. English. */

import { WORN } from '../../../core/tap/styles';
import type { Part } from '../../words/answer';
import {
  decimals,
  drillName,
  length,
  percent,
  threadRange,
  torque,
  torqueBand,
  type Unit,
} from '../../words/format';
import { materialShort, styleBefore, styleName } from '../../words/names';
import { fill } from '../../words/template';
import { unbroken } from '../numbers';
import type { TorqueAnswer } from './state';

export const TEXT = {
  sharp: 'Torque, sharp',
  worn: 'Torque, worn',
  tap: 'Of what breaks the tap',
  spindle: 'Of the spindle',
  breaks: 'Breaks at about',
  clutch: 'Set a clutch to',
  tooth: 'Heaviest tooth',
  expected: 'expected between',
  styles: 'Every tap in this hole',
  style: 'Tap',
  band: 'Sharp, low to high',
  share: 'Of its strength, worn',
  ofSpindle: 'Of the spindle, worn',
  stylesText:
    'Each with the same chamfer. Torque alone does not choose a tap: where the chips go comes first.',
  rubs: 'The chip is thinner than an edge can cut: this tap rubs. A shorter chamfer bites.',
  rubsTitle: 'The chip is too thin',
  limit: 'Torque is the limit, not power: a faster or slower spindle does not lower it.',
  chartSource: 'the geometry of the cut, worked out here',
  plan: 'Plan this hole: drill, depths, speed',
  chamfer: 'What the length of the chamfer does',
  direction: 'Where this tap’s chips go',
} as const;

const strong = (text: string): Part => ({ text, strong: true });

/** The torque, sharp and worn, and the share that matters most. */
export function answerParts({ load }: TorqueAnswer, unit: Unit): Part[] {
  const { torque: sharp, worn, share, spindle } = load;
  const spindleWorse = spindle !== undefined && spindle.worn > share.worn;
  const worst = spindleWorse
    ? [strong(percent(spindle.worn)), { text: ' of the spindle.' }]
    : [strong(percent(share.worn)), { text: ' of what breaks the tap.' }];
  return [
    { text: 'About ' },
    strong(torque(sharp.expected, unit)),
    { text: ' sharp, ' },
    strong(torque(worn.expected, unit)),
    { text: ' when worn: then ' },
    ...worst,
  ];
}

/** How sure that is, and what thin work does. */
export function becauseText({ load, depth }: TorqueAnswer, unit: Unit): string {
  const { torque: sharp, engaged, style } = load;
  const band =
    style === 'form'
      ? 'Forming torque is the least sure of all: '
      : 'The model is good to about 40 % either way: ';
  const thin =
    engaged < 0.995
      ? ' At {depth:length} the work is thinner than the chamfer is long: never more than {engaged:percent} of it cuts at once, and that is counted.'
      : '';
  return fill(
    `${band}${torqueBand(sharp.low, sharp.high, unit)} sharp.${thin}`,
    { depth, engaged },
    unit,
  );
}

export function assumed(answer: TorqueAnswer, unit: Unit): string[] {
  const { load, chamferGiven, webGiven } = answer;
  const { chamfer, drill, hole, web } = load;
  return [
    ...(chamferGiven
      ? []
      : [`${unbroken(threadRange(chamfer.threads))} threads of chamfer, usual for this hole.`]),
    drill ? `Drilled ${drillName(drill)}.` : `Hole ${length(hole, unit)}.`,
    `HSS tap, plain, flat-nosed, well oiled. Worn means ${decimals(WORN, 2)} times the sharp torque.`,
    webGiven
      ? fill('Core {web:length}, as measured.', { web }, unit)
      : fill('Core {web:length}, usual for the style: measure yours.', { web }, unit),
    'Strength of the steel estimated at 1500 N/mm², give or take a quarter: the shares are for caution, not for use up to 100 %.',
  ];
}

export function askedParts(
  { thread, load, hole, depth, material }: TorqueAnswer,
  unit: Unit,
): string[] {
  return [
    thread.designation,
    styleName(load.style).toLowerCase(),
    `${unbroken(threadRange(load.chamfer.threads))} threads of chamfer`,
    hole === 'through'
      ? `through ${length(depth, unit)}`
      : `blind, ${length(depth, unit)} full thread`,
    materialShort(material),
    load.spindle ? `spindle ${torque(load.spindle.torque, unit)}` : '',
  ];
}

/** `Spiral-flute tap`, for a title. */
export function subjectOf({ thread, load }: TorqueAnswer): string {
  return `${thread.designation}, ${styleBefore(load.style).toLowerCase()} tap`;
}

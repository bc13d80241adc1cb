/** The answer of the torque calculator in words. English. */

import { WORN } from '../../../../../core/tap/styles';
import type { Part } from '../../../answer';
import {
  decimals,
  drillName,
  length,
  percent,
  threadRange,
  torque,
  torqueBand,
  type Unit,
} from '../../../format';
import { materialShort, styleBefore, styleName } from '../../../names';
import { fill } from '../../../template';
import { unbroken } from '../../../../calculators/numbers';
import type { TorqueAnswer } from '../../../../calculators/torque/state';

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
  likely: 'nine in ten between',
  back: 'Coming back',
  backBeside: 'rubbing alone: a chip that wedges behind the teeth can make it far more',
  flutes: 'Chips to flute room',
  flutesBeside:
    'packed chips of each mm of thread over the flute beside it: flutes move chips, they do not store them',
  deeper: 'What moves it most',
  deeperText:
    'No input is known exactly. 2,000 sets were drawn from the spreads below, the same each time: nine in ten give {low:torque} to {high:torque} sharp, and {shareLow:percent} to {shareHigh:percent} of the tap’s strength when worn. What the model leaves out comes on top; the wider band above stands for that.',
  teeth: 'The load on every tooth',
  tooThin: {
    cuts: 'The chip is {chip} thick: thick enough to cut.',
    near: 'The chip is {chip} thick: in metal that hardens when rubbed, that is close to rubbing. A shorter chamfer bites deeper.',
    rubs: 'The chip is {chip} thick, less than the edge is sharp: these teeth rub. A shorter chamfer bites.',
  },
  toothTitle: 'The first tooth takes {first}, the last {last}',
  toothSubtitle: 'Load on each tooth of the chamfer, from the nose: {conditions}',
  toothDescription:
    'A falling row of points: the first tooth to bite takes the widest chip, each one behind it a narrower one.',
  toothX: { label: 'Tooth, from the nose', unit: 'number' },
  toothY: { label: 'Load', unit: 'N' },
  classes: 'The chamfer classes compared',
  crossTitle: 'A bore crosses the thread',
  crossText:
    'The mean torque falls there, yet each tooth knocks as it comes back into metal. Straight or low-helix flutes, a steady feed and a chamfer longer than the gap is wide stand it better; clean the burr out of the bore.',
  noseText: 'With this nose {threads} threads of the chamfer cut, the rest runs free in the hole.',
  dryTitle: 'Dry',
  dryMeasured:
    'Counted at {factor} times the oiled torque, as measured in aluminium. Oil is the cheapest cure there is.',
  dryBorrowed:
    'Counted at {factor} times the oiled torque. That was measured in aluminium and is only borrowed for this material.',
  dryNone: 'This material is commonly tapped dry, so nothing is added. Mind the dust.',
  readTitle: 'Scaled to what you read',
  readText:
    'The handbook would have said {model:torque}; you read {read:torque}: {factor} times. Every torque here is scaled by that, and the band is narrower.',
  ownMaterial: '{name}: your own numbers, chips and speed as {like}.',
  plan: 'Plan this hole: drill, depths, speed',
  strength: 'What breaks this tap, and where a clutch should let go',
  atSpindle: 'Whether a spindle has this torque, and at which speeds',
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

const GROUND = {
  form: 'Forming torque is the least sure of all: ',
  read: 'From one reading, for this thread, material and machine: ',
  model: 'The model is good to about 40 % either way: ',
};

/** How sure that is, and what thin work does. */
export function becauseText({ load, depth, read }: TorqueAnswer, unit: Unit): string {
  const { torque: sharp, engaged, style } = load;
  const ground = style === 'form' ? 'form' : read ? 'read' : 'model';
  const band = GROUND[ground];
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
  const { load, chamferGiven, webGiven, noseGiven, fluid, own, material, study } = answer;
  const { chamfer, drill, hole, web } = load;
  return [
    ...(chamferGiven
      ? []
      : [`${unbroken(threadRange(chamfer.threads))} threads of chamfer, usual for this hole.`]),
    drill ? `Drilled ${drillName(drill)}.` : `Hole ${length(hole, unit)}.`,
    `HSS tap, plain, flat-nosed, ${fluid === 'oil' ? 'well oiled' : 'dry'}. Worn means ${decimals(WORN, 2)} times the sharp torque.`,
    ...(own
      ? [fill(TEXT.ownMaterial, { name: own.name, like: materialShort(material) }, unit)]
      : []),
    ...(noseGiven && study.teeth
      ? [fill(TEXT.noseText, { threads: decimals(study.teeth.threads, 1) }, unit)]
      : []),
    webGiven
      ? fill('Core {web:length}, as measured.', { web }, unit)
      : fill('Core {web:length}, usual for the style: measure yours.', { web }, unit),
    'Strength of the steel estimated at 1500 N/mm², give or take a quarter: the shares are for caution, not for use up to 100 %.',
  ];
}

export function askedParts(
  { thread, load, hole, depth, material, own, fluid, read }: TorqueAnswer,
  unit: Unit,
): string[] {
  return [
    thread.designation,
    styleName(load.style).toLowerCase(),
    `${unbroken(threadRange(load.chamfer.threads))} threads of chamfer`,
    hole === 'through'
      ? `through ${length(depth, unit)}`
      : `blind, ${length(depth, unit)} full thread`,
    own?.name ?? materialShort(material),
    load.spindle ? `spindle ${torque(load.spindle.torque, unit)}` : '',
    fluid === 'dry' ? 'dry' : '',
    read ? `read ${torque(read.torque, unit)}` : '',
  ];
}

/** `Spiral-flute tap`, for a title. */
export function subjectOf({ thread, load }: TorqueAnswer): string {
  return `${thread.designation}, ${styleBefore(load.style).toLowerCase()} tap`;
}

/** The answer of the chip-room calculator in words. English. */

import type { ChipBulk } from '../../../../../core/chips/fit';
import { FILL_LIMIT } from '../../../../../core/chips/room';
import type { Part } from '../../../answer';
import { decimals, drillName, length, percent, threadRange, type Unit } from '../../../format';
import { materialShort } from '../../../names';
import { fill } from '../../../template';
import { roughLength, unbroken, volume } from '../../../../calculators/numbers';
import type { RoomAnswer } from '../../../../calculators/chip-room/state';

export const BULKS: Record<ChipBulk, string> = {
  short: 'short chips, needles, dust',
  medium: 'chips of middling length',
  long: 'long, stringy chips',
};

export const TEXT = {
  solid: 'Metal removed',
  free: 'Free hole under the tap',
  room: 'Room there, with the cone',
  packed: 'Its chips, packed',
  want: 'They want free hole',
  drill: 'Shoulder they would need',
  range: 'From short chips to long',
  kind: 'Chips',
  factor: 'Packed, times the solid metal',
  takes: 'They take',
  wants: 'Free hole wanted',
  verdict: 'Do they fit?',
  fits: 'Fit',
  no: 'No',
  doesNotReach: 'The tap itself does not reach',
  rangeText:
    'How tightly chips pack is the loose end of this sum: it is an estimate from heaps of turnings, not from tapping. Read the row above and below your own too.',
  depth: 'How deep must this hole be without chips in it?',
  direction: 'Which tap brings its chips back up?',
  plan: 'Plan this hole: which tap, which drill',
  section:
    'Tap at its deepest, with the longest chamfer of its class: the chips would have to go below it.',
  chartSource: 'bulking of turnings, from a chip-conveyor guide, packed by estimate',
  deeper: '{by} deeper',
} as const;

const strong = (text: string): Part => ({ text, strong: true });

/** Whether they fit, and what it would take. */
export function answerParts({ study }: RoomAnswer, unit: Unit): Part[] {
  const { own, short } = study;
  if (short > 0) {
    return [
      { text: 'The tap is ' },
      strong(`${length(short, unit)} too long`),
      { text: ' for this hole, before any chip.' },
    ];
  }
  if (own.fits) return [{ text: 'The chips ' }, strong('fit'), { text: ' under the tap.' }];
  return [
    { text: 'The chips ' },
    strong('do not fit'),
    { text: '. They would want the hole ' },
    strong(`about ${roughLength(own.deeper, unit)} deeper`),
    { text: '.' },
  ];
}

export function becauseText({ study, material, fullThread }: RoomAnswer, unit: Unit): string {
  const { fit, own, bulk } = study;
  const start = `{fullThread:length} of thread remove ${volume(fit.solid, unit)} of metal. As ${BULKS[bulk]}, packed, ${materialShort(material)} takes ${decimals(own.factor, 0)} times that, ${volume(own.volume, unit)}`;
  const end = `; under the tap there are ${volume(fit.room, unit)}, and chips jam before they fill more than ${percent(FILL_LIMIT)} of it.`;
  return fill(start + end, { fullThread }, unit);
}

export function assumed({ study, pointAngle, pointGiven }: RoomAnswer, unit: Unit): string[] {
  const { chamfer, drill, hole } = study;
  return [
    `Every chip goes ahead of the tap and none comes back up: a spiral point, flat-nosed.`,
    `The chamfer is the longest of its class, ${unbroken(threadRange(chamfer.threads))} threads.`,
    drill
      ? `Drilled ${drillName(drill)}${pointGiven ? '' : `, ${pointAngle}° point`}.`
      : `Hole ${length(hole, unit)}${pointGiven ? '' : `, ${pointAngle}° point`}.`,
    `Chips are taken to fit up to ${percent(FILL_LIMIT)} of the room (common practice).`,
    'Nothing else lies in the hole: blow no air into it, flush or draw it clean before tapping.',
  ];
}

export function askedParts(answer: RoomAnswer, unit: Unit): string[] {
  const { study, fullThread, shoulder, material } = answer;
  return [
    study.thread.designation,
    `${length(fullThread, unit)} full thread`,
    `shoulder at ${length(shoulder, unit)}`,
    `${unbroken(threadRange(study.chamfer.threads))} threads of chamfer`,
    materialShort(material),
  ];
}

export const CHART = {
  title: 'The looser the chips, the more empty hole they want',
  subtitle: '{thread}, {fullThread:length} of full thread, hole {hole:length}',
  description:
    'A straight rising line: free hole wanted below the tap against how many times the volume of the solid metal the chips fill. A level line shows the free hole there is. {sentence}',
  x: 'Volume of the chips',
  xUnit: 'times the solid metal',
  y: 'Free hole wanted below the tap',
  line: 'wanted',
  lineLong: 'free hole wanted',
  free: 'free now {free:length}',
  here: 'packed: {needed}',
  fine: 'fine',
  fineLong: 'fine chips {range}',
  broken: 'broken',
  brokenLong: 'broken chips {range}',
  coils: 'coils',
  coilsLong: 'tight coils {range}',
} as const;

/** The answer of the blind-hole calculator in words. English. */

import type { ChamferThatFits } from '../../../../../core/chamfer/names';
import type { BlindDepths } from '../../../../../core/plan/blind-study';
import type { Part } from '../../../answer';
import { CHAMFERS as CLASS_WORDS } from '../../names';
import { decimals, length, threadRange, type Unit } from '../../../format';
import { driveName } from '../../../names';
import { fill } from '../../../template';
import type { ChamferChoice, Find } from '../../../../calculators/blind-hole-depth/inputs';
import type { DepthAnswer } from '../../../../calculators/blind-hole-depth/state';

export const TEXT = {
  full: 'Full thread',
  shoulder: 'Drill shoulder at',
  tap: 'Tap to',
  room: 'Room below the full thread',
  chamfer: 'Room for a chamfer of',
  middle: 'middle of the class: ',
  shortest: 'its shortest: ',
  classes: 'Every chamfer for this question',
  fits: 'Which chamfers fit',
  class: 'Chamfer',
  needs: 'Shoulder at least',
  gives: 'Full thread for certain',
  middleOf: 'Middle of the class',
  verdict: 'Does it fit?',
  plan: 'Plan this hole: tap, drill, speed, torque',
  chips: 'Chips pushed ahead? Work out the room for them',
  section: 'Section of the hole',
  justFits: 'The tap is drawn with the longest chamfer that there is room for.',
  chartSource: 'the sum of depths, worked out here; chamfer ranges of ISO 8830 and ASME B94.9',
  cone: 'point at {point}, {angle}[, drill {drill}]',
  threads: '{count} threads',
  pitches: '{count} pitches',
} as const;

const FITS: Record<
  ChamferThatFits['fits'],
  { word: string; sign: 'good' | 'amber' | 'stop'; text: string }
> = {
  sure: { word: 'Fits', sign: 'good', text: 'with the longest chamfer of its class.' },
  some: {
    word: 'Perhaps',
    sign: 'amber',
    text: 'only one at the short end of its class: count its threads.',
  },
  no: { word: 'No', sign: 'stop', text: 'even the shortest of its class is too long.' },
};

export const FIT_WORDS = FITS;

/** `2–3 threads, semi-bottoming`. */
export function className(name: ChamferChoice, threads: { min: number; max: number }): string {
  const word = name === 'form-f' ? 'last of a hand set' : CLASS_WORDS[name];
  return `${threadRange(threads)} threads, ${word}`;
}

const strong = (text: string): Part => ({ text, strong: true });

/** The answer in one sentence. */
export function answerParts({ find, study }: DepthAnswer, unit: Unit): Part[] {
  const { promised, result } = study;
  if (result.asked === 'chamfer') {
    const sure = study.fits.find(({ fits }) => fits === 'sure');
    return [
      { text: 'Room for ' },
      strong(`${decimals(result.threads, 2)} threads`),
      { text: ' of chamfer: ' },
      ...(sure
        ? [strong(threadRange(sure.chamfer.threads)), { text: ' fits for certain.' }]
        : [strong('no tap fits for certain'), { text: '.' }]),
    ];
  }
  if (find === 'full') {
    return [strong(length(promised.fullThread, unit)), { text: ' of full thread, for certain.' }];
  }
  return [
    { text: 'Drill ' },
    strong(length(promised.shoulder, unit)),
    { text: ' to the shoulder; tap to ' },
    strong(length(promised.tip, unit)),
    { text: '.' },
  ];
}

/** The sum behind the answer, part by part. */
export function becauseText({ study, chamfer, centre }: DepthAnswer, unit: Unit): string {
  const { promised, result, clearance, thread } = study;
  const values = {
    fullThread: promised.fullThread,
    shoulder: promised.shoulder,
    threads: promised.threads,
    chamfer: promised.threads * thread.pitch,
    clearance,
    stop: clearance * thread.pitch,
    room: promised.roomInPitches,
    ...(centre > 0 ? { centre } : {}),
  };
  if (result.asked === 'chamfer') {
    return fill(
      'Below the full thread lie {room:pitches}. {clearance:pitches} of them stay free as stop clearance[, and the male centre takes {centre:length}].',
      values,
      unit,
    );
  }
  const start = chamfer
    ? `Counted with ${decimals(promised.threads, 2)} threads of chamfer, the most its class allows: `
    : '';
  return fill(
    `${start}{fullThread:length} full thread + {chamfer:length} chamfer[ + {centre:length} male centre] + {stop:length} stop clearance = {shoulder:length}.`,
    values,
    unit,
  );
}

export function assumed(answer: DepthAnswer, unit: Unit): string[] {
  const { study, drive, centre, pointAngle, pointGiven } = answer;
  return [
    fill(
      '{clearance:pitches} of stop clearance, {stop:length}: {drive}.',
      {
        clearance: study.clearance,
        stop: study.clearance * study.thread.pitch,
        drive: driveName(drive).toLowerCase(),
      },
      unit,
    ),
    ...(centre > 0 ? [] : ['Flat-nosed tap. A male centre takes its own length more.']),
    ...(pointGiven ? [] : [`Drill point ${pointAngle}°.`]),
    'Chips come back up or are none: room for chips pushed ahead is a question of its own.',
    'Depths on the machine are held as set; add what your drill and tap lengths vary by.',
  ];
}

/** What was asked, in words, for a printed sheet. */
export function askedParts({ study, find, chamfer, drive }: DepthAnswer, unit: Unit): string[] {
  const { promised, thread } = study;
  return [
    thread.designation,
    find === 'full' ? '' : `${length(promised.fullThread, unit)} full thread`,
    find === 'hole' ? '' : `shoulder at ${length(promised.shoulder, unit)}`,
    chamfer ? className(chamfer.choice, chamfer.threads) : '',
    driveName(drive).toLowerCase(),
  ];
}

export const CHART = {
  title: 'Every thread of chamfer costs one pitch of hole',
  subtitle: '{thread}, {clearance:pitches} of stop clearance',
  description:
    'Four slanting bands, one for each chamfer class. Each rises a millimetre of full thread for a millimetre of hole; the longer the chamfer, the further right the band starts. {sentence}',
} as const;

/** Where a band's row stands, for the table under the sum. */
export const rowOf = (depths: BlindDepths, find: Find): number =>
  find === 'full' ? depths.fullThread : depths.shoulder;

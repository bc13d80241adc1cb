/** The answer of the speed-and-cycle calculator in words. English. */

import type { FeedCheck, FeedMode, ProgramUnit } from '../../../../../core/cycle/feed';
import type { SkeletonCode } from '../../../../../core/cycle/skeleton';
import type { Part } from '../../../answer';
import { decimals, length, rpm, seconds, type Unit } from '../../../format';
import { materialName } from '../../../names';
import type { CycleAnswer } from '../../../../calculators/speed-and-cycle/state';
import { CHOICES } from './messages';

export const TEXT = {
  numbers: 'The numbers',
  range: 'Sensible speeds',
  speed: 'Speed',
  exact: 'Exact feed',
  rounded: 'As a control takes it',
  typed: 'As it stands in the program',
  reachable: 'Speed it can reach',
  time: 'In and out',
  overrun: 'Runs on by',
  clean: 'Speeds whose feed needs no rounding',
  cleanSpeed: 'Speed',
  cleanFeed: 'Feed',
  cleanNone: 'None within 8 % of this speed. Feed per turn needs none, where the control has it.',
  skeleton: 'Skeleton of the cycle',
  skeletonText:
    'Not a program: blanks stand where only you know. Words differ between controls, and the one that ties spindle and feed together is the control’s own. Check your control’s manual, then prove it above the part with the single-block switch on.',
  nist: 'A mark × stands at a word that the public NIST RS-274/NGC report does not define. Many controls have it all the same.',
  explained: 'What each word is for',
  safety: 'Check your control’s manual',
  safetyText:
    'During the cycle, feed hold and the overrides usually wait until the tap is out. An emergency stop does not keep spindle and feed in step: know from the manual how to free the tap before you press start.',
  startToTip: 'from start plane to tip',
  setShort: 'set Z short by what you measure on this spindle, not by this number',
  plan: 'Plan the whole hole: tap, drill, depths, torque',
} as const;

export function feedUnit(unit: ProgramUnit, mode: FeedMode): string {
  return `${unit}/${mode === 'per-minute' ? 'min' : 'rev'}`;
}

/** A feed as it would be written in the program. */
export function feedText(value: number, unit: ProgramUnit, mode: FeedMode): string {
  const most = mode === 'per-minute' ? (unit === 'mm' ? 2 : 3) : unit === 'mm' ? 4 : 5;
  return `${decimals(value, most, most === 3 ? 3 : 1)} ${feedUnit(unit, mode)}`;
}

/** What a feed does to the thread. */
export function driftText(check: FeedCheck, unit: Unit): string {
  const share = decimals(Math.abs(check.error) * 100, 3);
  // Drift is told in both units to a hundredth of what a gauge can feel.
  const drift =
    unit === 'mm'
      ? `${decimals(Math.abs(check.drift), 3)} mm`
      : `${decimals(Math.abs(check.drift) / 25.4, 4)} in`;
  if (Math.abs(check.drift) < 5e-7) return 'follows the pitch exactly';
  const side = check.drift > 0 ? 'too fast' : 'too slow';
  return `${share} % ${side}: ${drift} over ${decimals(check.turns, 1)} turns`;
}

export const VERDICTS = {
  good: { level: 'good', word: 'Near enough', text: 'nobody can measure it.' },
  check: {
    level: 'amber',
    word: 'Check',
    text: 'a holder with some float takes it up; a rigid one does not.',
  },
  refuse: {
    level: 'stop',
    word: 'Do not run',
    text: 'the tap would shave its own flanks or pull out of the thread.',
  },
} as const;

const strong = (text: string): Part => ({ text, strong: true });

export function answerParts({ question, study }: CycleAnswer): Part[] {
  const { unit, mode } = question;
  const { typed, clean, rpm: speed, exact, rounded } = study;
  const best = clean[0];
  const offer: Part[] =
    best && best.rpm !== Math.round(speed) && mode === 'per-minute'
      ? [
          { text: ' At ' },
          strong(rpm(best.rpm)),
          { text: ' it is ' },
          strong(feedText(best.feed, unit, mode)),
          { text: ' with nothing to round.' },
        ]
      : [];
  if (typed && typed.verdict === 'refuse') {
    return [
      strong(`Not ${feedText(typed.programmed, unit, mode)}`),
      { text: ` at ${rpm(speed)}: it needs ` },
      strong(feedText(exact, unit, mode)),
      { text: '.' },
      ...offer,
    ];
  }
  const feed = typed?.programmed ?? rounded.programmed;
  return [
    { text: 'Run ' },
    strong(rpm(speed)),
    { text: ' at ' },
    strong(feedText(feed, unit, mode)),
    { text: '.' },
    ...(rounded.verdict === 'good' && !typed ? [] : offer),
  ];
}

export function becauseText({ study, question }: CycleAnswer): string {
  const { range, surface, depthFactor, sensible } = study;
  const deep =
    depthFactor < 1
      ? ` The thread is deep, so the speed is cut to ${decimals(depthFactor * 100, 0)} %.`
      : '';
  const outside = sensible ? '' : ' The speed asked for lies outside that.';
  return `${materialName(question.material)} wants ${decimals(surface.min, 1)}–${decimals(surface.max, 1)} m/min with this tap and fluid: ${rpm(range.min).split(' ')[0]}–${rpm(range.max)}.${deep}${outside}`;
}

export function timeText({ study }: CycleAnswer): string[] {
  const { time, reachable, rpm: speed } = study;
  return [
    `in ${seconds(time.in)}, out ${seconds(time.out)}`,
    ...(reachable !== null && reachable < speed
      ? ['the spindle turns round before it is at speed: a higher number gains nothing']
      : []),
    ...(reachable === null ? ['without the time to gather speed'] : []),
  ];
}

export function assumed({ question, study }: CycleAnswer, unit: Unit): string[] {
  return [
    `Tip of the tap to ${length(study.tip, unit)} below the face, start plane ${length(study.start, unit)} above it.`,
    `${CHOICES.substrate[question.substrate]}, ${CHOICES.coating[question.coating].toLowerCase()}, ${CHOICES.fluid[question.fluid].toLowerCase()}: how much those change the speed is common practice, within about a third.`,
    ...(question.acceleration === undefined
      ? [
          'The spindle is taken to be at speed at once. Enter how fast it gathers speed for the true time.',
        ]
      : ['It slows down as fast as it gathers speed.']),
    'Drift counts over the full thread, with a holder that gives nothing.',
  ];
}

export function askedParts({ question, study }: CycleAnswer, unit: Unit): string[] {
  return [
    study.thread.designation,
    `${length(study.fullThread, unit)} full thread`,
    materialName(question.material),
    `program in ${question.unit}, feed ${CHOICES.mode[question.mode].toLowerCase()}`,
  ];
}

/** What a word of the skeleton is for. */
export const WORDS_OF: Record<SkeletonCode, string> = {
  'plane-xy': 'works in the XY plane, so that the cycle runs along Z',
  absolute: 'counts every position from the part’s zero',
  'unit-mm': 'lengths and feeds are in millimetres',
  'unit-inch': 'lengths and feeds are in inches',
  'per-minute': 'F is per minute: it must be speed × pitch',
  'per-revolution': 'F is per turn: it is the pitch, whatever the speed',
  'radius-off': 'cancels cutter radius compensation',
  'cycles-off': 'cancels any canned cycle that is still on',
  'tool-number': 'number of the tap in your machine',
  'tool-change': 'changes the tool',
  speed: 'spindle speed, rev/min',
  clockwise: 'spindle clockwise, for a right-hand tap',
  anticlockwise: 'spindle anticlockwise, for a left-hand tap',
  rapid: 'moves at rapid speed',
  position: 'place of the first hole',
  'length-offset': 'takes the tap’s length into account',
  'offset-number':
    'where that length is stored: know whether it was taken on a flat nose or on a point',
  'clear-height': 'a height clear of clamps and bosses',
  'return-initial': 'goes back to that height between holes; G99 stays at the start plane',
  'cycle-right': 'right-hand cycle: feeds in, stops, turns round, feeds out in step',
  'cycle-left': 'left-hand cycle on many controls; yours may call it otherwise',
  depth: 'how far the tip goes below the face',
  'start-plane': 'start plane: room to gather speed, and above any boss',
  feed: 'the feed, exactly as worked out above',
  'next-hole': 'the next hole; repeat for each',
  'spindle-stop': 'stops the spindle',
};

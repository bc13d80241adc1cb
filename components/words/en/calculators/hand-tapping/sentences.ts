/** How a hole is tapped by hand, in words. English. */

import type { HandTap } from '../../../../../core/tap/hand';
import type { Part } from '../../../answer';
import {
  decimals,
  length,
  roughLength,
  threadRange,
  torqueBand,
  turnRange,
  type Unit,
} from '../../../format';
import { UK_WORDS } from '../../../../../core/chamfer/classes';
import { CHAMFERS } from '../../names';
import { materialShort, styleName } from '../../../names';
import { fill } from '../../../template';
import type { HandAnswer } from '../../../../calculators/hand-tapping/state';

export const TEXT = {
  order: 'Order of the taps',
  tap: 'Tap',
  leaves: 'Full thread it leaves',
  use: 'Use it?',
  steps: 'Step by step',
  arm: 'Longest arm, axis to hand',
  breaks: 'The tap breaks at',
  stop: 'First tap’s nose no deeper than',
  back: 'Turn back',
  clear: 'Out and clear the chips',
  square: 'Try it with a square',
  depth: 'Work out the depth of the hole',
  gauges: 'Read the gauges',
  trouble: 'Something went wrong',
  clearEvery: 'every {turns} turns at depth',
  after: 'after {turns} turns',
  and: ' and ',
} as const;

const range = ({ min, max }: { min: number; max: number }) => threadRange({ min, max });

/** A tap of the set by its place, its threads and its names on both sides of the ocean. */
export function tapText({ order, threads, class: word }: HandTap): string {
  const count = threads.min === threads.max ? decimals(threads.max, 1) : range(threads);
  const names = word
    ? `${CHAMFERS[word]}; in Britain ${UK_WORDS[word]}`
    : `number ${order} of the set`;
  return `${count} threads of chamfer (${names})`;
}

export function leavesText(tap: HandTap, unit: Unit): string {
  return tap.undersize ? 'none yet: undersize' : length(tap.fullThread, unit);
}

export function useText({ needed, undersize }: HandTap): string {
  if (undersize) return 'Yes. Alone it leaves the thread too small.';
  return needed ? 'Yes' : 'Not needed: the thread is there already';
}

const strong = (text: string): Part => ({ text, strong: true });

export function answerParts({ plan }: HandAnswer, unit: Unit): Part[] {
  const count = plan.taps.filter(({ needed }) => needed).length;
  const taps = count === 1 ? 'one tap' : `${count} taps, in order`;
  const arm = roughLength(plan.arm.expected, unit);
  return [
    { text: 'Use ' },
    strong(taps),
    { text: '; hands no further from the axis than ' },
    strong(arm),
    { text: plan.reaches ? '.' : '; ' },
    ...(plan.reaches
      ? []
      : [strong(`only ${length(plan.obtainable, unit)} of full thread`), { text: ' can be had.' }]),
  ];
}

export function backText({ plan, style }: HandAnswer): string {
  if (plan.backOff) {
    const { on, back } = plan.backOff;
    return `${turnRange(on)} turn on, ${turnRange(back)} back, until the chip snaps`;
  }
  return style === 'straight-flute' ? 'No need: the chips come short' : 'Never: keep it turning';
}

/** What to do, one thing after another. */
export function steps(answer: HandAnswer, unit: Unit): string[] {
  const { plan, shoulder } = answer;
  const { check, fixed } = plan.square;
  return [
    'Check the hole with a plain plug. Countersink to just over the thread’s diameter and deburr.',
    'Clamp the part, the hole upright if it can be. Oil the tap.',
    'Start the first tap in a guide block, or against a centre in a spindle that is switched off and locked out. Press only until it bites.',
    `Hold a square to it after ${check.map((turns) => decimals(turns, 0)).join(' and after ')} turns, from two sides a quarter turn apart. After about ${decimals(fixed, 0)} full threads it cannot be steered any more, only broken.`,
    `${backText(answer)}. Both hands pull alike.`,
    ...(plan.clearEvery && plan.stop !== null
      ? [
          fill(
            `Blind: mark {stop:length} on the tap and stop there. Near the bottom take it out every ${range(plan.clearEvery)} turns and clear the hole with a hook or a vacuum.`,
            { stop: plan.stop },
            unit,
          ),
        ]
      : []),
    ...(answer.set === 'serial'
      ? [
          'Then the next tap of the set, started by hand until it drops into the thread. Leave none out.',
        ]
      : []),
    'If it springs under your hands and does not move on: stop, turn back, clean, oil. Do not pull harder.',
    'Brush and flush, gauge with GO, NOT GO and plain plugs, cover the hole.',
    ...(shoulder === undefined
      ? ['Let the tap run out below, or turn it back: both are fine.']
      : []),
  ];
}

export function assumed({ plan, material }: HandAnswer, unit: Unit): string[] {
  return [
    `Two hands with 50 N each, an easy pull, and half of what breaks the tap. For the weakest tap of its kind the arm is ${roughLength(plan.arm.careful, unit)}.`,
    `Strength from the usual core of such a tap in high-speed steel: ${torqueBand(plan.breaks.low, plan.breaks.high, unit)}.`,
    'Depths with the longest chamfer of each tap; the last one stops a quarter pitch above the floor.',
    ...(material ? [] : ['No material said: chips are taken to come long.']),
  ];
}

export function askedParts(answer: HandAnswer, unit: Unit): string[] {
  const { thread, fullThread, shoulder, style, material } = answer;
  return [
    thread.designation,
    `${length(fullThread, unit)} full thread`,
    shoulder === undefined ? 'through' : `shoulder at ${length(shoulder, unit)}`,
    styleName(style).toLowerCase(),
    material ? materialShort(material) : '',
  ];
}

/** Every number in the lesson on tapping by hand, from the core. */

import { readThread } from '../../../core';
import { findMaterial } from '../../../core/material/table';
import { handTapping, type HandJob, type HandPlan } from '../../../core/tap/hand';
import { WORN } from '../../../core/tap/styles';
import { BENCH } from '../../words/en/bench';
import {
  bothLengths,
  decimals,
  length,
  roughLength,
  threadRange,
  torque,
  turnRange,
  type Unit,
} from '../../words';
import { fill } from '../../words/template';
import type { Pick } from '../PickOne';

function threadOf(text: string) {
  const read = readThread(text);
  if (!read.ok) throw new Error(`Not a thread: ${text}`);
  return read.value;
}

function handPlan(job: HandJob): HandPlan {
  const plan = handTapping(job);
  if (!plan.ok) throw new Error(plan.problems.map(({ code }) => code).join());
  return plan.value;
}

/** A bracket in mild steel at the bench. */
const bracket: HandJob = {
  thread: threadOf('M6x1'),
  fullThread: 12,
  hole: { kind: 'blind', shoulder: 16.5 },
  set: 'same-diameter',
  style: 'straight-flute',
  material: findMaterial('steel-low'),
};

/** The same bracket from an inch drawing. */
const inchBracket: HandJob = {
  ...bracket,
  thread: threadOf('1/4-20'),
  fullThread: 12.7,
  hole: { kind: 'blind', shoulder: 19.05 },
};

export const sets = {
  same: handPlan(bracket),
  serial: handPlan({ ...bracket, set: 'serial' }),
};
const inch = handPlan(inchBracket);
const through = (text: string) =>
  handPlan({ ...bracket, thread: threadOf(text), hole: { kind: 'through' } });

export const picks: readonly Pick[] = ['M3x0.5', 'M6x1', 'M10x1.5', '1/4-20'].map((text) => {
  const { breaks, arm } = through(text);
  const said = (unit: Unit) =>
    fill(BENCH.told, { breaks: breaks.expected, arm: arm.expected }, unit);
  const { designation } = threadOf(text);
  return { value: designation, label: designation, said: { mm: said('mm'), in: said('in') } };
});

const m6 = through('M6x1');
const m3 = through('M3x0.5');
const rough = (mm: number) => `${roughLength(mm, 'mm')} (${roughLength(mm, 'in')})`;
const needed = (plan: HandPlan) => plan.taps.filter((tap) => tap.needed).length;
const { backOff, clearEvery, square, stop } = sets.same;

export const facts = {
  m6: {
    breaks: torque(m6.breaks.expected, 'in'),
    arm: rough(m6.arm.expected),
    armMm: m6.arm.expected,
    half: torque(m6.breaks.expected / 2, 'in'),
    whole: 2 * m6.arm.expected,
    once: m6.arm.expected / 2,
  },
  m3: { breaks: torque(m3.breaks.expected, 'in'), arm: rough(m3.arm.expected) },
  on: backOff ? turnRange(backOff.on) : '',
  back: backOff ? turnRange(backOff.back) : '',
  clear: clearEvery ? threadRange(clearEvery) : '',
  check: square.check.map((turns) => decimals(turns, 0)).join(' and '),
  fixed: decimals(square.fixed, 0),
  worn: decimals(WORN, 2),
  bracket: {
    full: bothLengths(12),
    shoulder: bothLengths(16.5),
    stop: bothLengths(stop ?? 0),
    taps: decimals(needed(sets.same), 0),
    taper: length(sets.same.taps[0]?.fullThread ?? 0, 'mm'),
    second: length(sets.same.taps[1]?.fullThread ?? 0, 'mm'),
  },
  inch: {
    full: bothLengths(12.7, 'in'),
    shoulder: bothLengths(19.05, 'in'),
    stop: bothLengths(inch.stop ?? 0, 'in'),
    arm: rough(inch.arm.expected),
    taps: decimals(needed(inch), 0),
  },
} as const;

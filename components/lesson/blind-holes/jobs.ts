/** Holes of the lesson on blind holes, from the work of an invented shop. Lengths in mm. */

import type { HoleRequest } from '../../../core/plan/types';
import { quarterRuleDepth } from '../../../core/hole/rules';
import { inchToMm } from '../../../core/units';

/** A pump housing in stainless on VMC-A. */
const housing: HoleRequest = {
  thread: 'M8x1.25-6H',
  fullThread: 16,
  hole: { kind: 'blind', limit: { at: 'shoulder', depth: 22 } },
  material: 'stainless-austenitic',
};

/** A gearbox foot in grey iron, drilled by the quarter rule. */
const foot: HoleRequest = {
  thread: 'M20x2.5-6H',
  fullThread: 20,
  hole: { kind: 'blind', limit: { at: 'shoulder', depth: quarterRuleDepth(20) } },
  material: 'iron-grey',
};

/** The same foot with nothing to stop the drill. */
const footFree: HoleRequest = { ...foot, hole: { kind: 'blind' } };

/** A valve cover whose floor is too near. */
const cover: HoleRequest = {
  thread: 'M10x1.5-6H',
  fullThread: 15,
  hole: { kind: 'blind', limit: { at: 'shoulder', depth: 16.5 } },
  material: 'al-wrought',
};

/** A flange from an inch drawing. */
const flange: HoleRequest = {
  thread: '7/16-14 UNC-2B',
  fullThread: inchToMm(0.6),
  hole: { kind: 'blind' },
  material: 'steel-alloy-30hrc',
};

/** A bracket for the reader to work out. */
const bracket: HoleRequest = {
  thread: 'M6x1-6H',
  fullThread: 12,
  hole: { kind: 'blind' },
  material: 'al-wrought',
};

export const JOBS = { housing, foot, footFree, cover, flange, bracket } as const;

/** Threads the quarter rule is tried on: thread and full thread, mm. */
export const RULE_CASES: readonly { thread: string; fullThread: number }[] = [
  { thread: 'M6x1-6H', fullThread: 12 },
  { thread: 'M16x2-6H', fullThread: 16 },
  { thread: 'M20x2.5-6H', fullThread: 20 },
  { thread: 'M20x2.5-6H', fullThread: 40 },
];

/** Threads to try in the live chart: small and large, coarse and fine, metric and inch. */
export const TRY_THREADS = ['M8x1.25-6H', 'M8x1-6H', 'M20x2.5-6H', '3/8-16 UNC-2B'] as const;

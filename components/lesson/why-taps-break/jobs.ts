/** Holes of the lesson on broken taps, from the work of an invented shop. Lengths in mm. */

import type { HoleRequest } from '../../../core/plan/types';
import { inchToMm } from '../../../core/units';

/** A valve cover whose floor is too near. */
const cover: HoleRequest = {
  thread: 'M10x1.5-6H',
  fullThread: 15,
  hole: { kind: 'blind', limit: { at: 'shoulder', depth: 16.5 } },
  material: 'al-wrought',
};

/** The flange on the smaller machine. */
const flange: HoleRequest = {
  thread: '9/16-12 UNC-2B',
  fullThread: inchToMm(0.85),
  hole: { kind: 'blind' },
  material: 'steel-alloy-30hrc',
  spindle: { drive: 'synchronous', torque: 30 },
};

export const JOBS = { cover, flange } as const;

/** Threads tried in one metal with one kind of tap, one and a half diameters deep. */
export const TRIED = [
  '#6-32 UNC-2B',
  'M3x0.5-6H',
  'M6x1-6H',
  'M10x1.5-6H',
  '1/4-28 UNF-2B',
] as const;

export function triedIn(thread: string): HoleRequest {
  return { thread, hole: { kind: 'blind' }, material: 'stainless-austenitic' };
}

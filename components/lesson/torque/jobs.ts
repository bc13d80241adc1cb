/** The holes that the lesson on torque speaks of: a valve's gland, a flange, a press frame, a terminal. mm. */

import type { HoleRequest } from '../../../core/plan/types';
import { inchToMm } from '../../../core/units';

/** Gland bore of an irrigation valve, tough and blind. */
export const GLAND: HoleRequest = {
  thread: 'M8x1.25-6H',
  fullThread: 16,
  hole: { kind: 'blind' },
  material: 'stainless-austenitic',
};

/** A pump's flange, thick work, through. */
export const FLANGE: HoleRequest = {
  thread: 'M12x1.75-6H',
  hole: { kind: 'through', thickness: 20 },
  material: 'steel-medium',
};

/** A thread too big for the smaller machine. N·m it gives at tapping speed. */
export const FRAME: HoleRequest = {
  thread: 'M30x3.5-6H',
  hole: { kind: 'through', thickness: 45 },
  material: 'steel-medium',
};
export const SMALL_SPINDLE = 30;

/** The gland of an inch drawing. */
export const GLAND_INCH: HoleRequest = {
  thread: '5/16-18 UNC-2B',
  fullThread: inchToMm(0.625),
  hole: { kind: 'blind' },
  material: 'stainless-austenitic',
};

/** The most dangerous of the common small threads, and one that is not. */
export const SMALL_THREADS = { worst: '#6-32 UNC-2B', ordinary: 'M10x1.5-6H' } as const;

/** Plate that the flange's tap is tried in, mm. */
export const THIN_PLATE = 4;

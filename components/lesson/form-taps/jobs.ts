/** Holes of the lesson on form taps, from the work of an invented shop. Lengths in mm. */

import type { HoleRequest } from '../../../core/plan/types';
import { inchToMm } from '../../../core/units';

/** A cover of a drip valve in wrought aluminium. */
const cover: HoleRequest = {
  thread: 'M6x1-6H',
  fullThread: 12,
  hole: { kind: 'blind' },
  material: 'al-wrought',
};

/** A bracket from an inch drawing, in mild steel. */
const bracket: HoleRequest = {
  thread: '1/4-20 UNC-2B',
  fullThread: inchToMm(0.5),
  hole: { kind: 'blind' },
  material: 'steel-low',
};

export const FORM_JOBS = { cover, bracket } as const;

/** Holes to try before the cover's form tap, mm. */
export const TRY_HOLES = [5.4, 5.45, 5.5, 5.55, 5.6, 5.65, 5.7] as const;

/** What a hole is off by in the lesson, mm. */
export const OFF = 0.05;

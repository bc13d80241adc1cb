/** Holes and materials of the lesson on chips, from the work of an invented shop. Lengths in mm. */

import type { MaterialId } from '../../../core/material/material';
import type { HoleRequest } from '../../../core/plan/types';
import { inchToMm } from '../../../core/units';

/** Materials to try: one of each kind of chip, and those with a temper of their own. */
export const TRY_MATERIALS = [
  'steel-low',
  'steel-alloy-30hrc',
  'iron-grey',
  'brass-free',
  'stainless-austenitic',
  'titanium',
] as const satisfies readonly MaterialId[];

/** A valve seat ring, the same hole in any metal. */
export const RING = { thread: 'M10x1.5-6H', fullThread: 20, thickness: 20 } as const;

/** A pump volute in grey iron, blind. */
const volute: HoleRequest = {
  thread: 'M10x1.5-6H',
  fullThread: 20,
  hole: { kind: 'blind' },
  material: 'iron-grey',
};

/** The same hole in the steel cover that goes on it. */
const cover: HoleRequest = { ...volute, material: 'steel-low' };

/** A stainless shaft sleeve, where a long chamfer rubs. */
const sleeve: HoleRequest = {
  thread: 'M6x1-6H',
  hole: { kind: 'through', thickness: 12 },
  material: 'stainless-austenitic',
};

/** An iron end cap from an inch drawing. */
const cap: HoleRequest = {
  thread: '3/8-16 UNC-2B',
  fullThread: inchToMm(0.75),
  hole: { kind: 'blind' },
  material: 'iron-grey',
};

export const CHIP_JOBS = { volute, cover, sleeve, cap } as const;

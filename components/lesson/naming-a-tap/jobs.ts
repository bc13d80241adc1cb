/** Holes of the lesson on naming a tap, from the work of an invented shop. Lengths in mm. */

import type { HoleRequest } from '../../../core/plan/types';

/** A pump housing in stainless, blind. */
const housing: HoleRequest = {
  thread: 'M8x1.25-6H',
  fullThread: 16,
  hole: { kind: 'blind', limit: { at: 'shoulder', depth: 22 } },
  material: 'stainless-austenitic',
};

/** A bracket in mild steel, right through and open below. */
const bracket: HoleRequest = {
  thread: 'M8x1.25-6H',
  hole: { kind: 'through', thickness: 14 },
  material: 'steel-low',
};

/** A valve body: through into a gallery that must stay clean. */
const gallery: HoleRequest = {
  thread: 'M8x1.25-6H',
  hole: { kind: 'through', thickness: 14, chipsMayFall: false },
  material: 'al-wrought',
};

export const NAMING_JOBS = { housing, bracket, gallery } as const;

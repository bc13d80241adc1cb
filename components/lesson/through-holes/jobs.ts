/** Holes of the lesson on through holes, from the work of an invented shop. Lengths in mm. */

import { inchToMm } from '../../../core/units';
import type { HoleRequest } from '../../../core/plan/types';

/** A bracket in mild steel, nothing below it. */
const bracket: HoleRequest = {
  thread: 'M8x1.25-6H',
  hole: { kind: 'through', thickness: 14 },
  material: 'steel-low',
};

/** The same bracket, bolted down on a fixture whose plate is too near. */
const fixture: HoleRequest = {
  ...bracket,
  hole: { kind: 'through', thickness: 14, clearBelow: 5 },
};

/** A valve body: the hole opens into a gallery that must stay clean. */
const gallery: HoleRequest = {
  thread: 'M8x1.25-6H',
  hole: { kind: 'through', thickness: 14, chipsMayFall: false },
  material: 'al-wrought',
};

/** A stainless guard plate, thin. */
const guard: HoleRequest = {
  thread: 'M6x1-6H',
  hole: { kind: 'through', thickness: 3 },
  material: 'stainless-austenitic',
};

/** A pump base from an inch drawing. */
const base: HoleRequest = {
  thread: '3/8-16 UNC-2B',
  hole: { kind: 'through', thickness: inchToMm(0.75) },
  material: 'steel-medium',
};

/** A link for the reader to work out. */
const link: HoleRequest = {
  thread: 'M12x1.75-6H',
  hole: { kind: 'through', thickness: 18 },
  material: 'steel-low',
};

export const THROUGH_JOBS = { bracket, fixture, gallery, guard, base, link } as const;

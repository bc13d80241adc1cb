/** The hole that the lesson on chamfer classes studies, and what it may be changed to. Lengths in mm. */

import type { MaterialId } from '../../../core/material/material';
import type { HoleRequest } from '../../../core/plan/types';

/** A bearing plate in medium-carbon steel: thick work, straight-flute tap. */
export const PLATE: HoleRequest = {
  thread: 'M10x1.5-6H',
  hole: { kind: 'through', thickness: 20 },
  material: 'steel-medium',
};

/** A stainless cover, where a long chamfer rubs. */
export const COVER: HoleRequest = {
  thread: 'M6x1-6H',
  hole: { kind: 'through', thickness: 12 },
  material: 'stainless-austenitic',
};

/** Materials to try in the live chart: soft, ordinary, tough. */
export const TRY_MATERIALS = [
  'al-wrought',
  'steel-medium',
  'stainless-austenitic',
] as const satisfies readonly MaterialId[];

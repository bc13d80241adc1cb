/** Threads of the lesson on the tap drill, from the work of an invented shop. */

import type { HoleRequest } from '../../../core/plan/types';
import type { MaterialId } from '../../../core/material/material';

/** A bearing plate in medium-carbon steel. Lengths mm. */
export const PLATE: HoleRequest = {
  thread: 'M10x1.5-6H',
  hole: { kind: 'through', thickness: 20 },
  material: 'steel-medium',
};

/** Threads that the drill is chosen for, each in its metal. */
export const DRILL_JOBS = {
  plate: { thread: 'M10x1.5-6H', material: 'steel-medium' },
  /** A pump flange in annealed alloy steel, from an inch drawing. */
  flange: { thread: '1/2-13 UNC-2B', material: 'steel-alloy' },
  /** Studs of a valve bonnet, close fit: the list prints a drill that the class does not allow. */
  bonnet: { thread: '3/4-10 UNC-3B', material: 'steel-medium' },
  /** A cover for the reader to work out. */
  cover: { thread: 'M12x1.75-6H', material: 'al-wrought' },
} as const satisfies Record<string, { thread: string; material: MaterialId }>;

export type DrillJob = (typeof DRILL_JOBS)[keyof typeof DRILL_JOBS];

/** Threads that “diameter less pitch” is tried on. */
export const BASE_THREADS = ['M4x0.7-6H', 'M10x1.5-6H', 'M10x1.25-6H', '3/8-24 UNF-2B'] as const;

/** Threads whose classes are set side by side. */
export const WINDOW_THREADS = [
  'M6x1-6H',
  'M10x1.5-6H',
  'M20x2.5-6H',
  '#6-32 UNC-2B',
  '1/2-13 UNC-2B',
  '1/2-13 UNC-3B',
] as const;

/** Threads to try in the live chart. */
export const TRY_THREADS = ['M10x1.5-6H', 'M10x1.25-6H', '1/2-13 UNC-2B', '1/2-13 UNC-3B'] as const;

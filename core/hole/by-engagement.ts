/** Closer hole sizes for short and long engagements: a long thread may have a larger hole than a short one. */

import type { ThreadLimits } from '../limits/limits';
import type { SourceId } from '../sources';
import { roundHalfUp, type Range } from '../units';

export interface EngagementHole {
  /** Length of engagement in diameters: over, and up to and including. */
  engagement: Range;
  /** Hole before tapping, in the unit of the limits. */
  hole: Range;
  source: SourceId;
}

/** Share of the tolerance added to the least and to the largest hole, by engagement in diameters. */
const STEPS: readonly { over: number; to: number; low: number; high: number }[] = [
  { over: 0, to: 1 / 3, low: 0, high: -0.5 },
  { over: 1 / 3, to: 2 / 3, low: 0.25, high: -0.25 },
  { over: 2 / 3, to: 1.5, low: 0.5, high: 0 },
  { over: 1.5, to: 3, low: 0.75, high: 0.25 },
];

/**
 * Hole sizes that the handbook recommends before tapping Unified threads, by length of engagement. Only the rows
 * to 1.5 diameters stay inside the class; the last goes past its largest hole and is from memory.
 * Inches, to 0.001 where the class is so rounded, else 0.0001; empty where the limits are not in inches or the
 * largest is not known. Sources: `handbook-holes`, `from-memory`.
 */
export function holesByEngagement(limits: ThreadLimits): EngagementHole[] {
  const { min, max } = limits.minor;
  if (limits.unit !== 'in' || max === undefined) return [];
  const tolerance = max - min;
  const coarse = [min, max].every((limit) => Math.abs(limit - roundHalfUp(limit, 0.001)) < 1e-9);
  const step = coarse ? 0.001 : 0.0001;
  return STEPS.map(({ over, to, low, high }) => ({
    engagement: { min: over, max: to },
    hole: {
      min: roundHalfUp(min + low * tolerance, step),
      max: roundHalfUp(max + high * tolerance, step),
    },
    source: to > 1.5 ? 'from-memory' : 'handbook-holes',
  }));
}

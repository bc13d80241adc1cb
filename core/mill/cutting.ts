/**
 * Speed, feed and passes a thread mill usually gets. Solid carbide; ranges from memory, to be replaced by
 * what the cutter's own sheet says.
 */

import type { Material } from '../material/material';
import type { Range } from '../units';

/** m/min by ISO 513 group. From memory. */
const SPEEDS: Record<Material['group'], Range> = {
  P: { min: 60, max: 110 },
  M: { min: 40, max: 80 },
  K: { min: 60, max: 100 },
  N: { min: 80, max: 120 },
  S: { min: 40, max: 50 },
  H: { min: 40, max: 50 },
  O: { min: 80, max: 120 },
};

/** Hardened and tempered steels run at the slow end of theirs. From memory. */
const TOUGH: Partial<Record<Material['id'], Range>> = {
  'steel-alloy-30hrc': { min: 50, max: 80 },
  'steel-40hrc': { min: 40, max: 60 },
};

/** Cutting speeds of a carbide thread mill, m/min. Source: `from-memory`. */
export function millSpeeds({ id, group }: Material): Range {
  return TOUGH[id] ?? SPEEDS[group];
}

/** Diameters between which the feed per tooth grows, mm, and what it is at their ends. From memory. */
const FEEDS = {
  small: { diameter: 3, min: 0.02, max: 0.04 },
  large: { diameter: 20, min: 0.05, max: 0.1 },
} as const;

/**
 * Feed per tooth of a carbide thread mill, mm, by its diameter (mm); half of it where the metal is hard or
 * hardens as it is cut. Source: `from-memory`.
 */
export function millFeeds(diameter: number, material: Material): Range {
  const { small, large } = FEEDS;
  const span = large.diameter - small.diameter;
  const at = Math.min(1, Math.max(0, (diameter - small.diameter) / span));
  const careful = material.group === 'H' || material.group === 'S' || material.workHardens;
  const share = careful ? 0.5 : 1;
  const between = (from: number, to: number) =>
    Math.max(small.min, (from + (to - from) * at) * share);
  return { min: between(small.min, large.min), max: between(small.max, large.max) };
}

/** Passes in depth that a metal usually gets: 1 to 3, one more with full rows. Source: `common-practice`. */
export function usualPasses(material: Material, fullRows: boolean): number {
  const { group, id } = material;
  const light = group === 'N' || group === 'O';
  const hard = group === 'M' || group === 'S' || group === 'H' || id === 'steel-40hrc';
  return (light ? 1 : hard ? 3 : 2) + (fullRows ? 1 : 0);
}

/**
 * Diameters after each pass, mm, so that every pass takes about the same area of the groove: exact for a sharp V,
 * a little more in the first pass where the groove has its flat. `hole` below `major`; `passes` 1 or more.
 * Source: `derived`.
 */
export function passDiameters(hole: number, major: number, passes: number): number[] {
  return Array.from(
    { length: passes },
    (_, index) => hole + (major - hole) * Math.sqrt((index + 1) / passes),
  );
}

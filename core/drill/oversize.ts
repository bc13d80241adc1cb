/**
 * How much larger than itself a drill usually cuts.
 * Handbook table for drilling steel and iron without a bushing, from memory; inches.
 */

import type { Material } from '../material/material';

/** [drill, mean oversize], inches. Linear between; to zero with size below; flat above. */
const MEAN_OVERSIZE: readonly (readonly [number, number])[] = [
  [0, 0],
  [1 / 16, 0.0015],
  [1 / 8, 0.003],
  [1 / 4, 0.004],
  [1 / 2, 0.005],
  [3 / 4, 0.005],
  [1, 0.007],
];

/** [drill, largest oversize], inches, from the same table, from memory. */
const MOST_OVERSIZE: readonly (readonly [number, number])[] = [
  [0, 0],
  [1 / 16, 0.002],
  [1 / 8, 0.0045],
  [1 / 4, 0.0065],
  [1 / 2, 0.008],
  [3 / 4, 0.008],
  [1, 0.009],
];

type Table = readonly (readonly [number, number])[];

/** Linear between the rows, flat above; mm. */
function between(table: Table, diameter: number): number {
  const inches = diameter / 25.4;
  for (let index = 1; index < table.length; index += 1) {
    const [x1, y1] = table[index]!;
    if (inches <= x1) {
      const [x0, y0] = table[index - 1]!;
      return 25.4 * (y0 + ((y1 - y0) * (inches - x0)) / (x1 - x0));
    }
  }
  return 25.4 * table[table.length - 1]![1];
}

/**
 * The most a drilled hole usually comes out over size, mm, in steel or iron: what is likely and its scatter.
 * `diameter` mm, above 0. Source: `drill-oversize`.
 */
export function mostOversize(diameter: number): number {
  return between(MOST_OVERSIZE, diameter);
}

/**
 * Likely oversize of a drilled hole, mm, in steel or iron. `diameter` mm, above 0.
 * Source: `drill-oversize`.
 */
export function likelyOversize(diameter: number): number {
  return between(MEAN_OVERSIZE, diameter);
}

/**
 * Share of the steel oversize that stays in a material: plastics close in after the drill, titanium
 * about half; others are taken as steel. Common practice.
 */
export function oversizeShare(material: Pick<Material, 'springsBack' | 'group'>): number {
  if (!material.springsBack) return 1;
  return material.group === 'O' ? 0 : 0.5;
}

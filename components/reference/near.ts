/** Which of a list of judged drills to show. Pure. */

import type { ReferenceDrill } from '../../core/plan/reference-drills';

/** How many that do not serve are shown beyond those that do. */
const NEIGHBOURS = 2;

function serves(drill: ReferenceDrill): boolean {
  return drill.classes.some(({ verdict }) => verdict !== 'outside');
}

/** The drills that serve in any class compared, two neighbours to either side, and every trap and listed drill. */
export function nearest(drills: readonly ReferenceDrill[]): readonly ReferenceDrill[] {
  const serving = drills.map(serves);
  const first = serving.indexOf(true);
  if (first < 0) return drills;
  const last = serving.lastIndexOf(true);
  return drills.filter(
    (drill, index) =>
      (index >= first - NEIGHBOURS && index <= last + NEIGHBOURS) || drill.trap || drill.listed,
  );
}

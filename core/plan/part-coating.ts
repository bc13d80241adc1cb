/** A coating that comes after tapping: whether the ordinary tap of the class still leaves room for it. */

import type { TapLimitChoice } from '../tap/limits-judge';
import type { Job } from './job';
import { platingStudy } from './plating-study';

/** How the numbers of a warning name a tap limit of each system. */
const KEYS = { ISO: 'Iso', H: 'H', D: 'D', L: 'L' } as const;

const named = (word: string, { system, number }: TapLimitChoice) => ({
  [`${word}${KEYS[system]}`]: number,
});

/** The limit that shops order without a thought: the ISO class where there is one, else the list's. */
function ordinary(listed: readonly TapLimitChoice[]): TapLimitChoice | undefined {
  return listed.find(({ system }) => system === 'ISO') ?? listed[0];
}

/**
 * The layer's growth and what it closes the pitch diameter by (four times, mm), and whether the ordinary tap fails:
 * `failsIso: 2` with `takesIso: 3` beside it, or `holdsIso: 2`. Nothing where no layer is given.
 * Sources: as `platingStudy`.
 */
export function coatingNumbers({ request, thread }: Job): Record<string, number> {
  const { coating } = request;
  if (!coating || coating.thickness[1] <= 0) return { unsized: 1 };
  const [min, max] = coating.thickness;
  const layer = { min, max, pitchMin: 4 * min, pitchMax: 4 * max };
  const study = platingStudy(thread, [min, max]);
  if (!study.ok) {
    return study.problems[0]?.code === 'plating-no-room' ? { ...layer, noRoom: 1 } : layer;
  }
  const usual = ordinary(study.value.listed);
  if (!usual) return layer;
  if (usual.verdict !== 'outside') return { ...layer, ...named('holds', usual) };
  const better = study.value.best.find(({ system }) => system === usual.system);
  return { ...layer, ...named('fails', usual), ...(better ? named('takes', better) : {}) };
}

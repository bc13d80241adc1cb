/** Which works stand behind a thread's page. Pure. */

import type { ThreadReference } from '../../core/plan/reference';
import type { SourceId } from '../../core/sources';
import { sourceMark } from '../words';
import type { Series } from './series';

/** Works named on a page, the thread's own standards first; of those with one mark, the first. */
export function sourcesOf(reference: ThreadReference, series: Series): SourceId[] {
  const { taps, gauges, engagement, form, pipe, room } = reference;
  const ids: SourceId[] = [
    ...new Set<SourceId>([
      ...series.sources,
      ...(reference.drills.length > 0 ? (['handbook-drills', 'stocked-drills'] as const) : []),
      ...(form ? (['from-memory'] as const) : []),
      ...room.rows.map(() => 'iso-8830' as const),
      ...(room.runOut === null ? [] : (['din-76-1'] as const)),
      ...taps.flatMap(({ listed }) => (listed ? [listed] : [])),
      ...(gauges?.turns ?? []).map(({ source }) => source),
      ...(engagement.length > 0
        ? (['fed-std-h28', 'screw-grades', 'shear-strength'] as const)
        : []),
      ...(pipe?.drills ?? []).map(({ source }) => source),
    ]),
  ];
  const marks = ids.map(sourceMark);
  return ids.filter((_, index) => marks.indexOf(marks[index] ?? '') === index);
}

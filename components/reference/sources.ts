/** Which works stand behind a thread's page. Pure. */

import { inchSystem } from '../../core/thread/inch-system';
import type { ThreadReference } from '../../core/plan/reference';
import { drillSource } from '../../core/drill/usual-source';
import type { SourceId } from '../../core/sources';
import { sourceMark } from '../words';
import type { Series } from './series';

/** Where the lengths of the chamfers come from: taper pipe taps stand in no list of classes. */
function chamferSource({ thread, pipe }: ThreadReference): SourceId {
  if (pipe?.taper) return 'common-practice';
  return inchSystem(thread) ? 'asme-b94-9' : 'iso-8830';
}

/** Works named on a page, the thread's own standards first; of those with one mark, the first. */
export function sourcesOf(reference: ThreadReference, series: Series): SourceId[] {
  const { taps, gauges, engagement, form, pipe, room } = reference;
  const ids: SourceId[] = [
    ...new Set<SourceId>([
      ...series.standards,
      ...(reference.drills.length > 0
        ? [drillSource(reference.thread) ?? [], 'stocked-drills' as const].flat()
        : []),
      ...reference.holes.map(({ source }) => source),
      ...(form ? (['from-memory'] as const) : []),
      chamferSource(reference),
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

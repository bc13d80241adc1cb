/** The short mark of a source, printed beside what rests on it. */

import { SOURCES, type Source, type SourceId, type SourceKind } from '../../core/sources';
import { SOURCE_KINDS } from './en/sources';

/** Kinds that are better named by what they are than by a title. */
const BY_KIND: readonly SourceKind[] = [
  'makers-table',
  'common-practice',
  'memory',
  'estimate',
  'derived',
];

/** `ISO 965-1`, `common practice`, `from memory`, `derived here`, … */
export function sourceMark(id: SourceId): string {
  const source: Source = SOURCES[id];
  if (BY_KIND.includes(source.kind)) return SOURCE_KINDS[source.kind].mark;
  return source.title.split(/[,:]/)[0] ?? source.title;
}

/** Heading, mark and meaning of a kind of source. */
export function sourceKind(kind: SourceKind): { heading: string; mark: string; meaning: string } {
  return SOURCE_KINDS[kind];
}

/** The threads that have a page, and the tables they are listed in. */

import { pipeNotes } from '../../core/gauge/pipe';
import { threadLimits } from '../../core/limits/thread-limits';
import type { SourceId } from '../../core/sources';
import { standardThreads } from '../../core/thread/standard';
import { standardPipeThreads } from '../../core/thread/standard-pipe';
import type { Thread } from '../../core/thread/thread';
import { SERIES_TEXT } from '../words/en/series';
import { threadSlug } from '../words/thread-address';

export const SERIES_SLUGS = [
  'metric-coarse',
  'metric-fine',
  'unc',
  'unf',
  'unef',
  'un',
  'g',
  'rp-rc',
  'npt',
] as const;

export type SeriesSlug = (typeof SERIES_SLUGS)[number];

export interface Series {
  slug: SeriesSlug;
  title: string;
  description: string;
  threads: readonly Thread[];
  sources: readonly SourceId[];
}

const BELONGS: Record<SeriesSlug, (thread: Thread) => boolean> = {
  'metric-coarse': ({ series }) => series === 'coarse',
  'metric-fine': ({ series }) => series === 'fine',
  unc: ({ series }) => series === 'UNC',
  unf: ({ series }) => series === 'UNF',
  unef: ({ series }) => series === 'UNEF',
  un: ({ series }) => series.endsWith('-UN'),
  g: ({ form }) => form === 'G',
  'rp-rc': ({ form }) => form === 'Rp' || form === 'Rc',
  npt: ({ form }) => form === 'NPT',
};

const METRIC_SOURCES: readonly SourceId[] = ['iso-261', 'iso-965-1', 'iso-724', 'iso-2306'];
const UNIFIED_SOURCES: readonly SourceId[] = ['asme-b1-1', 'handbook-drills'];

const SOURCES_OF: Record<SeriesSlug, readonly SourceId[]> = {
  'metric-coarse': METRIC_SOURCES,
  'metric-fine': METRIC_SOURCES,
  unc: UNIFIED_SOURCES,
  unf: UNIFIED_SOURCES,
  unef: UNIFIED_SOURCES,
  un: UNIFIED_SOURCES,
  g: ['iso-228-1'],
  'rp-rc': ['iso-7-1'],
  npt: ['asme-b1-20-1'],
};

/** A page needs limits or at least a gauge length: a size of which nothing is held has none. */
function hasSomething(thread: Thread): boolean {
  return threadLimits(thread).ok || pipeNotes(thread)?.gauge !== null;
}

/** Every thread with a page, by table. Worked out once for a build. */
export function allSeries(): readonly Series[] {
  const threads = [...standardThreads(), ...standardPipeThreads().filter(hasSomething)];
  return SERIES_SLUGS.map((slug) => ({
    slug,
    ...SERIES_TEXT[slug],
    threads: threads.filter(BELONGS[slug]),
    sources: SOURCES_OF[slug],
  }));
}

/** True where the thread has a page of its own. */
export function hasPage(thread: Thread): boolean {
  if (thread.insert || !thread.standard || thread.form === 'MJ' || thread.form === 'UNJ')
    return false;
  const slug = threadSlug(thread);
  return allSeries().some(({ threads }) => threads.some((each) => threadSlug(each) === slug));
}

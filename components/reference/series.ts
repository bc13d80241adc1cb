/** The threads that have a page, and the tables they are listed in. */

import { pipeNotes } from '../../core/gauge/pipe';
import { threadLimits } from '../../core/limits/thread-limits';
import { drillSource } from '../../core/drill/usual-source';
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
  standards: readonly SourceId[];
  /** Of the whole table: its standards, and what its tap drills rest on. */
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

const METRIC: readonly SourceId[] = ['iso-261', 'iso-965-1', 'iso-724'];

/** Standards of the threads; what their drills rest on is asked of the drills. */
const STANDARDS: Record<SeriesSlug, readonly SourceId[]> = {
  'metric-coarse': METRIC,
  'metric-fine': METRIC,
  unc: ['asme-b1-1'],
  unf: ['asme-b1-1'],
  unef: ['asme-b1-1'],
  un: ['asme-b1-1'],
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
    standards: STANDARDS[slug],
    sources: [
      ...STANDARDS[slug],
      ...new Set(threads.filter(BELONGS[slug]).flatMap((each) => drillSource(each) ?? [])),
    ],
  }));
}

/** True where the thread has a page of its own. */
export function hasPage(thread: Thread): boolean {
  if (thread.insert || !thread.standard || thread.form === 'MJ' || thread.form === 'UNJ')
    return false;
  const slug = threadSlug(thread);
  return allSeries().some(({ threads }) => threads.some((each) => threadSlug(each) === slug));
}

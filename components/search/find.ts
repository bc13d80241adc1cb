/** What was typed against the index. A thread in it leads, and opens the calculators that the other words ask for. Pure. */

import type MiniSearch from 'minisearch';
import type { SearchOptions } from 'minisearch';
import { hasDigit, words, type Entry, type EntryKind, type Kept } from './entry';

export interface Match extends Kept {
  /** The thread that the link carries with it. */
  thread?: string;
}

/** More than anybody reads. */
const MOST = 24;
const MOST_THREADS = 8;
const PLANNER = '/plan/';
/** Nobody types more; a megabyte pasted by accident is not worth the wait. */
export const LONGEST = 200;

/** Threads are many and alike: where no thread was typed, what explains comes first. */
const WEIGHT: Record<EntryKind, number> = {
  page: 1.2,
  calculator: 1.5,
  lesson: 1.3,
  section: 0.8,
  thread: 0.3,
  table: 0.6,
  symptom: 1.2,
  rule: 0.9,
  word: 1.4,
};

type Index = MiniSearch<Entry>;

function ask(index: Index, query: string, options: SearchOptions): Match[] {
  return index.search(query, options).map((found) => shown(String(found.id), found));
}

function shown(id: string, kept: Record<string, unknown>): Match {
  return {
    id,
    kind: kept['kind'] as EntryKind,
    title: String(kept['title']),
    note: String(kept['note']),
    takesThread: kept['takesThread'] === true,
  };
}

function asked(index: Index, query: string): Match[] {
  const boostDocument = (_: unknown, __: string, kept?: Record<string, unknown>): number =>
    WEIGHT[kept?.['kind'] as EntryKind] ?? 1;
  const all = ask(index, query, { combineWith: 'AND', boostDocument });
  if (all.length > 2) return all;
  return unique([...all, ...ask(index, query, { combineWith: 'OR', boostDocument })]);
}

function unique(matches: readonly Match[]): Match[] {
  return [...new Map(matches.map((match) => [match.id, match])).values()];
}

function threadsIn(index: Index, typed: readonly string[]): Match[] {
  const sizes = typed.filter(hasDigit);
  if (sizes.length === 0) return [];
  const options: SearchOptions = {
    combineWith: 'AND',
    filter: (found) => found['kind'] === 'thread',
  };
  // "1/4 unc" is one thread; "m8 drill" is a thread and a wish.
  const whole = ask(index, typed.join(' '), { ...options, fields: ['title', 'also'] });
  if (whole.length > 0) return whole;
  const exact = ask(index, sizes.join(' '), { ...options, fields: ['title', 'also'] });
  if (exact.length > 0) return exact;
  // 10/32 for 10-32, 1-4 for 1/4.
  const turned = sizes.map((word) => word.replace('/', '-')).join(' ');
  return ask(index, turned, { ...options, fields: ['title', 'also'] });
}

/** A thread by itself is most often wanted for a hole. */
function planner(index: Index): Match[] {
  const kept = index.getStoredFields(PLANNER);
  return kept ? [shown(PLANNER, kept)] : [];
}

/** Best first; nothing for an empty or overlong query. */
export function find(index: Index, query: string): Match[] {
  if (query.length > LONGEST) return [];
  const typed = words(query);
  if (typed.length === 0) return [];
  const threads = threadsIn(index, typed);
  const [first] = threads;
  if (!first) return asked(index, query).slice(0, MOST);
  const wishes = typed.filter((word) => !hasDigit(word)).join(' ');
  const wished = (wishes === '' ? planner(index) : asked(index, wishes)).filter(
    ({ kind }) => kind !== 'thread',
  );
  const carried = wished
    .filter(({ takesThread }) => takesThread)
    .slice(0, 3)
    .map((match) => ({ ...match, thread: first.title }));
  const [lead, ...others] = threads.slice(0, MOST_THREADS);
  return unique([...(lead ? [lead] : []), ...carried, ...others]).concat(
    wished.filter(({ id }) => !carried.some((each) => each.id === id)).slice(0, MOST_THREADS),
  );
}

/** Where a match leads, its thread filled in. */
export function hrefOf({ id, thread }: Match): string {
  return thread === undefined ? id : `${id}?thread=${encodeURIComponent(thread)}`;
}

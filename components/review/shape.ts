/** What is kept of the review, the same in the browser's store and in a file. */

import * as v from 'valibot';
import type { Standing } from '../../core/review/schedule';
import type { Shelf, ShelfRead } from '../state/shelf';
import { isObject, openVersioned } from '../state/versioned';

export const FORMAT = 'tapped-hole-handbook review';
export const VERSION = 1;
export const KEY = 'tapped-hole-handbook-review';

const DAYS = v.pipe(v.number(), v.minValue(0), v.maxValue(1e6));
const STANDING = v.object({ interval: DAYS, seen: DAYS, due: DAYS });
const NAME = v.pipe(v.string(), v.maxLength(200));

export interface Progress {
  /** Slugs of the lessons whose questions are asked. */
  lessons: string[];
  /** Standing of each question asked so far, by `lesson/id`. Days since 1 January 1970. */
  standings: Record<string, Standing>;
  /** Pieces that could not be read, as they stood. */
  unread: unknown[];
}

export const EMPTY: Progress = { lessons: [], standings: {}, unread: [] };

/** Standings that can be read, and the others as they stood. */
function standingsIn(data: unknown): Pick<Progress, 'standings' | 'unread'> {
  if (data === undefined) return { standings: {}, unread: [] };
  if (!isObject(data)) return { standings: {}, unread: [data] };
  const standings: [string, Standing][] = [];
  const unread: unknown[] = [];
  for (const [name, value] of Object.entries(data)) {
    const read = v.safeParse(STANDING, value);
    if (read.success && v.is(NAME, name)) standings.push([name, read.output]);
    else unread.push({ [name]: value });
  }
  return { standings: Object.fromEntries(standings), unread };
}

/** Reads a store's or a file's text. Never throws. */
export function readProgress(text: string): ShelfRead<Progress> {
  const opened = openVersioned(text, VERSION, FORMAT);
  if (opened.state !== 'read') return opened;
  const { data } = opened;
  const listed = data['lessons'] ?? [];
  const lessons = Array.isArray(listed) ? listed.filter((each) => v.is(NAME, each)) : [];
  const oddLessons = Array.isArray(listed) ? listed.filter((each) => !v.is(NAME, each)) : [listed];
  const { standings, unread } = standingsIn(data['standings']);
  const before = Array.isArray(data['unread']) ? data['unread'] : [];
  return {
    state: 'read',
    contents: { lessons, standings, unread: [...before, ...oddLessons, ...unread] },
  };
}

/** The text of a store or file. */
export function writeProgress({ lessons, standings, unread }: Progress, spaces = 0): string {
  const data = {
    format: FORMAT,
    version: VERSION,
    lessons,
    standings,
    ...(unread.length > 0 && { unread }),
  };
  return JSON.stringify(data, null, spaces);
}

export const SHELF: Shelf<Progress> = {
  key: KEY,
  empty: EMPTY,
  read: readProgress,
  write: writeProgress,
};

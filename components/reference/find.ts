/** What a person typed against the threads that have a page. Pure. */

import type { Note, Problem } from '../../core/outcome';
import { readThread } from '../../core/thread/read';
import type { Thread } from '../../core/thread/thread';
import { threadName } from '../words/thread-address';

export interface PageLink {
  name: string;
  href: string;
}

export interface Found {
  /** The page of the very thread typed. */
  page: PageLink | null;
  /** Pages whose name begins as typed, that one left out. */
  near: PageLink[];
  /** Read as a thread without a page: not in the standard lists. */
  special: Thread | null;
  /** The hole of a wire insert or a J thread: its size's page, where it stands. */
  relative: PageLink | null;
  notes: readonly Note[];
  problems: readonly Problem[];
}

const MOST = 12;

const plain = (text: string) => text.toLowerCase().replaceAll(/[#\s]/g, '').replaceAll('×', 'x');

const NOTHING: Found = {
  page: null,
  near: [],
  special: null,
  relative: null,
  notes: [],
  problems: [],
};

function named(thread: Thread, pages: readonly PageLink[]): PageLink | null {
  // By name: where its page lies is for the link to know, which in a folder is another place.
  const name = threadName(thread);
  return pages.find((page) => page.name === name) ?? null;
}

/** The plain thread that an insert or J thread is found beside. */
function plainKin(thread: Thread): Thread | null {
  const name = threadName(thread);
  const bare = name
    .replace(/^(EG|STI)\s/, '')
    .replace(/^MJ/, 'M')
    .replace('UNJ', 'UN');
  if (bare === name) return null;
  const reading = readThread(bare);
  return reading.ok ? reading.value : null;
}

/** Reads what was typed and finds its page, or pages that begin that way. */
export function findThread(typed: string, pages: readonly PageLink[]): Found {
  const text = plain(typed);
  if (text === '') return NOTHING;
  const begins = pages.filter(({ name }) => plain(name).startsWith(text)).slice(0, MOST);
  const reading = readThread(typed);
  if (!reading.ok) {
    return { ...NOTHING, near: begins, problems: begins.length > 0 ? [] : reading.problems };
  }
  const page = named(reading.value, pages);
  const kin = page ? null : plainKin(reading.value);
  const relative = kin && named(kin, pages);
  return {
    page,
    near: begins.filter(({ href }) => href !== page?.href),
    special: page || relative ? null : reading.value,
    relative,
    notes: reading.notes,
    problems: [],
  };
}

/** What reads a typed thread and speaks of it: loads when the finder is first touched. */

import type { Note, Problem } from '../../core/outcome';
import type { Thread } from '../../core/thread/thread';
import { NOTES } from '../words/en/notes';
import { PROBLEMS } from '../words/en/problems';
import { fill } from '../words/template';
import { readingText } from '../words/thread';
import { findThread, type Found, type PageLink } from './find';

export interface FinderEngine {
  find: (typed: string, pages: readonly PageLink[]) => Found;
  notes: (notes: readonly Note[]) => string;
  problem: (problem: Problem) => string;
  reading: (thread: Thread) => string;
}

function said(table: Readonly<Record<string, string>>, code: string, values: object): string {
  return fill(table[code] ?? '', values as Record<string, string | number>, 'mm');
}

export const engine: FinderEngine = {
  find: findThread,
  notes: (notes) =>
    notes.map(({ code, data, numbers }) => said(NOTES, code, { ...data, ...numbers })).join(' '),
  problem: ({ code, data }) => said(PROBLEMS, code, data ?? {}),
  reading: readingText,
};

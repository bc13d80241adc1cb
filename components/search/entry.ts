/** What the search knows of one thing it can find, and how words are taken apart. Used alike by the build, which makes the index, and by the page, which asks it. */

import type { Options } from 'minisearch';
import { COMMON_WORDS } from '../words/en/commonWords';

export const ENTRY_KINDS = [
  'page',
  'calculator',
  'lesson',
  'section',
  'thread',
  'table',
  'symptom',
  'rule',
  'word',
] as const;

export type EntryKind = (typeof ENTRY_KINDS)[number];

export interface Entry {
  /** Address, which is also its name in the index. */
  id: string;
  kind: EntryKind;
  title: string;
  /** One line shown under the title. */
  note: string;
  /** What else it is called. */
  also: string;
  /** Everything else that may be searched for; not kept for showing. */
  text: string;
  /** True for a calculator that can be opened with a thread typed in. */
  takesThread: boolean;
}

/** What is kept of an entry for showing it. */
export type Kept = Pick<Entry, 'id' | 'kind' | 'title' | 'note' | 'takesThread'>;

/** Words too common to tell one page from another. */
const COMMON = new Set(COMMON_WORDS.split(' '));

/** Spellings of the other side of the ocean, and forms too far apart for the spelling to be forgiven. */
const SPELLINGS: ReadonlyMap<string, string> = new Map([
  ['center', 'centre'],
  ['centers', 'centre'],
  ['gage', 'gauge'],
  ['gages', 'gauge'],
  ['gauges', 'gauge'],
  ['gauging', 'gauge'],
  ['aluminum', 'aluminium'],
]);

/** Threads and decimals as one word, however they were spaced: `M 8 × 1,25` is `m8x1.25`. */
function tidy(text: string): string {
  return text
    .normalize('NFKC')
    .toLowerCase()
    .replace(/(\d)\s*[×x*]\s*(?=\d)/g, '$1x')
    .replace(/(\d),(?=\d)/g, '$1.')
    .replace(/\b(m|mj|g|rp|rc) +(?=\d)/g, '$1')
    .replace(/#\s*(?=\d)/g, '')
    .replace(/\bbspp?\s*(?=\d)/g, 'g')
    .replace(/\bbspt\s*(?=\d)/g, 'rc')
    .replace(/(?<![\w/.-])(\d[\d/-]*)\s*bspp?\b/g, 'g$1');
}

/** Words of a text. One with a digit keeps its dashes, dots and slashes: `10-32`, `1/4-20`, `2.5`. */
export function words(text: string): string[] {
  return tidy(text)
    .split(/[\s"“”„‘’'()[\]{}<>,;:!?=+|]+/u)
    .flatMap((part) => (/\d/.test(part) ? [part] : part.split(/[^\p{L}\p{N}]+/u)))
    .map((word) => word.replace(/^[./-]+|[./-]+$/g, ''))
    .filter((word) => word !== '');
}

/** For the index a thread is found by its parts too: `m8x1.25` by `m8` and `1.25`. */
export function indexWords(text: string): string[] {
  return words(text).flatMap((word) => {
    if (!/\d/.test(word)) return [word];
    const parts = word.split(/x|-(?=\d+$)/).filter((part) => part !== '' && part !== word);
    return [word, ...parts];
  });
}

export function hasDigit(word: string): boolean {
  return /\d/.test(word);
}

/** One word as the index holds it; null when it is too common to hold. */
function held(word: string): string | null {
  if (COMMON.has(word)) return null;
  return SPELLINGS.get(word) ?? word;
}

export const INDEX_OPTIONS: Options<Entry> = {
  fields: ['title', 'also', 'text'],
  storeFields: ['kind', 'title', 'note', 'takesThread'],
  tokenize: indexWords,
  processTerm: held,
  searchOptions: {
    tokenize: words,
    boost: { title: 4, also: 3 },
    // A thread is typed right or it is another thread; a word may be a letter off.
    fuzzy: (word) => (hasDigit(word) || word.length < 4 ? false : word.length < 6 ? 1 : 2),
    prefix: (word) => word.length > 1,
    weights: { fuzzy: 0.3, prefix: 0.5 },
  },
};

/** Words of the search. English. */

import type { EntryKind } from '../../search/entry';

export const SEARCH = {
  title: 'Search',
  description:
    'Find a thread, a calculator, a lesson, a word of the trade or a fault you can see, by typing a few letters of it.',
  label: 'What are you looking for?',
  hint: 'A thread, a word, a fault: M8 drill, bottoming, 10-32. Spelling need not be exact.',
  keys: 'Arrow keys move through the matches, Enter opens one.',
  submit: 'Search',
  matches: 'Matches',
  found: '{count:whole} found',
  foundOne: '1 found',
  none: 'Nothing here matches “{typed}”. Try one word less, or the thread by itself, as the drawing has it.',
  failed:
    'The search could not be loaded. Check the network and type again, or choose from the list below.',
  tooLong: 'That is too long to search for. A few words are enough.',
  all: 'Everything there is',
  threads: 'All threads, by series',
  withThread: '{title}: {thread}',
} as const;

/** Heads the list of pages in the header. */
export const ALL_PAGES = 'Pages';

/** What the index is made with. */
export const INDEXED = {
  /** A thread's page always answers these, whatever its thread. */
  ofEveryThread: 'tap drill limits class gauge hole tap engagement chamfer',
  /** As the reading of a coarse thread says it, and as somebody types it. */
  coarse: 'coarse',
} as const;

export const KIND_NAMES: Record<EntryKind, string> = {
  page: 'Page',
  calculator: 'Calculator',
  lesson: 'Lesson',
  section: 'In a lesson',
  thread: 'Thread',
  table: 'Table',
  symptom: 'Fault',
  rule: 'Rule of thumb',
  word: 'Glossary',
};

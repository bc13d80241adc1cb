/** The index and what asks it: loads when the search is first used. */

import MiniSearch from 'minisearch';
import { INDEX_OPTIONS, type Entry } from './entry';
import { find, type Match } from './find';

/** Where the build puts the index. */
export const INDEX_ADDRESS = '/search/index.json';
/** A page that cannot ask for files, because it was opened from a folder, carries the index inside. */
export const INDEX_BLOCK = 'search-index';

export interface SearchEngine {
  find: (query: string) => Match[];
}

async function indexText(): Promise<string> {
  const block = document.getElementById(INDEX_BLOCK)?.textContent;
  if (block) return block;
  const response = await fetch(INDEX_ADDRESS);
  if (!response.ok) throw new Error(`${INDEX_ADDRESS}: ${response.status}`);
  return response.text();
}

export async function loadEngine(): Promise<SearchEngine> {
  const index = MiniSearch.loadJSON<Entry>(await indexText(), INDEX_OPTIONS);
  return { find: (query) => find(index, query) };
}

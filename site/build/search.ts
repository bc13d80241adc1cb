/** Makes the search index of a finished build and puts it beside the search page. */

import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import MiniSearch from 'minisearch';
import { INDEX_OPTIONS, type Entry } from '../../components/search/entry.ts';
import { entriesOf } from './entries.ts';
import { builtPages, readPage } from './pages.ts';

export const INDEX_FILE = 'search/index.json';

export function writeSearchIndex(folder: string): number {
  const index = new MiniSearch<Entry>(INDEX_OPTIONS);
  const entries = builtPages(folder).flatMap((page) =>
    entriesOf(page.address, readPage(folder, page)),
  );
  index.addAll(entries);
  writeFileSync(join(folder, INDEX_FILE), JSON.stringify(index));
  return entries.length;
}

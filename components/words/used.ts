/** Where a source is used, found by reading the core itself: no list to forget. */

import { SOURCES, type Source, type SourceId, type SourceKind } from '../../core/sources';
import { MODULES } from './en/modules';
import { sourceMark } from './sources';

/** Source text of core files by path, `…/core/<module>/<file>.ts`. */
export type CoreFiles = Record<string, string>;

function moduleOf(path: string): string | undefined {
  return /core\/([\w-]+)\//.exec(path)?.[1];
}

/** The part of the core a folder stands for, in words; the folder's own name when it has none yet. */
export function moduleName(folder: string): string {
  return MODULES[folder] ?? folder;
}

/** Kinds that code may name by title in a comment, where a table's head says where it is from. */
const NAMED: readonly SourceKind[] = ['standard', 'handbook'];

/** How code may speak of a source: by its id in quotes or backticks, a standard also by its name. */
function patternsOf(id: SourceId): RegExp[] {
  const byId = new RegExp(`['\`]${id}['\`]`);
  const source: Source = SOURCES[id];
  if (!NAMED.includes(source.kind)) return [byId];
  const names = sourceMark(id).split(' / ');
  return [
    byId,
    ...names.map((name) => new RegExp(`${name.replace(/[.()]/g, '\\$&')}(?![\\w.-]*\\d)`)),
  ];
}

/** For each source the parts of the core that name it, in words, sorted. */
export function whereUsed(files: CoreFiles): Record<SourceId, string[]> {
  const modules = Object.entries(files).flatMap(([path, text]) => {
    const folder = moduleOf(path);
    return folder ? [{ name: moduleName(folder), text: text.replace(/\n \* /g, ' ') }] : [];
  });
  const ids = Object.keys(SOURCES) as SourceId[];
  const partsOf = (id: SourceId) => {
    const patterns = patternsOf(id);
    const found = modules.filter(({ text }) => patterns.some((pattern) => pattern.test(text)));
    return [...new Set(found.map(({ name }) => name))].sort();
  };
  return Object.fromEntries(ids.map((id) => [id, partsOf(id)])) as Record<SourceId, string[]>;
}

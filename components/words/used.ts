/** Where a source is used, found by reading the core itself: no list to forget. */

import { SOURCES, type SourceId } from '../../core/sources';
import { MODULES } from './en/modules';

/** Source text of core files by path, `…/core/<module>/<file>.ts`. */
export type CoreFiles = Record<string, string>;

function moduleOf(path: string): string | undefined {
  return /core\/([\w-]+)\//.exec(path)?.[1];
}

/** The part of the core a folder stands for, in words; the folder's own name when it has none yet. */
export function moduleName(folder: string): string {
  return MODULES[folder] ?? folder;
}

/** For each source the parts of the core that name it, in words, sorted. */
export function whereUsed(files: CoreFiles): Record<SourceId, string[]> {
  const ids = Object.keys(SOURCES) as SourceId[];
  const found = Object.fromEntries(ids.map((id) => [id, new Set<string>()]));
  for (const [path, text] of Object.entries(files)) {
    const folder = moduleOf(path);
    if (!folder) continue;
    for (const [, id] of text.matchAll(/['`]([a-z][a-z0-9-]+)['`]/g)) {
      if (id !== undefined && id in found) found[id]?.add(moduleName(folder));
    }
  }
  return Object.fromEntries(ids.map((id) => [id, [...(found[id] ?? [])].sort()])) as Record<
    SourceId,
    string[]
  >;
}

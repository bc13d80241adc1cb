/**
 * Which packages stand in the scripts that a reader gets, as the bundlers wrote them, and whether each has
 * its notice in `/licences.txt`.
 */

import type { Metafile } from 'esbuild';
import type { Plugin } from 'vite';
import { LICENCES } from '../../components/words/en/pages/licences.ts';

/** The package a module belongs to; null for the handbook's own. Bundlers name what they add by themselves `\0name/…`. */
export function packageOf(id: string): string | null {
  const path = id.replaceAll('\\', '/');
  const added = /^\0(vite|rolldown)\//.exec(path);
  if (added) return added[1]!;
  // The last folder of packages counts: a package may bring another inside itself.
  const inside = path.split('node_modules/').slice(1).at(-1);
  return inside ? /^(@[^/]+\/[^/]+|[^/]+)/.exec(inside)![1]! : null;
}

/** Packages among these that ship without a notice, sorted. */
export function withoutNotice(packages: Iterable<string>): string[] {
  return [...new Set(packages)].filter((name) => !(name in LICENCES.works)).sort();
}

function refuse(packages: Iterable<string>, where: string): void {
  const missing = withoutNotice(packages);
  if (missing.length > 0) throw new Error(`${where} ships without a notice: ${missing.join(', ')}`);
}

/** Packages of which something is left in what esbuild wrote. */
export function packagesIn(metafile: Metafile): string[] {
  const inputs = Object.values(metafile.outputs).flatMap((output) => Object.entries(output.inputs));
  return inputs.flatMap(([path, { bytesInOutput }]) => {
    const name = bytesInOutput > 0 ? packageOf(path) : null;
    return name === null ? [] : [name];
  });
}

/** Stops on a script made by esbuild that holds a package without a notice. */
export function refuseUnnoticed(metafile: Metafile, where: string): void {
  refuse(packagesIn(metafile), where);
}

/** Stops the build when the pages' own scripts hold a package without a notice. */
export function onlyWithNotice(): Plugin {
  return {
    name: 'only-with-notice',
    generateBundle(_, bundle) {
      if (this.environment.name !== 'client') return;
      const found = Object.values(bundle).flatMap((file) => {
        if (file.type !== 'chunk') return [];
        const left = Object.entries(file.modules).filter(
          ([, { renderedLength }]) => renderedLength > 0,
        );
        return left.flatMap(([id]) => packageOf(id) ?? []);
      });
      refuse(found, '_astro/');
    },
  };
}

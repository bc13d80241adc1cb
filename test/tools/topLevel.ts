/** What may lie at the top of the repository: working notes and left-over files may not. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT } from './modules';

const FOLDERS = ['site/', 'components/', 'core/', 'test/', '.ci/'];
const FILES = [
  'astro.config.mjs',
  'package.json',
  'package-lock.json',
  'tsconfig.json',
  'README.md',
  'DEVELOPERS.md',
  'LICENSE',
];

/** Names at the top, folders with a stroke behind them. The store of versions itself is left out. */
export function topLevel(): string[] {
  return readdirSync(ROOT, { withFileTypes: true })
    .map((entry) => (entry.isDirectory() ? `${entry.name}/` : entry.name))
    .filter((name) => !/^\.git\/?$/.test(name));
}

/** What the repository's own rules leave out of every commit, as those rules are written. */
export function leftOut(): string[] {
  return readFileSync(join(ROOT, '.gitignore'), 'utf8')
    .split('\n')
    .filter((line) => line !== '');
}

/** Names that are neither on the list, nor dot files, nor left out by `rules`. */
export function strays(names: readonly string[], rules: readonly string[]): string[] {
  const ruledOut = (name: string): boolean =>
    rules.some((rule) => {
      const bare = rule.replace(/^\//, '');
      return bare.startsWith('*') ? name.endsWith(bare.slice(1)) : bare === name;
    });
  const dotFile = (name: string): boolean => name.startsWith('.') && !name.endsWith('/');
  return names.filter(
    (name) => ![...FOLDERS, ...FILES].includes(name) && !dotFile(name) && !ruledOut(name),
  );
}

/** The finished pages of a build, for what is made from them. */

import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

export interface BuiltPage {
  /** `/plan/`, or `/404.html` where it is not the page of a folder. */
  address: string;
  /** From the folder of the build, with forward slashes. */
  file: string;
}

export function builtPages(folder: string): BuiltPage[] {
  return globSync('**/*.html', { cwd: folder })
    .map((path) => path.replaceAll('\\', '/'))
    .sort()
    .map((file) => ({ file, address: `/${file}`.replace(/\/index\.html$/, '/') }));
}

export function readPage(folder: string, page: BuiltPage): string {
  return readFileSync(join(folder, page.file), 'utf8');
}

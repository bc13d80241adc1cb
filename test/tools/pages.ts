/** The pages of the built site, as a reader or a browser test meets them. */
import { existsSync, globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT } from './modules.ts';

export const DIST = join(ROOT, 'dist');

/** Above this many pages in one folder they are the same page with other data: a few stand for all. */
const ALIKE = 25;

/** Folders whose pages are one page with other content: a few stand for all. The audit visits each. */
const MADE = /^\/(teach|calculators|threads\/tables)\/$/;

/** Addresses of all built pages, `/plan/` style; the page for missing addresses is `/404.html`. */
export function allPages(): string[] {
  if (!existsSync(join(DIST, 'index.html'))) {
    throw new Error('dist/ has no pages: run `npm run build` first.');
  }
  return globSync('**/*.html', { cwd: DIST })
    .map((path) => `/${path.replaceAll('\\', '/')}`.replace(/\/index\.html$/, '/'))
    .toSorted();
}

/** Every page, except that a folder of many like pages is stood for by its first, middle and last. */
export function onePageOfEachKind(pages: readonly string[] = allPages()): string[] {
  const folders = new Map<string, string[]>();
  for (const page of pages) {
    const folder = page.replace(/[^/]+\/?$/, '');
    folders.set(folder, [...(folders.get(folder) ?? []), page]);
  }
  return [...folders].flatMap(([folder, inside]) =>
    inside.length <= ALIKE && !(MADE.test(folder) && inside.length > 3)
      ? inside
      : [0, Math.floor(inside.length / 2), inside.length - 1].map((at) => inside[at] ?? ''),
  );
}

export function fileOf(page: string): string {
  return join(DIST, page.endsWith('/') ? `${page}index.html` : page);
}

export function htmlOf(page: string): string {
  return readFileSync(fileOf(page), 'utf8');
}

/** The one plain script of a folder: the renderer, every island, and what wakes them. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, type Plugin } from 'esbuild';
import { builtPages, readPage } from './pages.ts';

const START = fileURLToPath(new URL('../folder/start.ts', import.meta.url));

/** From the folder's top. */
export const SCRIPT = '_astro/handbook.js';

/** What the pages of a build ask for. */
interface Found {
  /** Modules that hold islands. */
  islands: Set<string>;
  renderer: string;
  /** Modules that a page loads by itself. */
  loose: Set<string>;
}

function look(folder: string): Found {
  const found: Found = { islands: new Set(), renderer: '', loose: new Set() };
  for (const page of builtPages(folder)) {
    const html = readPage(folder, page);
    for (const [, url] of html.matchAll(/<astro-island[^>]* component-url="([^"]+)"/g))
      found.islands.add(url!);
    for (const [, url] of html.matchAll(/<astro-island[^>]* renderer-url="([^"]+)"/g))
      found.renderer = url!;
    for (const [, url] of html.matchAll(/<script type="module" src="([^"]+)"/g))
      found.loose.add(url!);
  }
  return found;
}

/** Fetching ahead of need is for a network; here a module is simply there. */
const noFetchingAhead: Plugin = {
  name: 'no-fetching-ahead',
  setup({ onLoad, onEnd }) {
    let found = false;
    // Unfound, it would be in the script and look for modules by address: no island would wake.
    onEnd(() => {
      if (!found)
        throw new Error('The build holds no file that fetches ahead: see astro.config.mjs');
    });
    onLoad({ filter: /preload-helper\.[^/]+\.js$/ }, ({ path }) => {
      const name = /export\s*\{\s*\w+ as (\w+)\s*\}/.exec(readFileSync(path, 'utf8'))?.[1];
      if (!name) throw new Error(`${path}: no export found`);
      found = true;
      return { contents: `export const ${name} = (load) => load();`, loader: 'js' };
    });
  },
};

/**
 * Writes the one script of a folder, and answers with the modules in it that belong to single pages
 * instead of islands.
 */
export async function writeScript(site: string, folder: string): Promise<string[]> {
  const found = look(site);
  const file = (url: string): string => JSON.stringify(join(site, url));
  const islands = [...found.islands]
    .sort()
    .map((url) => `${JSON.stringify(url)}: () => import(${file(url)})`);
  // What keeps the handbook on a device has nothing to do in a folder.
  const loose = [...found.loose].filter(
    (url) => !/serviceWorker/.test(readFileSync(join(site, url), 'utf8')),
  );
  await build({
    stdin: {
      contents: [
        `import { start } from ${JSON.stringify(START)};`,
        `import renderer from ${file(found.renderer)};`,
        `const root = new URL('../', document.currentScript.src).href;`,
        ...loose.map((url) => `void import(${file(url)});`),
        `void start(renderer, { ${islands.join(', ')} }, root);`,
      ].join('\n'),
      resolveDir: site,
    },
    outfile: join(folder, SCRIPT),
    bundle: true,
    minify: true,
    format: 'iife',
    charset: 'utf8',
    target: ['chrome109', 'firefox115'],
    plugins: [noFetchingAhead],
    logLevel: 'error',
  });
  return loose;
}

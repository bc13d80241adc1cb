/**
 * Makes of a finished build a folder that opens by double-click, and a zip of it: every link a file,
 * one plain script in place of the modules, the search's index inside its page.
 *
 *   npm run folder
 */

import { createHash } from 'node:crypto';
import {
  cpSync,
  globSync,
  mkdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { basename, dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, type Plugin } from 'esbuild';
import { zipSync, type Zippable } from 'fflate';
import { FOLDER } from '../../components/words/en/offline.ts';
import { fileOf } from '../folder/start.ts';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));
const START = join(ROOT, 'site/folder/start.ts');
const { version } = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8')) as {
  version: string;
};
const NAME = 'tapped-hole-handbook';
const ASSETS = '_astro';
const SCRIPT = `${ASSETS}/handbook.js`;
/** Of use only where a server answers. */
const LEFT_OUT = ['404.html', 'robots.txt', 'worker.js', 'no-network', 'search/index.json'];

/** What the pages of a build ask for. */
interface Found {
  /** Modules that hold islands. */
  islands: Set<string>;
  renderer: string;
  /** Modules that a page loads by itself. */
  loose: Set<string>;
}

const pagesOf = (folder: string): string[] => globSync('**/*.html', { cwd: folder });

function look(folder: string): Found {
  const found: Found = { islands: new Set(), renderer: '', loose: new Set() };
  for (const page of pagesOf(folder)) {
    const html = readFileSync(join(folder, page), 'utf8');
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
  setup({ onLoad }) {
    onLoad({ filter: /preload-helper\.[^/]+\.js$/ }, ({ path }) => {
      const name = /export\s*\{\s*\w+ as (\w+)\s*\}/.exec(readFileSync(path, 'utf8'))?.[1];
      if (!name) throw new Error(`${path}: no export found`);
      return { contents: `export const ${name} = (load) => load();`, loader: 'js' };
    });
  },
};

async function writeScript(site: string, folder: string, found: Found): Promise<string[]> {
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
      resolveDir: ROOT,
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

function sha256(text: string): string {
  return `'sha256-${createHash('sha256').update(text).digest('base64')}'`;
}

/** What a page of the folder may load: its own files, its own inline styles, and nothing else. */
function policy(html: string): string {
  const styles = [...html.matchAll(/<style[^>]*>([\s\S]*?)<\/style>/g)].map(([, text]) =>
    sha256(text!),
  );
  return [
    "default-src 'self'",
    "img-src 'self' data:",
    "font-src 'self' data:",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'self'",
    "connect-src 'none'",
    "script-src 'self'",
    ['style-src', "'self'", ...new Set(styles)].join(' '),
  ].join('; ');
}

function folderPage(html: string, page: string, loose: string[], index: string): string {
  const up = relative(dirname(page), '.').replaceAll('\\', '/');
  const here = (address: string): string => (up === '' ? './' : `${up}/`) + fileOf(address);
  const needsScript =
    html.includes('<astro-island') || loose.some((url) => html.includes(`src="${url}"`));
  let text = html
    .replaceAll(/<script(?: type="module" src="[^"]+")?>[\s\S]*?<\/script>/g, '')
    .replaceAll(/<link rel="(?:preload|modulepreload)"[^>]*>/g, '')
    .replaceAll(/ renderer-url="[^"]*"/g, '')
    .replaceAll(
      /(<[^>]*\s)(href|src|action)="(\/[^"]*)"/g,
      (_, before: string, name: string, to: string) => `${before}${name}="${here(to)}"`,
    );
  if (page === join('search', 'index.html'))
    text = text.replace(
      '</body>',
      () =>
        `<script type="application/json" id="search-index">${index.replaceAll('<', String.raw`\u003c`)}</script></body>`,
    );
  if (needsScript)
    text = text.replace('</head>', `<script defer src="${here(`/${SCRIPT}`)}"></script></head>`);
  return text.replace(
    /(<meta http-equiv="content-security-policy" content=")[^"]*"/,
    (_, before: string) => `${before}${policy(text)}"`,
  );
}

/** Fonts go inside the styles: a browser may take a file beside the page for another origin. */
function writeStyles(folder: string): void {
  for (const file of globSync(`${ASSETS}/*.css`, { cwd: folder })) {
    const path = join(folder, file);
    const text = readFileSync(path, 'utf8').replaceAll(
      /url\((\/[^)]+\.woff2)\)/g,
      (_, url: string) => {
        const font = readFileSync(join(folder, url)).toString('base64');
        return `url(data:font/woff2;base64,${font})`;
      },
    );
    writeFileSync(path, text);
  }
}

export async function writeFolder(
  site: string,
  out: string,
): Promise<{ folder: string; zip: string; bytes: number; packed: number }> {
  const folder = join(out, NAME);
  rmSync(out, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  const index = readFileSync(join(site, 'search/index.json'), 'utf8');
  cpSync(site, folder, {
    recursive: true,
    filter: (from) => {
      const path = relative(site, from).replaceAll('\\', '/');
      return !LEFT_OUT.includes(path) && !(path.startsWith(`${ASSETS}/`) && path.endsWith('.js'));
    },
  });
  const loose = await writeScript(site, folder, look(site));
  for (const page of pagesOf(folder)) {
    const path = join(folder, page);
    writeFileSync(path, folderPage(readFileSync(path, 'utf8'), page, loose, index));
  }
  writeStyles(folder);
  for (const font of globSync(`${ASSETS}/*.woff2`, { cwd: folder })) rmSync(join(folder, font));
  writeFileSync(join(folder, FOLDER.file), FOLDER.text.replace('{version}', version));

  const files: Zippable = {};
  let bytes = 0;
  for (const file of globSync('**/*', { cwd: folder }).sort()) {
    if (!statSync(join(folder, file)).isFile()) continue;
    const content = readFileSync(join(folder, file));
    bytes += content.length;
    files[`${NAME}/${file.replaceAll('\\', '/')}`] = content;
  }
  const packed = zipSync(files, { level: 9 });
  const zip = join(out, `${NAME}-${version}.zip`);
  writeFileSync(zip, packed);
  return { folder, zip, bytes, packed: packed.length };
}

if (process.argv[1] && basename(process.argv[1]) === 'folder.ts') {
  const { zip, bytes, packed } = await writeFolder(join(ROOT, 'dist'), join(ROOT, 'folder'));
  const mega = (count: number): string => `${(count / 1e6).toFixed(1)} MB`;
  process.stdout.write(`${relative(ROOT, zip)}: ${mega(packed)}, ${mega(bytes)} unpacked\n`);
}

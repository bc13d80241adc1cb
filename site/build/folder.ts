/**
 * Makes of a finished build a folder that opens by double-click, and a zip of it: every link a file,
 * one plain script in place of the modules, the search's index inside its page.
 *
 *   npm run folder
 */

import {
  cpSync,
  globSync,
  mkdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { basename, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { zipSync, type Zippable } from 'fflate';
import { FOLDER } from '../../components/words/en/offline.ts';
import { folderPage } from './folderPage.ts';
import { writeScript } from './folderScript.ts';
import { builtPages, readPage } from './pages.ts';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));
const { version } = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8')) as {
  version: string;
};
const NAME = 'tapped-hole-handbook';
const ASSETS = '_astro';
/** Of use only where a server answers. */
const LEFT_OUT = ['404.html', 'robots.txt', 'worker.js', 'no-network', 'search/index.json'];

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
  const around = { loose: await writeScript(site, folder), index };
  for (const page of builtPages(folder))
    writeFileSync(join(folder, page.file), folderPage(readPage(folder, page), page.file, around));
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

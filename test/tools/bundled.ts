/**
 * Runs a script that imports the core: `node test/tools/bundled.ts <script> [arguments]`. The core's imports name no
 * file endings, which bundlers and browsers' builds resolve and plain Node does not.
 */
import { build } from 'esbuild';
import { mkdirSync } from 'node:fs';
import { basename, join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { ROOT } from './modules.ts';

const [script, ...rest] = process.argv.slice(2);
if (!script) throw new Error('Name the script to run.');
const folder = join(ROOT, 'test', 'output');
mkdirSync(folder, { recursive: true });
const outfile = join(folder, `${basename(script, '.ts')}.mjs`);
await build({
  entryPoints: [resolve(script)],
  outfile,
  bundle: true,
  platform: 'node',
  format: 'esm',
  packages: 'external',
  logLevel: 'error',
});
process.argv.splice(2, process.argv.length, ...rest);
await import(pathToFileURL(outfile).href);

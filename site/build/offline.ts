/** Lists every file of a finished build with its digest and writes the worker that keeps them. */

import { createHash } from 'node:crypto';
import { globSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { refuseUnnoticed } from './shipped.ts';
import { WORKER_ADDRESS, type Listed } from '../offline/messages.ts';

const WORKER = fileURLToPath(new URL('../offline/worker.ts', import.meta.url));

/** The pages of single threads and the tables: many, and each asked for by few. */
function isThreadFile(address: string): boolean {
  return /^\/threads\/./.test(address);
}

function listed(folder: string, file: string): Listed {
  const path = file.replaceAll('\\', '/');
  const digest = createHash('sha256')
    .update(readFileSync(join(folder, file)))
    .digest('base64');
  return [`/${path}`.replace(/\/index\.html$/, '/'), `sha256-${digest}`];
}

export async function writeWorker(folder: string): Promise<{ handbook: number; threads: number }> {
  const files = globSync('**/*', { cwd: folder })
    .filter((file) => statSync(join(folder, file)).isFile())
    .map((file) => listed(folder, file))
    // Hosts keep the page for lost addresses and what crawlers read to themselves.
    .filter(([address]) => ![WORKER_ADDRESS, '/404.html', '/robots.txt'].includes(address))
    .sort(([a], [b]) => (a < b ? -1 : 1));
  const threads = files.filter(([address]) => isThreadFile(address));
  const handbook = files.filter(([address]) => !isThreadFile(address));
  const { metafile } = await build({
    entryPoints: [WORKER],
    outfile: join(folder, WORKER_ADDRESS),
    bundle: true,
    minify: true,
    format: 'iife',
    target: ['chrome109', 'firefox115'],
    define: {
      'process.env.NODE_ENV': '"production"',
      HANDBOOK_FILES: JSON.stringify(handbook),
      THREAD_FILES: JSON.stringify(threads),
    },
    metafile: true,
    logLevel: 'error',
  });
  refuseUnnoticed(metafile, WORKER_ADDRESS);
  return { handbook: handbook.length, threads: threads.length };
}

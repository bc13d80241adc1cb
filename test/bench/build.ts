/** How long the whole site takes to build, and how much memory. */
import { spawnSync } from 'node:child_process';
import { cpus } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { ROOT } from '../tools/modules.ts';

const WANTED = { seconds: 60, gigabytes: 1.5 };

const started = performance.now();
const build = spawnSync(
  process.execPath,
  [
    '--import',
    pathToFileURL(join(ROOT, 'test/bench/memory.mjs')).href,
    join(ROOT, 'node_modules/astro/bin/astro.mjs'),
    'build',
    '--silent',
  ],
  { cwd: ROOT, encoding: 'utf8' },
);
const seconds = (performance.now() - started) / 1000;
if (build.status !== 0) throw new Error(`The build failed:\n${build.stdout}${build.stderr}`);
const kilobytes = Number(/max-rss-kb=(\d+)/.exec(build.stderr)?.[1]);
const gigabytes = kilobytes / 1024 ** 2;
console.log(
  `build: ${seconds.toFixed(1)} s and ${gigabytes.toFixed(2)} GB on ${cpus().length} cores; ` +
    `at most ${WANTED.seconds} s and ${WANTED.gigabytes} GB`,
);
if (seconds > WANTED.seconds || gigabytes > WANTED.gigabytes) process.exitCode = 1;

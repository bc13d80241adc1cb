/** How long 2,000 samples of a torque's doubt take, swings and all: the slowest of the taps of one shop. */
import { build } from 'esbuild';
import { join } from 'node:path';
import type * as Study from '../../core/plan/tap-study.ts';
import type { HoleRequest } from '../../core/plan/types.ts';
import { ROOT } from '../tools/modules.ts';

const WANTED_MS = 50;

const outfile = join(ROOT, 'node_modules/.cache/bench/tap-study.mjs');
await build({
  entryPoints: [join(ROOT, 'core/plan/tap-study.ts')],
  bundle: true,
  format: 'esm',
  outfile,
  logLevel: 'error',
});
const { studyTap } = (await import(outfile)) as typeof Study;

const REQUEST: HoleRequest = {
  thread: 'M8x1.25-6H',
  fullThread: 16,
  hole: { kind: 'blind' },
  material: 'stainless-austenitic',
};
const STYLES = ['spiral-flute', 'spiral-point', 'straight-flute', 'form'] as const;

/** First time as a page meets it, with nothing compiled; then the middle of many. */
function milliseconds(style: (typeof STYLES)[number]): { first: number; middle: number } {
  const times = Array.from({ length: 31 }, () => {
    const started = performance.now();
    const study = studyTap(REQUEST, { style, chamfer: 'semi-bottoming' });
    if (!study.ok) throw new Error(study.problems[0]?.code);
    return performance.now() - started;
  });
  const [first = 0, ...rest] = times;
  return { first, middle: rest.toSorted((a, b) => a - b)[15] ?? 0 };
}

const all = STYLES.map(milliseconds);
const first = Math.max(...all.map((each) => each.first));
const middle = Math.max(...all.map((each) => each.middle));
console.log(
  `a tap with 2,000 samples of its doubt: ${middle.toFixed(1)} ms, the first time ${first.toFixed(1)} ms; ` +
    `at most ${WANTED_MS} ms`,
);
// The first time has the compiler and the planning of the hole in it, and is shown to be seen.
if (middle > WANTED_MS) process.exitCode = 1;

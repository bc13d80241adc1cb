/** `npm run bench`: how many holes a second the core plans on one core of this machine. */
import { build } from 'esbuild';
import { join } from 'node:path';
import type * as Core from '../../core/index.ts';
import type { HoleRequest } from '../../core/plan/types.ts';
import { ROOT } from '../tools/modules.ts';

const WANTED = 10_000;

/** Holes of a small valve shop: each kind of answer, from the ordinary to the impossible. */
const REQUESTS: HoleRequest[] = [
  { thread: 'M6x1-6H', fullThread: 12, hole: { kind: 'blind' }, material: 'al-wrought' },
  { thread: 'M5x0.8', hole: { kind: 'through', thickness: 3 }, material: 'stainless-austenitic' },
  { thread: 'M12x1.75', fullThread: 24, hole: { kind: 'blind' }, material: 'iron-grey' },
  {
    thread: '1/2-13 UNC-2B',
    fullThread: 19.05,
    hole: { kind: 'blind' },
    material: 'steel-alloy-30hrc',
    spindle: { drive: 'synchronous', torque: 30 },
  },
  {
    thread: 'M30x3.5',
    hole: { kind: 'through', thickness: 45 },
    material: 'steel-medium',
    spindle: { drive: 'synchronous', torque: 30 },
  },
  {
    thread: 'M10x1.5',
    fullThread: 15,
    hole: { kind: 'blind', limit: { at: 'shoulder', depth: 16.5 } },
    material: 'al-wrought',
  },
  { thread: 'M12x1.75-LH', hole: { kind: 'through', thickness: 20 }, material: 'steel-medium' },
  {
    thread: 'M8x1.25-6H',
    fullThread: 16,
    hole: { kind: 'blind', limit: { at: 'shoulder', depth: 22 } },
    material: 'stainless-austenitic',
    spindle: { drive: 'synchronous', torque: 60 },
  },
];

const outfile = join(ROOT, 'node_modules/.cache/bench/core.mjs');
await build({
  entryPoints: [join(ROOT, 'core/index.ts')],
  bundle: true,
  format: 'esm',
  outfile,
  logLevel: 'error',
});
const { planHole } = (await import(outfile)) as typeof Core;

/** Plans for a while; gives plans per second. A small change of depth keeps each request new. */
function measure(seconds: number): number {
  const started = performance.now();
  let count = 0;
  let now = started;
  while (now - started < seconds * 1000) {
    for (const request of REQUESTS) {
      const varied = { ...request, fullThread: (request.fullThread ?? 3) + (count % 97) * 1e-3 };
      if (request.hole.kind === 'through')
        varied.fullThread = request.hole.thickness - 1e-3 * (count % 97);
      const outcome = planHole(varied);
      if (!outcome.ok) throw new Error(`${request.thread}: ${outcome.problems[0]?.code}`);
      count += 1;
    }
    now = performance.now();
  }
  return (count * 1000) / (now - started);
}

measure(0.5); // lets the compiler settle
const rates = [1, 2, 3].map(() => measure(1)).toSorted((a, b) => a - b);
const middle = rates[1] ?? 0;
console.log(
  `planHole: ${Math.round(middle).toLocaleString('en')} plans a second, the middle of three runs`,
);
console.log(
  `${REQUESTS.length} different holes; at least ${WANTED.toLocaleString('en')} are wanted`,
);
process.exitCode = middle < WANTED ? 1 : 0;

/** `npm run fuzz`: a million mangled designations, callouts and requests by the hundred thousand. Takes minutes. */
import { mangledCallouts, mangledThreads, wildRequests } from './mangle.ts';
import { faultOfCallout, faultOfRequest, faultOfThread } from './sound.ts';

const share = Number(process.argv[2] ?? 1);
const seed = Number(process.argv[3] ?? 1);
const SHOWN = 20;

function run<T>(name: string, cases: Iterable<T>, fault: (each: T) => string | null): void {
  const started = performance.now();
  let count = 0;
  let faults = 0;
  for (const each of cases) {
    count += 1;
    const found = fault(each);
    if (found === null) continue;
    faults += 1;
    if (faults <= SHOWN) console.log(`${name}: ${JSON.stringify(each)?.slice(0, 300)} ${found}`);
  }
  const seconds = ((performance.now() - started) / 1000).toFixed(0);
  console.log(`${count.toLocaleString('en')} ${name}, ${faults} faults, ${seconds} s`);
  if (faults > 0) process.exitCode = 1;
}

run('mangled designations', mangledThreads(1_000_000 * share, seed), faultOfThread);
run('mangled callouts', mangledCallouts(200_000 * share, seed), faultOfCallout);
run('requests', wildRequests(100_000 * share, seed), faultOfRequest);

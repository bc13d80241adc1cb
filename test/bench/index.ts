/** `npm run bench`: plans a second, the build, and what readers wait for. Run it on a quiet machine. */
import { cpus, loadavg } from 'node:os';

console.log(`${cpus()[0]?.model.trim()}, ${cpus().length} cores, load ${loadavg()[0]?.toFixed(1)}`);
await import('./plans.ts');
await import('./doubt.ts');
await import('./build.ts');
await import('./drawing.ts');
await import('./pages.ts');

import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const root = fileURLToPath(new URL('..', import.meta.url));

/**
 * Three groups, told apart by folder:
 * - `pure`: the core and its checks against outside values, in plain Node;
 * - `components`: whatever draws, in happy-dom;
 * - `built`: reads dist/, so it runs after `npm run build`.
 * Browser tests are Playwright's (test/site/*.spec.ts) and not seen here.
 */
export default defineConfig({
  root,
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  test: {
    // A test that never asks anything fails, wherever its questions are written.
    expect: { requireAssertions: true },
    setupFiles: ['test/properties.setup.ts'],
    // Thousands of drawn cases on a busy two-core machine; speed is measured in benchmarks, not here.
    testTimeout: 120_000,
    // By itself it leaves one core to others: here nothing else runs meanwhile.
    maxWorkers: '100%',
    pool: 'threads',
    projects: [
      {
        extends: true,
        test: {
          name: 'pure',
          environment: 'node',
          // Nothing in the core changes by being asked, so its modules are loaded once for all files.
          isolate: false,
          include: ['test/*.test.ts', 'test/{core,published,content,second}/**/*.test.ts'],
        },
      },
      {
        extends: true,
        test: {
          name: 'components',
          environment: 'happy-dom',
          setupFiles: ['test/waiting.setup.ts'],
          include: ['test/**/*.test.{ts,tsx}'],
          exclude: [
            'test/*.test.ts',
            'test/{core,published,content,second,built,site,bench,output}/**',
            '**/node_modules/**',
          ],
        },
      },
      {
        extends: true,
        test: {
          name: 'built',
          environment: 'node',
          include: ['test/built/**/*.test.ts'],
        },
      },
    ],
  },
});

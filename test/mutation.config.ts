import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/**
 * Each mutant is shown to every test that reaches it. What everything stands on, and what reaches everything,
 * is shown to the tests made for it: with all of them a night would not do.
 */
const TESTS: Readonly<Record<string, string[]>> = {
  thread: ['test/core/{thread,limits,drill,tap}/**/*.test.ts', 'test/published/**/*.test.ts'],
  plan: ['test/core/plan/*.test.ts'],
};

/**
 * What mutants of the core are shown to: its own tests and the published checks, in plain Node. Files share
 * one process: the core keeps nothing between calls, and three times as many mutants a minute are tried.
 */
export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    setupFiles: ['test/properties.setup.ts'],
    testTimeout: 60_000,
    environment: 'node',
    isolate: false,
    include: TESTS[process.env['MUTATION_FOLDER'] ?? ''] ?? ['test/{core,published}/**/*.test.ts'],
    // They ask the whole core thousands of times; hardly a mutant is killed by them alone.
    exclude: ['test/core/fuzz.test.ts', 'test/core/{thread,plan}/properties.test.ts'],
  },
});

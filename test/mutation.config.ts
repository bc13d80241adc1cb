import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

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
    include: ['test/{core,published}/**/*.test.ts'],
    // Both ask the whole core at once: every mutant would be shown to them, and none is killed by them alone.
    exclude: ['test/core/fuzz.test.ts'],
  },
});

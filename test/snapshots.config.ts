import { defineConfig } from '@playwright/test';
import site from './playwright.config.ts';

/** The pictures of `test/snapshots/`: the built site as the browser tests see it, one try each. */
export default defineConfig({
  ...site,
  testDir: './snapshots',
  outputDir: './output/snapshots',
  snapshotPathTemplate: '{testDir}/pictures/{arg}{ext}',
  retries: 0,
  expect: { toHaveScreenshot: { maxDiffPixelRatio: 0.0002 } },
});

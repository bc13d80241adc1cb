import { defineConfig } from '@playwright/test';
import { FLAGS, windowedBrowser } from './browser.mjs';
import site from './playwright.config.ts';

const windowed = windowedBrowser();

/** The pictures of `test/snapshots/`: the built site as the browser tests see it, one try each. */
export default defineConfig({
  ...site,
  testDir: './snapshots',
  outputDir: './output/snapshots',
  snapshotPathTemplate: '{testDir}/pictures/{arg}{ext}',
  retries: 0,
  use: {
    ...site.use,
    ...(windowed ? { launchOptions: { executablePath: windowed, args: FLAGS } } : {}),
  },
  expect: { toHaveScreenshot: { maxDiffPixelRatio: 0.0002 } },
});

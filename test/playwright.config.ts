import { defineConfig } from '@playwright/test';
import { findBrowser, FLAGS } from './browser.mjs';

// Worker processes read this file again: the first reading leaves its find where they see it.
process.env['CHROME_PATH'] = process.env['TESTS_BROWSER'] ?? (await findBrowser()).path;
process.env['TESTS_BROWSER'] = process.env['CHROME_PATH'];
// Worker processes are told to colour; asked not to as well, each would warn about it.
if (process.env['NO_COLOR']) delete process.env['NO_COLOR'];

const port = Number(process.env['TESTS_PORT'] ?? 4410);

/** Browser tests run against the built site: only a build carries the content security policy. */
export default defineConfig({
  testDir: './site',
  testMatch: '**/*.spec.ts',
  outputDir: './output/browser',
  fullyParallel: true,
  forbidOnly: Boolean(process.env['CI']),
  // One, until the card's journey that hung once in a fresh clone is understood: a test that passes only when
  // asked again has found a defect, of the page or its own. It is not counted as passed.
  retries: 1,
  workers: 2,
  // A busy machine stops for longer than a person would wait. Speed is measured elsewhere, against a page
  // of nearly nothing beside it; here a page is only ever too slow when it never comes.
  timeout: 180_000,
  expect: { timeout: 30_000 },
  reporter: [['list']],
  use: {
    baseURL: `http://localhost:${port}`,
    browserName: 'chromium',
    launchOptions: { executablePath: process.env['CHROME_PATH'], args: FLAGS },
    viewport: { width: 1366, height: 768 },
    screenshot: 'only-on-failure',
    locale: 'en-GB',
    // A worker that fetches the whole site would be in the way of every test but its own.
    serviceWorkers: 'block',
  },
  webServer: {
    command: 'node test/tools/serve.ts',
    cwd: '..',
    url: `http://localhost:${port}/`,
    env: { PORT: String(port) },
    reuseExistingServer: false,
  },
});

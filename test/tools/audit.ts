/**
 * `npm run audit`: every built page, not a sample. Axe in both themes, targets a gloved hand can hit,
 * and each calculator worked by keyboard alone. Run it after `npm run build`; it takes some minutes.
 */
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { chromium, type Browser } from '@playwright/test';
import { findBrowser, FLAGS } from '../browser.mjs';
import { smallTargets } from './auditPage.ts';
import { keyboardFaults } from './auditKeys.ts';
import { axeFaults } from './axe.ts';
import { ROOT } from './modules.ts';
import { allPages } from './pages.ts';
import { listen, siteServer } from './serve.ts';

const WORKERS = 2;

interface Fault {
  page: string;
  what: string;
}

/** Runs `check` on every page of `pages`, a few browser pages at a time. */
async function everyPage(
  browser: Browser,
  address: string,
  pages: readonly string[],
): Promise<Fault[]> {
  const faults: Fault[] = [];
  const queue = [...pages];
  const worker = async (): Promise<void> => {
    // Nothing is kept between pages but the cache: what one page saves must not help the next.
    const context = await browser.newContext({
      viewport: { width: 1366, height: 768 },
      reducedMotion: 'reduce',
      serviceWorkers: 'block',
    });
    for (let path = queue.shift(); path !== undefined; path = queue.shift()) {
      const page = await context.newPage();
      const note = (what: string): void => void faults.push({ page: path ?? '', what });
      page.on('console', (message) => {
        // The worker is held off here, and this is said of it.
        if (message.text() !== 'Service Worker registration blocked by Playwright')
          note(`console: ${message.text()}`);
      });
      page.on('pageerror', (error) => note(`error: ${error.message}`));
      await page.goto(address + path.slice(1));
      await page.waitForFunction(() => !document.querySelector('astro-island[ssr][client="load"]'));
      for (const { scheme, rule, target } of await axeFaults(page))
        note(`axe ${rule}, ${scheme}: ${target}`);
      (await smallTargets(page)).forEach(note);
      if (/^\/calculators\/[^/]+\/$/.test(path)) (await keyboardFaults(page)).forEach(note);
      await page.close();
    }
    await context.close();
  };
  await Promise.all(Array.from({ length: WORKERS }, worker));
  return faults;
}

const only = process.argv[2];
const pages = allPages().filter((path) => only === undefined || path.includes(only));
const server = siteServer();
const address = await listen(server, Number(process.env['AUDIT_PORT'] ?? 4430));
const { path: executablePath } = await findBrowser();
const browser = await chromium.launch({ executablePath, args: FLAGS });
try {
  const faults = await everyPage(browser, address, pages);
  for (const { page, what } of faults) console.log(`${page}  ${what}`);
  console.log(`${pages.length} pages, light and dark: ${faults.length} faults`);
  process.exitCode = faults.length > 0 ? 1 : 0;
} finally {
  await browser.close();
  server.close();
}

// What `npm test` asks of three pages of a kind, with everything in them running, is asked of all.
if (only === undefined) {
  const playwright = join(ROOT, 'node_modules/@playwright/test/cli.js');
  const { status } = spawnSync(
    process.execPath,
    [playwright, 'test', '-c', 'test/playwright.config.ts', '-g', 'is accessible'],
    { cwd: ROOT, stdio: 'inherit', env: { ...process.env, EVERY_PAGE_OF_A_KIND: '1' } },
  );
  if (status !== 0) process.exitCode = 1;
}

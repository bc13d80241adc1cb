/** What a reader waits for: Lighthouse as on a phone, and the time from a key to the picture on a slow PC. */
import { chromium, type Browser, type Page } from '@playwright/test';
import lighthouse from 'lighthouse';
import { findBrowser, FLAGS } from '../browser.mjs';
import { allPages } from '../tools/pages.ts';
import { listen, siteServer } from '../tools/serve.ts';

const DEBUGGING = 4425;
const SLOWER = 6;
const PAINT_MS = 50;
/** From one key to the next, as a careful typist goes. */
const KEY_MS = 200;
const CATEGORIES = ['performance', 'accessibility', 'best-practices', 'seo'];
const PLANNER = ['/', '/plan/'];
/** A hole with an answer, so that every key changes all of the page. */
const HOLE =
  'thread=M8x1.25-6H&hole=blind&depth=16&limit=22&at=shoulder&material=stainless-austenitic&torque=30';

/** Lowest score allowed, of 100. */
function wanted(page: string): number {
  return PLANNER.includes(page) ? 98 : 100;
}

async function scores(url: string): Promise<number[]> {
  const result = await lighthouse(url, {
    port: DEBUGGING,
    onlyCategories: CATEGORIES,
    logLevel: 'silent',
  });
  const found = result?.lhr.categories ?? {};
  return CATEGORIES.map((name) => Math.round((found[name]?.score ?? 0) * 100));
}

/** The 95th percentile of the time from a key in a field to the next paint, ms, all fields of one page. */
async function inputToPaint(page: Page, url: string): Promise<{ ms: number; keys: number }> {
  await page.goto(url);
  await page.waitForFunction(() => !document.querySelector('astro-island[ssr][client="load"]'));
  await page.evaluate(() => {
    const kept = new Map<number, number>();
    Object.assign(window, { keptDurations: kept });
    // A browser without a screen may skip frames it thinks nobody sees; this asks for each of them.
    const everyFrame = (): void => void requestAnimationFrame(everyFrame);
    everyFrame();
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries() as (PerformanceEntry & { interactionId?: number })[]) {
        // One key gives several events; the reader waits for the slowest. 0: no interaction.
        const id = entry.interactionId ?? 0;
        if (id > 0) kept.set(id, Math.max(kept.get(id) ?? 0, entry.duration));
      }
    }).observe({ type: 'event', durationThreshold: 16 } as PerformanceObserverInit);
  });
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
  let keys = 0;
  for (const field of await page.locator('main input[type=text]:visible').all()) {
    await field.click();
    await field.press('End');
    // A digit more and a digit less: a new answer for every key, and the field as it was at the end.
    for (let round = 0; round < 10; round += 1) {
      await field.press('1', { delay: KEY_MS / 2 });
      await page.waitForTimeout(KEY_MS / 2);
      await field.press('Backspace', { delay: KEY_MS / 2 });
      await page.waitForTimeout(KEY_MS / 2);
      keys += 2;
    }
  }
  await page.waitForTimeout(500);
  const durations = await page.evaluate(() => [
    ...(window as unknown as { keptDurations: Map<number, number> }).keptDurations.values(),
  ]);
  await session.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  // Only what took 16 ms or longer is reported; the rest is counted at that.
  const all = [...durations, ...Array<number>(Math.max(0, keys - durations.length)).fill(16)];
  all.sort((a, b) => a - b);
  return { ms: all[Math.ceil(all.length * 0.95) - 1] ?? 0, keys };
}

const server = siteServer();
const address = (await listen(server, 4424)).replace(/\/$/, '');
const { path: executablePath } = await findBrowser();

/** A browser of its own for each kind of measurement: what one leaves behind would slow the other. */
async function withBrowser(
  args: string[],
  work: (browser: Browser) => Promise<void>,
): Promise<void> {
  const browser = await chromium.launch({ executablePath, args: [...FLAGS, ...args] });
  try {
    await work(browser);
  } finally {
    await browser.close();
  }
}

async function runLighthouse(): Promise<void> {
  const lessons = allPages().filter((page) => /^\/lessons\/./.test(page));
  for (const page of ['/', '/plan/', '/lessons/', ...lessons, '/sources/']) {
    const found = await scores(address + page);
    const low = found.some((score) => score < wanted(page));
    console.log(`Lighthouse ${page}: ${found.join(' ')}${low ? `  BELOW ${wanted(page)}` : ''}`);
    if (low) process.exitCode = 1;
  }
}

async function runInputs(browser: Browser): Promise<void> {
  const { ms, keys } = await inputToPaint(await browser.newPage(), `${address}/plan/?${HOLE}`);
  console.log(
    `input to paint, ${SLOWER} × slower, 95th percentile of ${keys} keys: ${ms} ms; at most ${PAINT_MS}`,
  );
  if (ms > PAINT_MS || keys === 0) process.exitCode = 1;
}

try {
  await withBrowser([`--remote-debugging-port=${DEBUGGING}`], runLighthouse);
  await withBrowser([], runInputs);
} finally {
  server.close();
}

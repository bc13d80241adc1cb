/** How a reader's wait is measured: Lighthouse as on a phone, and from a key to the picture on a slow PC. */
import { chromium, type Browser, type Page } from '@playwright/test';
import lighthouse from 'lighthouse';
import { throttling } from 'lighthouse/core/config/constants.js';
import puppeteer from 'puppeteer-core';
import { findBrowser, FLAGS } from '../browser.mjs';

export const CATEGORIES = ['performance', 'accessibility', 'best-practices', 'seo'] as const;
export const SLOWER = 6;
const DEBUGGING = 4435;
/** Until a new tab's frame stands. */
const FRAME_MS = 3000;
/** From one key to the next, as a careful typist goes. */
const KEY_MS = 200;
/** The floor's PC. */
const SCREEN = { width: 1366, height: 768 };

/** A hole with an answer, so that every key changes all of the page. */
export const HOLE =
  'thread=M8x1.25-6H&hole=blind&depth=16&limit=22&at=shoulder&material=stainless-austenitic&torque=30';
/** Where the planner answers. */
export const ANSWER = '.planner-answer';

/** Lowest score allowed, of 100. */
export function wanted(page: string): number {
  return page === '/' || page === '/plan/' ? 98 : 100;
}

type LighthousePage = NonNullable<Parameters<typeof lighthouse>[3]>;

export interface Scores {
  /** Of 100, in the order of the categories. */
  scores: number[];
  /** When the largest thing of the first screen stands, ms, on the phone and network that Lighthouse reckons with. */
  largest: number;
  /** What the processor had to do for the page, ms, on the phone that Lighthouse reckons with. */
  work: number;
}

/** How many times slower than this machine Lighthouse takes its phone to be. */
export const PHONE = throttling.mobileSlow4G.cpuSlowdownMultiplier;

/** Asks Lighthouse of pages, one after the other. `slower`: how many times slower the phone is, PHONE if not told. */
export type Ask = (url: string, slower?: number) => Promise<Scores>;

/** Lighthouse in one tab for all that `work` asks. */
export function withLighthouse<T>(work: (ask: Ask) => Promise<T>): Promise<T> {
  return withBrowser([`--remote-debugging-port=${DEBUGGING}`], async () => {
    const browser = await puppeteer.connect({
      browserURL: `http://localhost:${DEBUGGING}`,
      defaultViewport: null,
    });
    try {
      // The browser draws its own frame with script when a tab opens, which would be counted as the page's.
      const tab = await browser.newPage();
      await new Promise((done) => setTimeout(done, FRAME_MS));
      return await work((url, slower = PHONE) => scoresOf(url, slower, tab));
    } finally {
      await browser.disconnect();
    }
  });
}

async function scoresOf(url: string, slower: number, tab: LighthousePage): Promise<Scores> {
  const result = await lighthouse(
    url,
    {
      onlyCategories: [...CATEGORIES],
      throttling: { ...throttling.mobileSlow4G, cpuSlowdownMultiplier: slower },
      logLevel: 'silent',
    },
    undefined,
    tab,
  );
  const found = result?.lhr.categories ?? {};
  return {
    scores: CATEGORIES.map((name) => Math.round((found[name]?.score ?? 0) * 100)),
    largest: result?.lhr.audits['largest-contentful-paint']?.numericValue ?? Number.NaN,
    work: result?.lhr.audits['mainthread-work-breakdown']?.numericValue ?? Number.NaN,
  };
}

/** The 95th percentile, and how many there were. */
export interface Spread {
  ms: number;
  keys: number;
}

function spread(times: readonly number[], keys = times.length): Spread {
  // Only what took 16 ms or longer is reported; the rest is counted at that.
  const all = [...times, ...Array<number>(Math.max(0, keys - times.length)).fill(16)];
  all.sort((a, b) => a - b);
  return { ms: all[Math.ceil(all.length * 0.95) - 1] ?? Number.NaN, keys };
}

/** In the page: notes the time of every key to its picture, and to the answer that `answer` selects. */
function watch(answer: string): void {
  const kept = new Map<number, number>();
  const answers: number[] = [];
  Object.assign(window, { kept, answers });
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

  let typed = 0;
  addEventListener('input', ({ timeStamp }) => (typed = timeStamp), { capture: true });
  new MutationObserver((changes) => {
    const within = (node: Node): boolean =>
      (node instanceof Element ? node : node.parentElement)?.closest(answer) !== null;
    if (typed === 0 || !changes.some(({ target }) => within(target))) return;
    const since = typed;
    typed = 0;
    // The message is delivered when the frame that shows the answer has been drawn.
    requestAnimationFrame(() => {
      const { port1, port2 } = new MessageChannel();
      port1.addEventListener('message', () => answers.push(performance.now() - since));
      port1.start();
      port2.postMessage(null);
    });
  }).observe(document.body, { subtree: true, childList: true, characterData: true });
}

export interface Typing {
  /** To the picture that shows the key. */
  key: Spread;
  /** To the picture that shows its answer. */
  answer: Spread;
}

/** Types in every text field of a page on a processor slowed down, 20 keys in each. */
export async function typingIn(page: Page, url: string, answer: string): Promise<Typing> {
  await page.goto(url);
  await page.waitForFunction(() => !document.querySelector('astro-island[ssr][client="load"]'));
  await page.locator(answer).first().waitFor();
  await page.evaluate(watch, answer);
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
  const [kept, answers] = await page.evaluate(() => {
    const held = window as unknown as { kept: Map<number, number>; answers: number[] };
    return [[...held.kept.values()], held.answers] as const;
  });
  await session.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  return { key: spread(kept, keys), answer: spread(answers) };
}

/** A new page as the floor has it; the worker that fetches the whole site is held off. */
export function floorPage(browser: Browser): Promise<Page> {
  return browser.newPage({ viewport: SCREEN, serviceWorkers: 'block' });
}

/** A browser of its own for each kind of measurement: what one leaves behind would slow the other. */
export async function withBrowser<T>(
  args: readonly string[],
  work: (browser: Browser) => Promise<T>,
): Promise<T> {
  const { path: executablePath } = await findBrowser();
  const browser = await chromium.launch({ executablePath, args: [...FLAGS, ...args] });
  try {
    return await work(browser);
  } finally {
    await browser.close();
  }
}

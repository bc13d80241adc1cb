/**
 * What every browser test builds on. Import `test` and `expect` from here: pages then report anything
 * written to the console, any error, and any request that leaves the site, and the test fails for it.
 */
import {
  test as base,
  expect,
  type ConsoleMessage,
  type Page,
  type Request,
} from '@playwright/test';
import { axeFaults } from '../tools/axe';

/** Widths that stand for a narrow phone (and 400 % zoom), a phone, and the floor's PC. */
export const WIDTHS = [320, 390, 1366] as const;

/** Set by `npm run audit`: every page of a kind is asked, not three. */
const EVERY_ONE = Boolean(process.env['EVERY_PAGE_OF_A_KIND']);

/** The first, the middle and the last of `all` for `npm test`, which has ten minutes; all of it for the audit. */
export function someOf<T>(all: readonly T[]): readonly T[] {
  const places = [0, Math.floor(all.length / 2), all.length - 1];
  return EVERY_ONE ? all : all.filter((_, at) => places.includes(at));
}

interface Guards {
  /** Messages a test expects; anything else that the page says fails the test. */
  expected: RegExp[];
  quiet: void;
}

export const test = base.extend<Guards>({
  expected: [[], { option: true }],
  quiet: [
    async ({ page, baseURL, expected }, use) => {
      const said: string[] = [];
      const onConsole = (message: ConsoleMessage): void => {
        // Outside the tests of being without a network the worker is held off, and this is said of it.
        if (message.text() === 'Service Worker registration blocked by Playwright') return;
        said.push(`${message.type()}: ${message.text()} (${message.location().url})`);
      };
      const onError = (error: Error): void => void said.push(`error: ${error.message}`);
      const onRequest = (request: Request): void => {
        const url = request.url();
        const own = url.startsWith(`${baseURL}/`) || /^(data|blob|about):/.test(url);
        if (!own) said.push(`request to another site: ${url}`);
      };
      const onFailure = (request: Request): void => {
        // A page that is left before it has loaded drops its requests; nothing was refused.
        if (request.failure()?.errorText === 'net::ERR_ABORTED') return;
        said.push(`request failed: ${request.url()} ${request.failure()?.errorText ?? ''}`);
      };
      page.on('console', onConsole);
      page.on('pageerror', onError);
      page.on('request', onRequest);
      page.on('requestfailed', onFailure);
      await use();
      // A page may go on to the next test, and takes no ears of this one along.
      page.off('console', onConsole);
      page.off('pageerror', onError);
      page.off('request', onRequest);
      page.off('requestfailed', onFailure);
      const surprises = said.filter((line) => !expected.some((pattern) => pattern.test(line)));
      expect(surprises, 'the page should have nothing to say').toEqual([]);
    },
    { auto: true },
  ],
});

/**
 * For files whose tests only look, and leave nothing in a page or on a device: one page for all tests of
 * a worker. A new one costs as much as what such a test asks of it.
 */
export const testOfLooking = test.extend<object, { lasting: Page }>({
  lasting: [
    async ({ browser }, use, { project }) => {
      const { baseURL, viewport, locale, serviceWorkers } = project.use;
      const page = await browser.newPage({ baseURL, viewport, locale, serviceWorkers });
      await use(page);
      await page.context().close();
    },
    { scope: 'worker' },
  ],
  page: async ({ lasting, viewport }, use) => {
    if (viewport) await lasting.setViewportSize(viewport);
    await use(lasting);
  },
});

export { expect };

/** Waits until every island that starts by itself runs, so that what is tested is what readers use. */
export async function islandsReady(page: Page): Promise<void> {
  const waiting = page.locator('astro-island[ssr]:is([client="load"], [client="idle"])');
  await expect(waiting).toHaveCount(0);
}

/**
 * Waits until the planner's own answer stands in the worked example's place: a press while the two change
 * places falls between them.
 */
export async function planStands(page: Page): Promise<void> {
  await islandsReady(page);
  await expect(page.locator('#example')).toBeHidden();
}

/** Axe finds nothing in the page as it stands, in light and in dark. */
export async function expectAccessible(page: Page): Promise<void> {
  expect(await axeFaults(page), 'axe').toEqual([]);
  await page.emulateMedia({ colorScheme: null, reducedMotion: null });
}

/** What makes the page scroll sideways, outermost first; nothing when it does not. */
export async function tooWide(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const { scrollWidth, clientWidth } = document.documentElement;
    if (scrollWidth <= clientWidth) return [];
    const wide = [...document.querySelectorAll('body *')]
      .map((element) => ({ element, over: element.getBoundingClientRect().right - clientWidth }))
      .filter(({ over }) => over > 0.5)
      .map(({ element, over }) => {
        const classes = element.getAttribute('class')?.replace(/\s+/g, '.') ?? '';
        return `${element.tagName.toLowerCase()}.${classes} by ${Math.round(over)} px`;
      });
    return [`page by ${scrollWidth - clientWidth} px`, ...wide.slice(0, 8)];
  });
}

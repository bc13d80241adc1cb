/**
 * Without a network, in a browser whose worker is let run. Each test has a server of its own on a copy
 * of the build, so that the network can fail, lie and come back, and a newer build can appear.
 */
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import type { IncomingMessage, Server, ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BrowserContext, Page } from '@playwright/test';
import { OFFLINE, NO_NETWORK_PAGE } from '../../components/words/en/offline';
import { writeWorker } from '../../site/build/offline';
import { DIST } from '../tools/pages';
import { siteServer } from '../tools/serve';
import { expect, islandsReady, test as base } from './support';

interface Host {
  address: string;
  folder: string;
  /** Answers a request in the host's place; false lets the host answer. */
  meddle: ((request: IncomingMessage, response: ServerResponse) => boolean) | null;
  /** Pulls the plug, and puts it back. */
  cut: () => Promise<void>;
  mend: () => Promise<void>;
}

function listening(server: Server, port: number): Promise<number> {
  return new Promise((resolve) =>
    server.listen(port, 'localhost', () => resolve((server.address() as AddressInfo).port)),
  );
}

/** Of the pages of single threads, some four hundred, the few that stand for all where time counts. */
const isOneOfMany = (from: string): boolean => {
  const [, name] = /[/\\]threads[/\\]([^/\\]+)$/.exec(from) ?? [];
  return name !== undefined && !/^(m8x1\.25|1-2-13-unc|g1-2|tables|index\.html)$/.test(name);
};

const test = base.extend<{ host: Host; allThreads: boolean }>({
  allThreads: [false, { option: true }],
  host: async ({ allThreads }, use) => {
    const folder = mkdtempSync(join(tmpdir(), 'handbook-'));
    cpSync(DIST, folder, { recursive: true, filter: (from) => allThreads || !isOneOfMany(from) });
    if (!allThreads) await writeWorker(folder);
    const start = (): Server => {
      const server = siteServer(folder);
      const [own] = server.listeners('request') as ((
        request: IncomingMessage,
        response: ServerResponse,
      ) => void)[];
      server.removeAllListeners('request');
      server.on('request', (request, response) => {
        if (!host.meddle?.(request, response)) own!(request, response);
      });
      return server;
    };
    const stop = (running: Server): Promise<void> =>
      new Promise((resolve) => {
        running.close(() => resolve());
        running.closeAllConnections();
      });
    const host: Host = { address: '', folder, meddle: null, cut: stopIt, mend: startIt };
    let server = start();
    const port = await listening(server, 0);
    host.address = `http://localhost:${port}`;
    async function stopIt(): Promise<void> {
      await stop(server);
    }
    async function startIt(): Promise<void> {
      server = start();
      await listening(server, port);
    }
    await use(host);
    await stop(server);
    rmSync(folder, { recursive: true, force: true });
  },
  baseURL: async ({ host }, use) => use(host.address),
});

test.use({
  serviceWorkers: 'allow',
  // The plug is pulled in every test; what the page does about it is what is looked at.
  expected: [/Failed to load resource: net::ERR/, /request failed: .*ERR_(CONNECTION|FAILED)/],
});

const kept = (page: Page) => page.locator('[data-kept]');

/** Waits until all is on the device. */
async function allKept(page: Page): Promise<void> {
  await expect(kept(page)).toHaveText(OFFLINE.all, { timeout: 120_000 });
}

const COVER = 'thread=M10x1.5-6H&work=cast-iron-grey&full=18&hole=blind';

test.describe('with all its threads', () => {
  test.use({ allThreads: true });
  test('first visit, then no network: every kind of page works, and what was typed goes along', async ({
    page,
    host,
  }) => {
    await page.goto('/plan/');
    await allKept(page);
    await host.cut();

    await page.goto('/plan/?thread=M8x1.25-6H');
    await islandsReady(page);
    await page.getByLabel('Thread, as on the drawing').fill('M10x1.5-6H');
    await expect(page.locator('.planner-answer, .answer').first()).toBeVisible();
    await page.reload();
    await expect(page.getByLabel('Thread, as on the drawing')).toHaveValue('M10x1.5-6H');

    for (const address of [
      '/',
      `/plan/card/?${COVER}`,
      '/calculators/',
      '/calculators/torque/',
      '/drawing/',
      '/jobs/',
      '/jobs/drawer/',
      '/broken-taps/',
      '/broken-taps/rework/',
      '/lessons/',
      '/lessons/chamfer-classes/',
      '/teach/chamfer-classes/',
      '/practice/',
      '/review/',
      '/glossary/',
      '/rules-of-thumb/',
      '/safety/',
      '/sources/',
      '/about/',
      '/threads/',
      '/threads/m8x1.25/',
      '/threads/tables/metric-coarse/',
    ]) {
      await page.goto(address);
      await expect(page.locator('h1').first(), address).not.toHaveText(NO_NETWORK_PAGE.heading);
      await islandsReady(page);
    }

    await page.goto('/search/');
    await islandsReady(page);
    await page.getByRole('searchbox').fill('bottoming');
    await expect(
      page
        .locator('main')
        .getByRole('link', { name: /ottoming/ })
        .first(),
    ).toBeVisible();

    // What was never part of it says so, and leads on.
    await page.goto('/threads/m8x9/');
    await expect(page.locator('h1')).toHaveText(NO_NETWORK_PAGE.heading);
    // An address without its last stroke is the same page.
    await page.goto('/plan?thread=M6x1-6H');
    await expect(page).toHaveURL(/\/plan\/\?thread=M6x1-6H/);
  });
});

test('the network fails half way: what has come stays, the rest comes when it is back', async ({
  page,
  host,
}) => {
  let served = 0;
  let cutAfter = 60;
  host.meddle = (_request, response) => {
    served += 1;
    if (served <= cutAfter) return false;
    response.destroy();
    return true;
  };
  await page.goto('/plan/');
  await expect(kept(page)).toHaveText(OFFLINE.failed);
  const before = served;
  expect(before).toBeGreaterThan(50);

  cutAfter = Infinity;
  served = 0;
  await page.goto('/plan/');
  await allKept(page);
  // Of the pages and files kept before the break none is asked for twice.
  const names = await page.evaluate(async () => (await caches.open('handbook')).keys());
  expect(names.length).toBeGreaterThan(100);
});

test('a network’s sign-in page, or half a file, is never kept as a page of ours', async ({
  page,
  host,
}) => {
  let lying = true;
  host.meddle = (request, response) => {
    if (!lying || !request.url?.startsWith('/lessons/')) return false;
    response.writeHead(200, { 'content-type': 'text/html' }).end('<h1>Please sign in</h1>');
    return true;
  };
  await page.goto('/plan/');
  await expect(kept(page)).toHaveText(OFFLINE.failed);
  const texts = await page.evaluate(async () => {
    const cache = await caches.open('handbook');
    const responses = await Promise.all(
      (await cache.keys()).map((request) => cache.match(request)),
    );
    return Promise.all(responses.map((response) => response!.text()));
  });
  expect(texts.filter((text) => text.includes('Please sign in'))).toEqual([]);
  lying = false;
  await page.goto('/plan/');
  await allKept(page);
});

test('thread pages thrown away by the browser, and pages too, come back', async ({
  page,
  host,
}) => {
  await page.goto('/plan/');
  await allKept(page);
  await page.evaluate(async () => {
    for (const name of ['handbook', 'handbook-threads']) {
      const cache = await caches.open(name);
      const requests = await cache.keys();
      await Promise.all(requests.filter((_, index) => index % 3 === 0).map((r) => cache.delete(r)));
    }
  });
  await page.goto('/calculators/torque/');
  await allKept(page);
  await host.cut();
  await page.goto('/threads/m8x1.25/');
  await expect(page.locator('h1')).toContainText('M8');
});

/** A newer build at the same address: a word of one page is another, and the worker knows. */
async function publish(host: Host): Promise<void> {
  const file = join(host.folder, 'safety/index.html');
  writeFileSync(file, readFileSync(file, 'utf8').replace('</h1>', ', second edition</h1>'));
  await writeWorker(host.folder);
}

/** What half a minute is to a browser that no debugger is at. */
const REST = 5000;

/**
 * Presses *Open it now*, and stops the older worker once nothing has been asked of it for a while. A
 * request that comes while the browser stops it to let the newer one in starts it again, and then the
 * newer one waits until it is stopped for having nothing to do; but never while a debugger is at it, as here.
 */
async function take(context: BrowserContext, page: Page): Promise<void> {
  const browser = await context.newCDPSession(page);
  const workers = new Map<string, { status: string; runningStatus: string }>();
  browser.on('ServiceWorker.workerVersionUpdated', ({ versions }) => {
    for (const version of versions) workers.set(version.versionId, version);
  });
  await browser.send('ServiceWorker.enable');
  let asked = Date.now();
  const again = (): void => void (asked = Date.now());
  context.on('request', again);
  context.on('requestfinished', again);
  await page.locator('[data-newer]').getByRole('button', { name: OFFLINE.use }).click();
  const rests = setInterval(() => {
    const all = [...workers];
    if (!all.some(([, { status }]) => status === 'installed')) return clearInterval(rests);
    if (Date.now() - asked < REST) return;
    const older = all.find(
      ([, { status, runningStatus }]) => status === 'activated' && runningStatus === 'running',
    );
    if (older)
      void browser.send('ServiceWorker.stopWorker', { versionId: older[0] }).catch(() => {});
  }, 1000);
  context.once('close', () => clearInterval(rests));
}

async function lookAgain(context: BrowserContext, page: Page): Promise<void> {
  await page.evaluate(async () => (await navigator.serviceWorker.ready).update());
  expect(context.pages().length).toBeGreaterThan(0);
}

test('a newer copy waits until it is taken, reloads nothing by itself, and loses nothing typed', async ({
  page,
  context,
  host,
}) => {
  await page.goto('/plan/');
  await allKept(page);
  await page.getByLabel('Thread, as on the drawing').fill('M12x1.75-6H');
  const other = await context.newPage();
  await other.goto('/calculators/torque/');
  await islandsReady(other);

  await publish(host);
  await lookAgain(context, page);
  const note = page.locator('[data-newer]');
  await expect(note).toContainText(OFFLINE.newer);
  // The old copy goes on answering meanwhile.
  const third = await context.newPage();
  await third.goto('/safety/');
  await expect(third.locator('h1')).not.toContainText('second edition');
  await third.close();
  await expect(page.getByLabel('Thread, as on the drawing')).toHaveValue('M12x1.75-6H');

  await page.getByLabel('Thread, as on the drawing').fill('M12x1.5-6H');
  await take(context, page);
  await expect(note).toBeEmpty();
  await islandsReady(page);
  await expect(page.getByLabel('Thread, as on the drawing')).toHaveValue('M12x1.5-6H');

  // The other window is told, not reloaded; the one that took the copy need not be told.
  await expect(other.locator('[data-newer]')).toContainText(OFFLINE.replaced);
  await expect(page.locator('[data-newer]')).toBeEmpty();
  await host.cut();
  await page.goto('/safety/');
  await expect(page.locator('h1')).toContainText('second edition');
});

for (const opened of ['commit', 'domcontentloaded', 'load'] as const) {
  test(`a window opened just before a newer copy takes over is told of it (${opened})`, async ({
    page,
    context,
    host,
  }) => {
    await page.goto('/plan/');
    await allKept(page);
    await publish(host);
    await lookAgain(context, page);
    const use = page.locator('[data-newer]').getByRole('button', { name: OFFLINE.use });
    await expect(use).toBeVisible();

    const late = await context.newPage();
    await late.goto('/calculators/torque/', { waitUntil: opened });
    await take(context, page);
    await expect(late.locator('[data-newer]')).toContainText(OFFLINE.replaced);
    await islandsReady(late);
    // Taking it from there is a matter of loading the page again.
    await late.getByRole('button', { name: OFFLINE.reload }).click();
    await expect(late.locator('[data-newer]')).toBeEmpty();
    await late.goto('/safety/');
    await expect(late.locator('h1')).toContainText('second edition');
  });
}

test('the first copy takes a window over without a word', async ({ page, context }) => {
  await page.goto('/plan/');
  const other = await context.newPage();
  await other.goto('/calculators/torque/');
  await allKept(page);
  await allKept(other);
  await expect(page.locator('[data-newer]')).toBeEmpty();
  await expect(other.locator('[data-newer]')).toBeEmpty();
});

test('where the device keeps nothing the pages work and say nothing of it', async ({
  page,
  context,
}) => {
  await context.addInitScript(() => {
    Object.defineProperty(ServiceWorkerContainer.prototype, 'register', {
      value: () => Promise.reject(new DOMException('storage is off', 'SecurityError')),
    });
  });
  await page.goto('/plan/?thread=M8x1.25-6H');
  await islandsReady(page);
  await page.waitForTimeout(2000);
  await expect(kept(page)).toBeHidden();
});

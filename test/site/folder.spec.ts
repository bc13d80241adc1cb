/**
 * The copy that opens from a folder, by `file://`: the same journeys in Chromium and, where it is
 * installed, in Firefox, which Playwright cannot drive as it is and another library can.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, globSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { chromium, expect, test as base } from '@playwright/test';
import { unzipSync } from 'fflate';
import puppeteer from 'puppeteer-core';
import { writeFolder } from '../../site/build/folder';
import { fileOf } from '../../site/folder/start';
import { FLAGS } from '../browser.mjs';
import { DIST } from '../tools/pages';

/** What a journey asks of a browser, whichever it is. */
interface Visitor {
  open: (address: string) => Promise<void>;
  fill: (label: string, text: string) => Promise<void>;
  select: (label: string, value: string) => Promise<void>;
  press: (role: 'button' | 'link' | 'radio', name: string) => Promise<void>;
  /** All that the page shows in its main part. */
  text: () => Promise<string>;
  value: (label: string) => Promise<string>;
  address: () => Promise<string>;
  reload: () => Promise<void>;
  back: () => Promise<void>;
  print: () => Promise<Uint8Array>;
  /** Runs in the page. */
  ask: <T>(question: () => T) => Promise<T>;
  /** Console messages, errors, and requests for anything but files. */
  said: string[];
  leave: () => Promise<void>;
}

/** A copy opened by double-click has no server: neither has a test of it. */
async function inChromium(root: string): Promise<Visitor> {
  const browser = await chromium.launch({
    ...(process.env['TESTS_BROWSER'] ? { executablePath: process.env['TESTS_BROWSER'] } : {}),
    args: FLAGS,
  });
  const page = await browser.newPage({ viewport: { width: 1366, height: 768 } });
  const said: string[] = [];
  page.on('console', (message) => said.push(message.text()));
  page.on('pageerror', ({ message }) => said.push(message));
  page.on('request', (request) => {
    if (!/^(file|data|blob):/.test(request.url())) said.push(request.url());
  });
  return {
    open: async (address) => void (await page.goto(root + fileOf(address))),
    fill: (label, text) => page.getByLabel(label, { exact: true }).first().fill(text),
    select: async (label, value) =>
      void (await page.getByLabel(label, { exact: true }).first().selectOption(value)),
    press: async (role, name) => {
      const found = page.getByRole(role, { name, exact: true }).first();
      // The tile around a radio button takes the press.
      if (role === 'radio') await found.check({ force: true });
      else await found.click();
    },
    text: () => page.locator('main').innerText(),
    value: (label) => page.getByLabel(label, { exact: true }).first().inputValue(),
    address: () => Promise.resolve(page.url()),
    reload: async () => void (await page.reload()),
    back: async () => void (await page.goBack()),
    print: () => page.pdf({ format: 'A4' }),
    ask: (question) => page.evaluate(question),
    said,
    leave: () => browser.close(),
  };
}

async function inFirefox(root: string, program: string): Promise<Visitor> {
  const browser = await puppeteer.launch({ browser: 'firefox', executablePath: program });
  const page = await browser.newPage();
  await page.setViewport({ width: 1366, height: 768 });
  const said: string[] = [];
  page.on('console', (message) => said.push(message.text()));
  page.on('pageerror', (error) => said.push(error instanceof Error ? error.message : 'an error'));
  page.on('request', (request) => {
    if (!/^(file|data|blob):/.test(request.url())) said.push(request.url());
  });
  /** The first field with this label, as a reader would name it. */
  const field = (label: string) =>
    page.locator(`::-p-xpath(//*[@id=//label[normalize-space()="${label}"]/@for])`);
  return {
    open: async (address) => void (await page.goto(root + fileOf(address))),
    // As a hand does it: its own way of filling adds to what stands there.
    fill: async (label, text) => {
      await field(label).click({ count: 3 });
      await page.keyboard.type(text);
    },
    select: (label, value) => field(label).fill(value),
    press: async (role, name) => {
      if (role === 'radio') await page.locator(`label ::-p-text(${name})`).click();
      else await page.locator(`::-p-aria([name="${name}"][role="${role}"])`).click();
    },
    // Asked in the middle of a change of page there is no answer yet.
    text: () =>
      page.evaluate(() => document.querySelector('main')?.innerText ?? '').catch(() => ''),
    value: (label) =>
      field(label)
        .map((found) => (found as HTMLInputElement).value)
        .wait(),
    address: () => Promise.resolve(page.url()),
    reload: async () => void (await page.reload()),
    back: async () => void (await page.goBack()),
    print: () => page.pdf({ format: 'A4' }),
    ask: (question) => page.evaluate(question) as Promise<never>,
    said,
    leave: () => browser.close(),
  };
}

/** A Firefox of this machine, or nothing. */
function firefox(): string | null {
  const names = [process.env['FIREFOX_PATH'], 'firefox-esr', 'firefox'].filter((name) => name);
  const mac = '/Applications/Firefox.app/Contents/MacOS/firefox';
  const works = (name: string) => spawnSync(name, ['--version'], { stdio: 'ignore' }).status === 0;
  const found = [...(names as string[]), mac].find(works);
  if (!found || found.includes('/')) return found ?? null;
  return spawnSync('which', [found], { encoding: 'utf8' }).stdout.trim() || null;
}

interface Made {
  folder: string;
  zip: string;
  bytes: number;
  packed: number;
}

// The first argument names what a fixture stands on: this one stands on nothing.
const test = base.extend<object, { made: Made }>({
  made: [
    // oxlint-disable-next-line no-empty-pattern
    async ({}, use) => {
      const out = mkdtempSync(join(tmpdir(), 'handbook folder #1 ')); // as people name folders
      await use(await writeFolder(DIST, out));
      rmSync(out, { recursive: true, force: true });
    },
    { scope: 'worker' },
  ],
});

const HOLE = 'thread=M8x1.25-6H&hole=blind&depth=16&material=al-wrought';
const THREAD = 'Thread, as on the drawing';

const BROWSERS = {
  Chromium: inChromium,
  Firefox: (root: string) => {
    const program = firefox();
    base.skip(program === null, 'no Firefox on this machine: set FIREFOX_PATH to try it');
    return inFirefox(root, program!);
  },
};

for (const [name, start] of Object.entries(BROWSERS)) {
  test(`${name}: plan, drawing, print, search, jobs, by double-click`, async ({ made }) => {
    const visitor = await start(pathToFileURL(`${made.folder}/`).href);
    const shows = (text: string | RegExp) => expect.poll(() => visitor.text()).toMatch(text);
    try {
      await visitor.open('/');
      await shows(/Plan/);
      // The type is the page's own.
      expect(await visitor.ask(() => [...document.fonts].some((f) => f.status === 'loaded'))).toBe(
        true,
      );

      // Plan: typed, answered, kept in the address, there again after a reload.
      await visitor.open(`/plan/?${HOLE}`);
      await shows(/6\.8 mm/);
      await visitor.fill(THREAD, 'M10x1.5-6H');
      await shows(/8\.5 mm/);
      await expect.poll(() => visitor.address()).toContain('M10x1.5-6H');
      await visitor.reload();
      await expect.poll(() => visitor.value(THREAD)).toBe('M10x1.5-6H');
      await shows(/8\.5 mm/);

      // The card, on paper; its code would lead a phone nowhere.
      await visitor.press('link', 'Print the job card');
      await shows(/M10x1\.5-6H/);
      expect(await visitor.address()).toContain('plan/card/index.html?');
      const paper = await visitor.print();
      expect(new TextDecoder('latin1').decode(paper.slice(0, 5))).toBe('%PDF-');
      expect(await visitor.ask(() => document.querySelectorAll('.card-address').length)).toBe(0);

      // A whole drawing, kept with the jobs.
      await visitor.open('/drawing/');
      await visitor.press('button', 'Try it with the example');
      await shows(/Ready\. /);
      await visitor.press('button', 'Keep it on this device');
      await shows(/Kept\. It is on the page of jobs\./);
      await visitor.open('/jobs/');
      await shows(/Housing lid HL-118/);
      await visitor.reload();
      await shows(/Housing lid HL-118/);

      // Search, with its index inside the page, leads to files.
      await visitor.open('/search/');
      await visitor.fill('What are you looking for?', 'm8 drill');
      await shows(/M8 coarse/);
      const first = await visitor.ask(
        () => document.querySelector<HTMLAnchorElement>('[aria-label="Matches"] a')?.href ?? '',
      );
      expect(first).toMatch(/^file:.*\/threads\/m8x1\.25\/index\.html$/);

      // A thread by typing it; Enter follows the link that stands there.
      await visitor.open('/threads/');
      await visitor.fill('Thread', 'M8');
      await shows(/Open/);
      await visitor.ask(() => document.querySelector<HTMLElement>('.found a.button')!.click());
      await expect.poll(() => visitor.address()).toMatch(/\/threads\/m8x1\.25\/index\.html$/);

      // A lesson's figure, and a class screen.
      await visitor.open('/lessons/chamfer-classes/');
      await expect.poll(() => visitor.ask(() => document.querySelectorAll('[ssr]').length)).toBe(0);
      await visitor.open('/teach/chamfer-classes/');
      await expect.poll(() => visitor.ask(() => document.querySelectorAll('[ssr]').length)).toBe(0);
      await shows(/chamfer/);

      // Links made by script are files too.
      await visitor.open(`/plan/?${HOLE}`);
      await shows(/6\.8 mm/);
      await expect
        .poll(() => visitor.ask(() => document.querySelectorAll('a[href^="/"]').length))
        .toBe(0);
      expect(visitor.said).toEqual([]);
    } finally {
      await visitor.leave();
    }
  });
}

test('every link of every page is a file of the folder, and every page states its policy', ({
  made,
}) => {
  const dead: string[] = [];
  const pages = globSync('**/*.html', { cwd: made.folder });
  expect(pages.length).toBeGreaterThan(450);
  for (const page of pages) {
    const path = join(made.folder, page);
    const html = readFileSync(path, 'utf8');
    for (const [, to] of html.matchAll(/\s(?:href|src|action)="([^"#?]*)[^"]*"/g)) {
      if (to === '' || /^(data|blob|mailto):/.test(to!)) continue;
      const file = resolve(dirname(path), decodeURIComponent(to!));
      if (
        to!.startsWith('/') ||
        !file.startsWith(made.folder) ||
        !existsSync(file) ||
        to!.endsWith('/')
      )
        dead.push(`${page}: ${to}`);
    }
    const policy = /http-equiv="content-security-policy" content="([^"]*)"/.exec(html)?.[1] ?? '';
    expect(policy, page).toContain("default-src 'self'");
    expect(policy, page).toContain("script-src 'self';");
    expect(policy, page).not.toMatch(/unsafe|http|\*/);
    // No script stands in a page; what stands there is the search's data.
    expect(html.match(/<script(?! defer src="| type="application\/json")/g), page).toBeNull();
  }
  expect(dead).toEqual([]);
});

test('the zip holds the folder, whole, and says how to open it', ({ made }) => {
  const files = unzipSync(readFileSync(made.zip));
  const names = Object.keys(files);
  expect(names.every((name) => name.startsWith('tapped-hole-handbook/'))).toBe(true);
  expect(names).toContain('tapped-hole-handbook/index.html');
  expect(new TextDecoder().decode(files['tapped-hole-handbook/READ-ME.txt'])).toContain(
    'Open index.html by double-click',
  );
  const whole = globSync('**/*', { cwd: made.folder, withFileTypes: true }).filter((f) =>
    f.isFile(),
  );
  expect(names).toHaveLength(whole.length);
  // What fits a mail, and a stick of any age.
  expect(made.packed).toBeLessThan(6e6);
  expect(made.bytes).toBeLessThan(20e6);
});

/** `npm run pictures`: the README's pictures, taken from the built site as a reader would see it. */
import { chromium, type Page } from '@playwright/test';
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { findBrowser, FLAGS } from '../browser.mjs';
import { ROOT } from './modules.ts';
import { listen, siteServer } from './serve.ts';

const FOLDER = join(ROOT, 'site/pictures');
/** The hole of the worked example: M8 in austenitic stainless, blind, with a floor to stay off. */
const HOLE = process.env['PICTURE_ADDRESS'] ?? 'plan/';

interface Picture {
  name: string;
  path: string;
  width: number;
  height: number;
  media?: 'print';
}

const PICTURES: Picture[] = [
  { name: 'planner', path: HOLE, width: 1366, height: 900 },
  { name: 'planner-phone', path: HOLE, width: 390, height: 844 },
  { name: 'job-card', path: HOLE, width: 794, height: 1123, media: 'print' },
  { name: 'lesson', path: 'lessons/planning-a-blind-hole/', width: 1366, height: 900 },
];

async function take(page: Page, address: string, picture: Picture): Promise<void> {
  await page.setViewportSize({ width: picture.width, height: picture.height });
  await page.emulateMedia({ media: picture.media ?? 'screen', colorScheme: 'light' });
  await page.goto(address + picture.path);
  await page.evaluate(() => document.fonts.ready);
  await page.waitForFunction(() => !document.querySelector('astro-island[ssr][client="load"]'));
  await page.screenshot({ path: join(FOLDER, `${picture.name}.png`) });
}

mkdirSync(FOLDER, { recursive: true });
const server = siteServer();
const address = await listen(server, 4420);
const { path: executablePath } = await findBrowser();
const browser = await chromium.launch({ executablePath, args: FLAGS });
try {
  const page = await browser.newPage();
  for (const picture of PICTURES) {
    await take(page, address, picture);
    console.log(`site/pictures/${picture.name}.png`);
  }
} finally {
  await browser.close();
  server.close();
}

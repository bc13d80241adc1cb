/** `npm run pictures`: the README's pictures, taken from the built site as a reader would see it. */
import { chromium, type Page } from '@playwright/test';
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { findBrowser, FLAGS } from '../browser.mjs';
import { ROOT } from './modules.ts';
import { listen, siteServer } from './serve.ts';

const FOLDER = join(ROOT, 'site/pictures');
/** M8 in austenitic stainless, blind, with a floor to stay off: what the pictures plan. */
const HOLE =
  '?thread=M8x1.25-6H&hole=blind&depth=16&limit=22&at=shoulder&material=stainless-austenitic&torque=30';
const JOB = '&job=4471&part=Pump+cover+PC-16&operation=30&machine=VMC-B&holes=6';

interface Picture {
  name: string;
  path: string;
  width: number;
  height: number;
  media?: 'print';
  /** What to scroll to; the top of the page without it. */
  at?: string;
}

const PICTURES: Picture[] = [
  { name: 'planner', path: `plan/${HOLE}`, width: 1366, height: 900 },
  { name: 'planner-phone', path: `plan/${HOLE}`, width: 390, height: 844, at: '.answer' },
  { name: 'job-card', path: `plan/card/${HOLE}${JOB}`, width: 794, height: 900, media: 'print' },
  { name: 'lesson', path: 'lessons/blind-holes/', width: 1366, height: 900, at: '.fig-chart' },
];

async function take(page: Page, address: string, picture: Picture): Promise<void> {
  await page.setViewportSize({ width: picture.width, height: picture.height });
  await page.emulateMedia({ media: picture.media ?? 'screen', colorScheme: 'light' });
  await page.goto(address + picture.path);
  await page.evaluate(() => document.fonts.ready);
  await page.waitForFunction(() => !document.querySelector('astro-island[ssr][client="load"]'));
  if (picture.at) {
    await page
      .locator(picture.at)
      .first()
      .evaluate((element) => window.scrollTo(0, element.getBoundingClientRect().top - 24));
    await page.waitForTimeout(500); // parts that start when they come into view
  }
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

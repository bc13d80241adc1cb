/**
 * The first screen of the main pages in three sizes and two themes, against pictures that a person looked
 * at: `npm run snapshots`. Not part of `npm test`: another browser or system draws letters a little
 * otherwise, and a picture is no judge of what is right. Look at what differs, then keep it with
 * `npm run snapshots -- --update-snapshots`.
 */
import { expect, test } from '@playwright/test';

const HOLE =
  '?thread=M8x1.25-6H&hole=blind&depth=16&limit=22&at=shoulder&material=stainless-austenitic&torque=30';
const JOB = '&job=4471&part=Pump+cover+PC-16&operation=30&machine=VMC-B&holes=6';

const PAGES: Readonly<Record<string, string>> = {
  home: '',
  planner: `plan/${HOLE}`,
  card: `plan/card/${HOLE}${JOB}`,
  calculator: 'calculators/blind-hole-depth/',
  lesson: 'lessons/blind-holes/',
  thread: 'threads/m8x1.25/',
  'broken-taps': 'broken-taps/',
  sources: 'sources/',
  'planner-es': `es/plan/${HOLE}`,
};

const SIZES = [
  { width: 390, height: 844 },
  { width: 1366, height: 768 },
  { width: 1920, height: 1080 },
];

for (const [name, path] of Object.entries(PAGES)) {
  for (const viewport of SIZES) {
    for (const colorScheme of ['light', 'dark'] as const) {
      test(`${name} ${viewport.width} ${colorScheme}`, async ({ page }) => {
        await page.clock.setFixedTime(new Date('2026-11-02T08:00:00'));
        await page.setViewportSize(viewport);
        await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
        await page.goto(path);
        await page.evaluate(() => document.fonts.ready);
        await page.waitForFunction(
          () => !document.querySelector('astro-island[ssr][client="load"]'),
        );
        await expect(page.getByText(/^(One moment|Un momento)/)).toHaveCount(0);
        await expect(page).toHaveScreenshot(`${name}-${viewport.width}-${colorScheme}.png`);
      });
    }
  }
}

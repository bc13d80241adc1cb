/** Torque, tap strength and spindle in a browser: what is kept on the device, what opens, the lesson. */

import type { Page } from '@playwright/test';
import { expect, expectAccessible, islandsReady, test, tooWide } from './support';

const JOB = '?thread=M8x1.25&tap=spiral-flute&depth=16&material=stainless-austenitic';

const answer = (page: Page) => page.getByRole('region', { name: 'Answer', exact: true });

async function open(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await islandsReady(page);
}

test.describe('a torque read on the machine', () => {
  test('is kept with its machine, scales the next visit, and goes when it is removed', async ({
    page,
  }) => {
    await open(page, `/calculators/torque/${JOB}&measured=6`);
    await expect(answer(page).locator('.answer')).toContainText('6.0 N·m');
    await page.getByLabel('Machine it was read on').fill('VMC-A');
    await page.getByRole('button', { name: 'Keep it on this device' }).press('Enter');
    await expect(page.getByText('Kept on this device.')).toBeVisible();

    await open(page, `/calculators/torque/${JOB}`);
    const shop = answer(page).locator('.shop');
    await expect(shop.getByRole('heading', { name: /^On VMC-A: 1\.2\d times/ })).toBeVisible();
    await expect(shop).toContainText('6.0 N·m');

    await open(
      page,
      '/calculators/torque/?thread=M10&tap=spiral-flute&depth=16&material=steel-low',
    );
    await expect(answer(page).locator('.shop')).not.toContainText('VMC-A');

    await open(page, `/calculators/torque/${JOB}`);
    await page.getByRole('button', { name: /^Remove/ }).click();
    await expect(answer(page).locator('.shop')).not.toContainText('VMC-A');
    await page.reload();
    await islandsReady(page);
    await expect(answer(page).locator('.answer')).toContainText('N·m sharp');
    await expect(answer(page).locator('.shop')).not.toContainText('VMC-A');
  });

  test('in the address it comes back with the page', async ({ page }) => {
    await open(page, `/calculators/torque/${JOB}&measured=20+%25&spindle=30&edge=worn`);
    await expect(answer(page)).toContainText('Scaled to what you read');
    await expect(page.getByLabel('What you read')).toHaveValue('20 %');
    await expect(page.getByRole('radio', { name: 'worn' })).toBeChecked();
  });
});

test.describe('further into the torque', () => {
  const MORE = `${JOB}&cross=5&crossAt=8&fluid=dry&own=Blue+rack&kc=2100`;

  test('what is folded opens, and all of it can be reached and read', async ({ page }) => {
    await open(page, `/calculators/torque/${MORE}`);
    // Until the reckoning has loaded, the page shows the example: what is opened there goes with it.
    await expect(answer(page)).toContainText('Blue rack');
    for (const name of ['What moves it most', 'The load on every tooth', 'The chamfer classes']) {
      await answer(page).locator('summary', { hasText: name }).press('Enter');
    }
    await expect(page.getByText(/is the biggest unknown in this torque/).first()).toBeVisible();
    await expect(page.getByText(/The first tooth takes/).first()).toBeVisible();
    await expect(page.getByText('The classes hardly differ in torque').first()).toBeVisible();
    await expectAccessible(page);
    for (const width of [320, 390]) {
      await page.setViewportSize({ width, height: 844 });
      expect(await tooWide(page)).toEqual([]);
    }
  });

  test('a wrong number stands with its complaint, and what was typed stays', async ({ page }) => {
    await open(page, `/calculators/torque/${JOB}&nose=7.9`);
    await expect(page.locator('#field-nose-problem')).toContainText('smaller than the hole');
    await expect(page.locator('#field-nose')).toHaveValue('7.9');
    await expect(answer(page)).toContainText('No answer yet');
  });
});

test('a spindle that is too weak gets a no, never a slower speed', async ({ page }) => {
  const points = encodeURIComponent('60 30; 3500 30; 10000 10.5');
  const job = `thread=M30&tap=spiral-point&material=steel-medium&depth=45&points=${points}`;
  await open(page, `/calculators/spindle/?${job}`);
  await expect(answer(page).locator('.answer.stop')).toContainText('No: a worn tap needs');
  await expect(answer(page)).toContainText(/kW of the 11 kW/);
});

test.describe('the lesson on torque', () => {
  test('draws its first stroke before any script, and holds no dead control without it', async ({
    browser,
    baseURL,
  }) => {
    const context = await browser.newContext({ javaScriptEnabled: false, baseURL });
    const page = await context.newPage();
    await page.goto('/lessons/torque/');
    await expect(page.locator('.explorer svg.fig-svg').first()).toBeAttached();
    await expect(page.getByText('Going in', { exact: false }).first()).toBeAttached();
    for (const button of await page.locator('main button').all()) {
      await expect(button).toBeHidden();
    }
    await context.close();
  });

  test('takes another tap by keyboard and says its torque', async ({ page }) => {
    await page.goto('/lessons/torque/');
    const explorer = page.locator('.explorer').first();
    await explorer.scrollIntoViewIfNeeded();
    const island = explorer.locator('xpath=ancestor::astro-island[1]');
    await expect(island).not.toHaveAttribute('ssr', /.*/);
    await expect(explorer.getByRole('radio', { name: 'Spiral flute' })).toBeChecked();
    const told = explorer.getByRole('status');
    const before = await told.textContent();
    await explorer.getByRole('radio', { name: 'Spiral flute' }).press('ArrowLeft');
    await expect(explorer.getByRole('radio', { name: 'Spiral point' })).toBeChecked();
    await expect(told).not.toHaveText(before ?? '');
  });

  test('is accessible with everything running, and fits a phone', async ({ page }) => {
    await page.goto('/lessons/torque/');
    for (const island of await page.locator('main astro-island').all()) {
      await island.scrollIntoViewIfNeeded();
      await expect(island).not.toHaveAttribute('ssr', /.*/);
    }
    await expectAccessible(page);
    await page.setViewportSize({ width: 390, height: 844 });
    expect(await tooWide(page)).toEqual([]);
    await expect(page.locator('main')).not.toContainText('For the instructor');
  });
});

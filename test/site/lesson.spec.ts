/** The lessons as a learner meets them: guess, try, answer, by mouse and by keyboard alone, and without script. */

import type { Locator, Page } from '@playwright/test';
import { allPages } from '../tools/pages';
import { expect, expectAccessible, someOf, test, tooWide, WIDTHS } from './support';

const LESSONS = allPages().flatMap((page) => /^\/lessons\/([^/]+)\/$/.exec(page)?.[1] ?? []);

/** Brings a part into view and waits until the islands in it run: they start when they are seen. */
async function awake(part: Locator): Promise<void> {
  await part.scrollIntoViewIfNeeded();
  const island = part.locator('xpath=ancestor::astro-island[1]');
  await expect(island).not.toHaveAttribute('ssr', /.*/);
}

async function wakeAll(page: Page): Promise<void> {
  for (const island of await page.locator('main astro-island').all()) {
    await island.scrollIntoViewIfNeeded();
    await expect(island).not.toHaveAttribute('ssr', /.*/);
  }
}

test.describe('the course', () => {
  test('lists its lessons in order, each with its question', async ({ page }) => {
    await page.goto('/lessons/');
    const links = page.locator('main h2 a');
    await expect(links.first()).toHaveText('Naming a tap, and where its chips go');
    for (const slug of LESSONS) {
      await expect(page.locator(`main a[href="/lessons/${slug}/"]`)).toHaveCount(1);
    }
  });

  for (const slug of someOf(LESSONS)) {
    test(`${slug} is accessible when everything runs, and fits a phone`, async ({ page }) => {
      await page.goto(`/lessons/${slug}/`);
      await expect(page).toHaveTitle(/\S/);
      await expect(page.locator('h1')).toHaveCount(1);
      // Minutes and notes are for whoever teaches: a learner would only feel slow.
      await expect(page.locator('main')).not.toContainText('For the instructor');
      await expect(page.locator('main')).not.toContainText(/\b(forty-five|fifty) minutes\b/);
      await wakeAll(page);
      await expectAccessible(page);
      for (const width of WIDTHS) {
        await page.setViewportSize({ width, height: 844 });
        expect(await tooWide(page), `at ${width} px`).toEqual([]);
      }
    });
  }
});

test.describe('planning a blind hole', () => {
  test.beforeEach(async ({ page }) => {
    await page.goto('/lessons/blind-holes/');
  });

  test('a guess opens the controls, and stays on the chart', async ({ page }) => {
    const guess = page.getByLabel(/Shoulder depth, your guess/);
    await awake(guess);
    const explorer = page.locator('.explorer').first();
    await expect(explorer.getByRole('button', { name: 'More: Full thread' })).toHaveCount(0);
    await expect(explorer.locator('svg.fig-svg')).toHaveCount(0);
    await guess.fill('25');
    await guess.press('Enter');
    await expect(explorer.locator('.told')).toContainText('whole for certain only to 15.0 mm');
    await expect(explorer.locator('.told')).toBeFocused();
    await expect(explorer.locator('svg:visible')).toContainText('your guess 25.0 mm');
    await explorer.getByRole('button', { name: 'More: Full thread' }).click();
    await expect(explorer.locator('.told')).toContainText('21.0 mm of full thread');
  });

  test('all four controls by keyboard alone', async ({ page }) => {
    const explorer = page.locator('.explorer').nth(1);
    await awake(explorer.getByLabel('M8x1.25-6H'));
    const told = explorer.locator('.told');
    await expect(told).toContainText('It fits, with 1.0 mm to spare.');
    await explorer.getByLabel('2–3 threads').focus();
    await page.keyboard.press('ArrowLeft');
    await expect(told).toContainText('deeper than the drawing allows');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Tab');
    await page.keyboard.press('ControlOrMeta+A');
    await page.keyboard.type('12,5');
    await expect(told).toContainText('12.5 mm of full thread');
    await expect(told).toContainText('It fits');
    await page.keyboard.press('ControlOrMeta+A');
    await page.keyboard.type('900');
    await expect(explorer.getByText(/Enter a number between 4.0 mm and 20.0 mm/)).toBeVisible();
    await expect(explorer.locator('.fig-svg:visible')).toHaveCount(0);
  });

  test('the whole page turns to inches', async ({ page }) => {
    const explorer = page.locator('.explorer').nth(1);
    await awake(explorer.getByLabel('M8x1.25-6H'));
    await page.locator('header').getByText('inch', { exact: true }).click();
    await expect(explorer.locator('.told')).toContainText('0.630 in of full thread');
  });

  test('a link opens the planner with the same hole', async ({ page }) => {
    await page.getByRole('link', { name: /Open the pump housing in the planner/ }).click();
    await expect(page.locator('.answer').first()).toContainText('shoulder 21.0 mm deep');
  });

  test('an answer may come in either unit and with either decimal mark', async ({ page }) => {
    const field = page.locator('#bracket-field');
    await awake(field);
    const feedback = page.locator('form', { has: field }).getByRole('status');
    await field.fill('15');
    await field.press('Enter');
    await expect(feedback).toContainText('the stop clearance is missing');
    await field.fill('0,63 in');
    await field.press('Enter');
    await expect(feedback).toContainText('Right.');
  });

  test('steps are put in order by keyboard, and the focus goes along', async ({ page }) => {
    const form = page.locator('form:has(.steps)');
    await awake(form.locator('.steps'));
    const move = form.getByRole('button', { name: /Move up: Read full thread/ });
    await move.focus();
    await page.keyboard.press('Enter');
    await expect(form.locator('li').first()).toContainText('Read full thread');
    await expect(move).toBeFocused();
    await form.getByRole('button', { name: 'Check', exact: true }).click();
    await expect(form.locator('.feedback')).toContainText('Look at number 2.');
  });
});

test.describe('naming a tap', () => {
  test('the face turns by buttons, and the left hand mirrors it', async ({ page }) => {
    await page.goto('/lessons/naming-a-tap/');
    const turner = page.locator('.turner').nth(1);
    await awake(turner.getByLabel('left-hand thread'));
    await expect(turner.locator('.told')).toContainText('draws the chip back');
    await turner.getByText('left-hand thread', { exact: true }).click();
    await expect(turner.locator('.told')).toContainText('ahead of the tap');
    await turner.getByRole('textbox', { name: /Lean of the cutting face/ }).fill('0');
    await expect(turner.locator('.told')).toContainText('lies in the flute');
  });
});

test.describe('chamfer classes', () => {
  test('thin plate bends the torque', async ({ page }) => {
    await page.goto('/lessons/chamfer-classes/');
    const explorer = page.locator('.explorer').nth(1);
    const thickness = explorer.getByRole('textbox', { name: /Thickness of the work/ });
    await awake(thickness);
    await thickness.fill('2.5');
    await expect(explorer.locator('.told')).toContainText('holds 47 % of that chamfer');
    await expect(explorer.locator('svg:visible')).toContainText(
      'chamfer as long as the work is thick',
    );
  });
});

test.describe('without script', () => {
  test.use({ javaScriptEnabled: false });

  for (const slug of LESSONS) {
    test(`${slug} keeps its text, its figures, its questions and their answers`, async ({
      page,
    }) => {
      await page.goto(`/lessons/${slug}/`);
      const questions = page.locator('main form.check');
      expect(await questions.count()).toBeGreaterThan(2);
      for (const question of await questions.all()) {
        await question.getByText('Show the answer').click();
        await expect(question.locator('.answer-fold p, .answer-fold li').first()).toBeVisible();
        await expect(question.locator('button:visible')).toHaveCount(0);
      }
      expect(await page.locator('main figure svg:visible').count()).toBeGreaterThan(0);
      await expect(page.locator('main .explorer-controls:visible')).toHaveCount(0);
    });
  }
});

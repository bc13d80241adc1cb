import { allPages } from '../tools/pages';
import {
  expect,
  expectAccessible,
  islandsReady,
  test,
  testOfLooking,
  tooWide,
  WIDTHS,
} from './support';

/** The same pages each run: every so many, from a seed. */
function sample(count: number, seed = 7): string[] {
  const threads = allPages().filter((page) => /^\/threads\/[^/]+\/$/.test(page));
  const step = threads.length / count;
  return Array.from(
    { length: count },
    (_, i) => threads[Math.floor(i * step + seed) % threads.length] ?? '',
  );
}

/** Pages of a printed sheet: its page objects, the tree of pages left out. */
function sheets(pdf: Buffer): number {
  return (pdf.toString('latin1').match(/\/Type\s*\/Page[^s]/g) ?? []).length;
}

const KINDS = ['/threads/m8x1.25/', '/threads/1-2-13-unc/', '/threads/1-4-18-npt/'];

for (const path of new Set([...KINDS, ...sample(20)])) {
  testOfLooking(`${path} passes axe and never scrolls sideways`, async ({ page }) => {
    await page.goto(path);
    await expectAccessible(page);
    for (const width of WIDTHS) {
      await page.setViewportSize({ width, height: 900 });
      expect(await tooWide(page), `at ${width} px`).toEqual([]);
    }
  });
}

test.describe('threads', () => {
  for (const path of [...KINDS, ...sample(4)]) {
    test(`${path} is useful without script, and prints on one sheet`, async ({
      browser,
      baseURL,
    }) => {
      const context = await browser.newContext({
        javaScriptEnabled: false,
        baseURL: baseURL ?? '',
      });
      const page = await context.newPage();
      await page.goto(path);
      await expect(page.locator('h1')).toHaveCount(1);
      expect(await page.locator('table').count()).toBeGreaterThan(0);
      expect(await page.locator('script').count()).toBe(0);
      for (const format of ['A4', 'Letter']) {
        expect(sheets(await page.pdf({ format })), format).toBe(1);
      }
      await context.close();
    });
  }

  test('a thread is found by typing it, and Enter opens its page', async ({ page }) => {
    await page.goto('/threads/');
    await islandsReady(page);
    const field = page.getByLabel('Thread', { exact: true });
    await field.fill('5/16-');
    await expect(
      page.getByRole('list', { name: 'Pages that begin so' }).getByRole('link'),
    ).toHaveCount(3);
    await field.fill('10-32');
    await expect(page.getByRole('link', { name: 'Open #10-32 UNF' })).toBeVisible();
    await field.press('Enter');
    await expect(page).toHaveURL('/threads/10-32-unf/');
  });

  test('tells what is no thread once the field is left', async ({ page }) => {
    await page.goto('/threads/');
    await islandsReady(page);
    const field = page.getByLabel('Thread', { exact: true });
    await field.fill('Tr20x4');
    await field.press('Enter');
    await expect(page.locator('#field-find-problem')).toContainText('not covered here');
    await expect(field).toHaveValue('Tr20x4');
  });

  test('a table prints its head on every sheet and offers its files', async ({ page, request }) => {
    await page.goto('/threads/tables/unc/');
    for (const name of ['CSV', 'JSON']) {
      const href = await page.getByRole('link', { name, exact: true }).getAttribute('href');
      const file = await request.get(href ?? '');
      expect(file.status()).toBe(200);
      expect(await file.text()).toContain('ASME B1.1');
    }
  });
});

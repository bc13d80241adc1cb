/** Practice as an apprentice alone meets it, by keyboard; and the sheet that a class gets. */
import { expect, islandsReady, test } from './support';

test('an exercise is answered by keyboard, counted, and the next one comes', async ({ page }) => {
  await page.goto('/practice/?seed=7&kinds=reach');
  await islandsReady(page);
  const now = page.locator('.practice-now');
  await expect(now.getByRole('heading', { name: 'Does it reach?' })).toBeVisible();
  await now.getByRole('textbox').focus();
  await page.keyboard.type('1,5');
  await page.keyboard.press('Enter');
  await expect(page.getByText('0 of 1 right in this row.')).toBeVisible();
  await now.getByRole('button', { name: 'Next exercise' }).press('Enter');
  await expect(page.getByText('Exercise 2 of this row')).toBeVisible();
  await expect(page).toHaveURL(/at=2/);
});

test('the same address gives the same sheet, and its key on a page of its own', async ({
  page,
}) => {
  await page.goto('/practice/sheet/?seed=12&kinds=drill,reach&count=4&key=yes');
  await islandsReady(page);
  const sheet = page.locator('article.sheet:visible');
  await expect(sheet.locator('.sheet-list > li')).toHaveCount(4);
  const first = await sheet.innerText();
  await page.reload();
  await islandsReady(page);
  await expect(sheet.locator('.sheet-key li')).toHaveCount(4);
  expect(await sheet.innerText()).toBe(first);
  const pdf = (await page.pdf({ format: 'A4' })).toString('latin1');
  expect(pdf.match(/\/Type\s*\/Page\b(?!s)/g)?.length).toBe(2);
});

test.describe('without script', () => {
  test.use({ javaScriptEnabled: false });

  test('a worked sheet stands in the page, with its answers', async ({ page }) => {
    await page.goto('/practice/sheet/');
    await expect(page.locator('.sheet-list > li')).toHaveCount(8);
    await expect(page.locator('.sheet-key li')).toHaveCount(8);
    await expect(page.locator('button:visible')).toHaveCount(0);
  });
});

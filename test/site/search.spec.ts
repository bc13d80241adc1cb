import { expect, islandsReady, test } from './support';

test('a few letters, the arrow keys and Enter lead to a thread’s page', async ({ page }) => {
  await page.goto('/glossary/');
  await page.getByRole('link', { name: 'Search' }).click();
  await islandsReady(page);
  const field = page.getByRole('searchbox', { name: 'What are you looking for?' });
  await expect(field).toBeFocused();
  await field.fill('m8 drill');
  const matches = page.getByRole('region', { name: 'Matches' }).getByRole('link');
  await expect(matches.first()).toContainText('M8x1.25');
  await expect(page).toHaveURL(/\?q=m8\+drill$/);
  await page.keyboard.press('ArrowDown');
  await expect(matches.first()).toBeFocused();
  await page.keyboard.press('ArrowDown');
  await expect(matches.nth(1)).toBeFocused();
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('ArrowUp');
  await expect(field).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(matches.first()).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page).toHaveURL('/threads/m8x1.25/');
  await page.goBack();
  await expect(matches.first()).toContainText('M8x1.25');
  await field.fill('zzzzqqqq');
  await expect(page.getByText('Nothing here matches “zzzzqqqq”.').first()).toBeVisible();
});

test('a query in the address is answered, and is only ever text', async ({ page }) => {
  await page.goto(`/search/?q=${encodeURIComponent('<img src=x onerror=alert(1)> bottoming')}`);
  const matches = page.getByRole('region', { name: 'Matches' }).getByRole('link');
  await expect(matches.filter({ hasText: 'bottoming chamfer' }).first()).toBeVisible();
  expect(await page.locator('main img').count()).toBe(0);
});

test.describe('with script off', () => {
  test.use({ javaScriptEnabled: false });

  test('a list of everything stands there', async ({ page }) => {
    await page.goto('/search/');
    await expect(page.getByRole('searchbox')).toBeHidden();
    await page.getByRole('link', { name: 'bottoming chamfer', exact: true }).click();
    await expect(page).toHaveURL('/glossary/#bottoming-chamfer');
  });
});

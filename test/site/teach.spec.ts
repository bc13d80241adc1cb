/** The class screen by keys, and a figure sent to the class. */
import { expect, test } from './support';

test('keys step through the screens, and answers are held back until asked', async ({ page }) => {
  await page.goto('/teach/torque/#screen-6');
  const question = page.locator('#screen-6');
  await expect(page.locator('.screen:visible')).toHaveCount(1);
  await expect(page.locator('#instructor-notes')).toBeHidden();
  const answer = question.locator('details.held');
  await expect(answer).not.toHaveAttribute('open');
  await page.keyboard.press('PageDown');
  await expect(answer).toHaveAttribute('open');
  await page.keyboard.press('PageDown');
  await expect(page.locator('#screen-7')).toBeVisible();
  await expect(page).toHaveURL(/#screen-7$/);
  await page.keyboard.press('ArrowLeft');
  await expect(question).toBeVisible();
  await page.getByRole('button', { name: 'Notes for the instructor' }).click();
  await expect(page.locator('#instructor-notes')).toBeVisible();
});

test('a figure that was moved is in the address, and opens so', async ({ page }) => {
  await page.goto('/teach/torque/#screen-7');
  const screen = page.locator('#screen-7');
  await expect(screen.locator('astro-island[ssr]')).toHaveCount(0);
  await screen.getByText('Form tap', { exact: true }).click();
  await expect(page).toHaveURL(/stroke-first-style=form/);
  await page.reload();
  await expect(screen.getByRole('radio', { name: 'Form tap' })).toBeChecked();
  await expect(page).toHaveURL(/stroke-first-style=form/);
});

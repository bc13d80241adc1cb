/** Broken taps: the finder by mouse, by keyboard alone and from an address; without script; the pages beside it. */

import { SYMPTOM_WORDS } from '../../components/words/en/symptoms';
import { SYMPTOM_IDS } from '../../core/diagnose/symptoms';
import {
  expect,
  expectAccessible,
  islandsReady,
  planStands,
  test,
  tooWide,
  someOf,
} from './support';

const PAGES = [
  '/broken-taps/',
  '/broken-taps/rework/',
  '/calculators/tap-removal/',
  '/calculators/hand-tapping/',
  '/lessons/gauging/',
  '/lessons/why-taps-break/',
  '/lessons/hand-tapping/',
] as const;

const COVER = 'thread=M10x1.5-6H&hole=blind&depth=15&limit=16.5&material=al-wrought';

test.describe('the finder', () => {
  test('shows every symptom with its picture', async ({ page }) => {
    await page.goto('/broken-taps/');
    await islandsReady(page);
    for (const id of SYMPTOM_IDS) {
      await expect(page.getByRole('button', { name: SYMPTOM_WORDS[id].name })).toBeVisible();
    }
  });

  test('by keyboard alone, from what is seen to a change and back', async ({ page }) => {
    await page.goto('/broken-taps/');
    await islandsReady(page);
    await page.getByRole('button', { name: SYMPTOM_WORDS.squeal.name }).focus();
    await page.keyboard.press('Enter');
    await expect(page.locator('#check-heading')).toBeFocused();
    await page.keyboard.press('Tab');
    await expect(page.locator('.answers button').first()).toBeFocused();
    await page.keyboard.press('Enter');
    await expect(page).toHaveURL(/said=/);
    for (let asked = 0; asked < 6; asked++) {
      if ((await page.locator('#check-heading').count()) === 0) break;
      await expect(page.locator('#check-heading')).toBeFocused();
      await page.keyboard.press('Tab');
      await page.keyboard.press('Enter');
    }
    await expect(page.locator('#change-heading')).toBeFocused();
    await expect(page.locator('.change.settled')).toContainText('It worked if');
    await page.goBack();
    await expect(page.locator('#check-heading')).toBeVisible();
  });

  test('an address brings symptom, answers and the hole’s own numbers', async ({ page }) => {
    await page.goto(`/broken-taps/?symptom=broke-bottom&said=nose.shiny&${COVER}`);
    await islandsReady(page);
    await expect(page.locator('.ranking')).toContainText(
      'Room below the thread: 1 pitch. This tap wants 4 pitches',
    );
    await expect(page.locator('.told-list')).toContainText('rubbed shiny');
    await page.getByRole('link', { name: 'Open this hole in the planner' }).click();
    await expect(page).toHaveURL(/\/plan\/\?.*thread=M10/);
  });

  test('a plan leads here with its hole', async ({ page }) => {
    await page.goto(`/plan/?${COVER}`);
    await planStands(page);
    await page.getByRole('link', { name: /Something went wrong in this hole/ }).click();
    await expect(page).toHaveURL(/\/broken-taps\/\?.*thread=M10/);
    await expect(page.locator('.own-facts')).toContainText('M10x1.5-6H');
  });

  test('nonsense in the address is told, not obeyed', async ({ page }) => {
    await page.goto('/broken-taps/?symptom=haunted');
    await islandsReady(page);
    await expect(page.locator('.finder .notice')).toContainText('haunted');
    await expect(page.locator('#choose-heading')).toBeVisible();
  });

  test('is accessible with a symptom chosen and a hole typed, and fits a phone', async ({
    page,
  }) => {
    await page.goto(`/broken-taps/?symptom=broke-bottom&said=nose.shiny&${COVER}`);
    await islandsReady(page);
    await expect(page.locator('.own-facts')).toBeVisible();
    await expectAccessible(page);
    for (const width of [320, 390, 1366]) {
      await page.setViewportSize({ width, height: 800 });
      expect(await tooWide(page), `at ${width} px`).toEqual([]);
    }
  });

  test('a chosen symptom prints without the list and the pictures to choose from', async ({
    page,
  }) => {
    await page.goto('/broken-taps/?symptom=broke-bottom');
    await islandsReady(page);
    await page.emulateMedia({ media: 'print' });
    await expect(page.locator('.matrix')).toBeHidden();
    await expect(page.locator('.ranking')).toBeVisible();
  });
});

test.describe('without script', () => {
  test.use({ javaScriptEnabled: false });

  test('the whole list stands as tables, one for each symptom', async ({ page }) => {
    await page.goto('/broken-taps/');
    await expect(page.locator('.matrix table')).toHaveCount(SYMPTOM_IDS.length);
    await expect(page.locator('.matrix table').first()).toBeVisible();
    await expect(page.locator('.finder')).toBeHidden();
    await expect(page.locator('.no-script')).toBeVisible();
  });

  test('worked examples of removal and hand tapping stand in the page', async ({ page }) => {
    await page.goto('/calculators/tap-removal/');
    await expect(page.locator('#example')).toContainText('Fingers in the flutes');
    await page.goto('/calculators/hand-tapping/');
    await expect(page.locator('#example')).toContainText('54 mm');
    await expect(page.locator('#example')).toContainText('¼–½ back');
  });
});

test.describe('beside it', () => {
  for (const path of someOf(PAGES)) {
    test(`${path} is accessible in light and dark, and fits a phone`, async ({ page }) => {
      await page.goto(path);
      await expectAccessible(page);
      await page.setViewportSize({ width: 390, height: 844 });
      expect(await tooWide(page)).toEqual([]);
    });
  }

  test('removal: a steel part is never offered the bath', async ({ page }) => {
    await page.goto(
      '/calculators/tap-removal/?size=M8&tap=straight-flute&material=steel-medium&stub=deep&hold=wedged&machine=no&boss=no',
    );
    await islandsReady(page);
    const answer = page.locator('.planner-answer').first();
    await expect(answer.locator('.answer')).toContainText('spark the core away');
    await expect(answer).toContainText('the part would go the way of the tap');
    await expect(answer).toContainText('Never');
  });

  test('rework: says whose word, and accepts nothing', async ({ page }) => {
    await page.goto('/broken-taps/rework/');
    await expect(page.locator('.notice.stop')).toContainText('accepts a rework');
    await expect(page.getByRole('row', { name: /Wire insert/ })).toContainText('concession');
    await expect(page.getByRole('row', { name: /Plug or weld/ })).toContainText(
      'responsible engineer',
    );
  });

  test('hand tapping by hand: a bad depth is told beside its field, and kept', async ({ page }) => {
    await page.goto('/calculators/hand-tapping/?thread=M6&hole=blind&full=12&shoulder=10');
    await islandsReady(page);
    const field = page.locator('#field-shoulder');
    await expect(page.locator('#field-shoulder-problem')).toContainText('deeper than the full');
    await expect(field).toHaveValue('10');
    await field.fill('16,5');
    await field.press('Enter');
    await expect(page.locator('.answer').first()).toContainText('3 taps, in order');
  });
});

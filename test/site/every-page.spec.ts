import { axeFaults } from '../tools/axe';
import { onePageOfEachKind } from '../tools/pages';
import {
  expect,
  expectAccessible,
  islandsReady,
  testOfLooking as test,
  tooWide,
  WIDTHS,
} from './support';

// Lessons are asked the same, with everything in them running, in a file of their own.
const pages = onePageOfEachKind().filter((path) => !/^\/lessons\/[^/]+\/$/.test(path));

for (const path of pages) {
  // One visit for all of it: on two cores, opening a page costs as much as asking it a question.
  test(`${path} has a title, one heading, room at every width and nothing to complain of`, async ({
    page,
  }) => {
    const response = await page.goto(path);
    expect(response?.status()).toBe(200);
    await islandsReady(page);
    await expect(page).toHaveTitle(/\S/);
    await expect(page.locator('html')).toHaveAttribute('lang', /^(en|es)$/);
    await expect(page.locator('h1')).toHaveCount(1);
    await expect(page.locator('main')).toHaveCount(1);
    for (const width of WIDTHS) {
      await page.setViewportSize({ width, height: 800 });
      expect(await tooWide(page), `at ${width} px`).toEqual([]);
    }
    await expectAccessible(page);
  });
}

test('faults put into a page are found: one of structure, one of colour in the dark', async ({
  page,
}) => {
  await page.goto('/about/');
  await page.evaluate(() => {
    const field = document.createElement('input');
    const pale = document.createElement('p');
    pale.textContent = 'Legible in light only';
    pale.className = 'pale';
    document.querySelector('main')!.append(field, pale);
    const sheet = new CSSStyleSheet();
    sheet.replaceSync('@media (prefers-color-scheme: dark) { .pale { color: #333; } }');
    document.adoptedStyleSheets.push(sheet);
  });
  const found = await axeFaults(page);
  expect(found.map(({ scheme, rule, target }) => `${scheme} ${rule} ${target}`)).toEqual([
    'light label input',
    'dark color-contrast .pale',
  ]);
});

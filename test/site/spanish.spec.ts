/** The planner and its card in Spanish: the same hole, the same numbers, not a word of English. */
import type { Page } from '@playwright/test';
import { englishIn } from '../tools/english';
import { expect, expectAccessible, islandsReady, planStands, test, tooWide } from './support';

const EXAMPLE =
  '?thread=M8x1.25-6H&hole=blind&depth=16&limit=22&material=stainless-austenitic&torque=30';
const IMPOSSIBLE = '?thread=M10&hole=blind&depth=15&limit=16.5&material=al-wrought&own=Azul&kc=900';
const MUCH =
  '?thread=1/4-20&hole=through&thickness=3&below=20&fall=no&material=stainless-austenitic' +
  '&drive=floating&torque=10&point=135&coat-min=5&coat-max=12&interrupted=yes&web=2.2' +
  '&measured=3&measured-style=spiral-flute&measured-chamfer=bottoming&job=4471&holes=480';
const WRONG = '?thread=M8x9&hole=through&thickness=x&material=iron-grey&torque=many&drills=none';

async function open(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await islandsReady(page);
}

/** What a person reads in the page, but for what is marked as another language. */
async function said(page: Page): Promise<string> {
  return page.evaluate(() => {
    const copy = document.body.cloneNode(true) as HTMLElement;
    for (const each of copy.querySelectorAll('script, style, [lang], .card-address')) each.remove();
    const names = [...copy.querySelectorAll('[aria-label], [title]')].map(
      (each) => `${each.getAttribute('aria-label') ?? ''} ${each.getAttribute('title') ?? ''}`,
    );
    const texts: string[] = [];
    const walker = document.createTreeWalker(copy, NodeFilter.SHOW_TEXT);
    while (walker.nextNode()) texts.push(walker.currentNode.textContent ?? '');
    return [...texts, ...names].join('\n');
  });
}

/** Every number of a part of the page: the words stand in another order in another language. */
async function numbersOf(page: Page, selector: string): Promise<string[]> {
  const texts = await page.locator(selector).allInnerTexts();
  return (texts.join(' ').match(/\d+(?:[.,/]\d+)*/g) ?? []).toSorted();
}

const NUMBERS = '.planner-answer';
const CARD = 'article.card:not(.card-is-example)';

test('the same hole in English and in Spanish: equal numbers, and the card in Spanish', async ({
  page,
}) => {
  await open(page, `/plan/${EXAMPLE}`);
  await planStands(page);
  // The studies below the plan are fetched after it.
  await page.waitForLoadState('networkidle');
  const english = await numbersOf(page, NUMBERS);
  expect(english.length).toBeGreaterThan(20);

  await open(page, '/es/plan/');
  await page.getByLabel('Rosca, como en el plano').fill('M8x1.25-6H');
  await page.getByText('Ciego', { exact: true }).click();
  await page.getByLabel('Rosca completa, mm').fill('16');
  await page.getByLabel('No más hondo de, mm').fill('22');
  await page.getByLabel('Material').selectOption({ label: 'Inoxidable austenítico (304, 316)' });
  await page.getByLabel('Su par, N·m').fill('30');
  await page.getByRole('button', { name: 'Planear', exact: true }).click();
  await expect(
    page.getByRole('region', { name: 'Respuesta', exact: true }).locator('.answer'),
  ).toHaveText(
    /Macho de ranura helicoidal, entrada de 2–3 hilos\. Broca de 6\.8 mm, fondo cilíndrico a 21\.0 mm\./,
  );
  await expect.poll(() => numbersOf(page, NUMBERS)).toEqual(english);
  expect(englishIn(await said(page))).toEqual([]);
  await expectAccessible(page);

  await page.getByRole('link', { name: 'Imprimir la hoja de trabajo' }).click();
  await expect(page).toHaveURL(/\/es\/plan\/card\/\?thread=M8x1\.25-6H/);
  await islandsReady(page);
  await expect(page.locator(CARD)).toContainText('Hoja de trabajo: agujero roscado');
  await expect(page.locator('.card-address')).toContainText('/es/plan/?thread=M8x1.25-6H');
  expect(englishIn(await said(page))).toEqual([]);
  await expect(page.locator(`${CARD} svg`).last()).toBeVisible();
  const rows = await numbersOf(page, `${CARD} th[scope=row] + td`);
  await page.goto(`/plan/card/${EXAMPLE}`);
  await islandsReady(page);
  await expect.poll(() => numbersOf(page, `${CARD} th[scope=row] + td`)).toEqual(rows);
});

for (const [what, query] of [
  ['a hole with much to watch', MUCH],
  ['a hole no tap can make', IMPOSSIBLE],
] as const) {
  test(`${what}: no English, and one page of A4 and of Letter`, async ({ page }) => {
    await open(page, `/es/plan/${query}`);
    await planStands(page);
    await page.waitForLoadState('networkidle');
    await page.evaluate(() => {
      for (const fold of document.querySelectorAll('details')) fold.open = true;
    });
    expect(englishIn(await said(page))).toEqual([]);
    await page.setViewportSize({ width: 320, height: 800 });
    expect(await tooWide(page)).toEqual([]);
    await open(page, `/es/plan/card/${query}`);
    await expect(page.locator(`${CARD} svg`).last()).toBeVisible();
    expect(englishIn(await said(page))).toEqual([]);
    for (const format of ['A4', 'Letter'] as const) {
      const pdf = (await page.pdf({ format })).toString('latin1');
      expect(pdf.match(/\/Type\s*\/Page\b(?!s)/g), format).toHaveLength(1);
    }
  });
}

test('what is wrong or missing is said in Spanish', async ({ page }) => {
  await open(page, `/es/plan/${WRONG}`);
  await page.getByRole('button', { name: 'Planear', exact: true }).click();
  await expect(page.locator('.complaint').first()).toBeVisible();
  expect(englishIn(await said(page))).toEqual([]);
});

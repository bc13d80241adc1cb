import { readFileSync } from 'node:fs';
import { type Locator, type Page } from '@playwright/test';
import { expect, expectAccessible, islandsReady, test, tooWide, WIDTHS } from './support';

const LINES = [
  '6× M10×1.5-6H ↧15 / Ø8.5 ↧16.5',
  '8× M6-6H ↧12',
  '4X 1/4-20 UNC-2B THRU',
  'BREAK ALL SHARP EDGES',
  '7/16 DRILL THRU 1/2-13 UNC-2B THRU',
];

const holes = (page: Page): Locator => page.getByLabel('Every threaded hole, one callout a line');
const answer = (page: Page): Locator => page.getByRole('region', { name: 'Answer', exact: true });
const row = (page: Page, number: number): Locator => answer(page).locator(`#hole-${number}`);

async function open(page: Page, address = '/drawing/'): Promise<void> {
  await page.goto(address);
  await islandsReady(page);
}

async function typePart(page: Page, lines: readonly string[] = LINES): Promise<void> {
  await holes(page).fill(lines.join('\n'));
  await page.getByLabel('Material', { exact: true }).first().selectOption('al-wrought');
  await page.getByLabel('Thickness, where holes go through, mm').first().fill('16');
}

test('every line is read back and judged, and none is lost', async ({ page }) => {
  await open(page);
  await typePart(page);
  await expect(answer(page).locator('.part-hole')).toHaveCount(4);
  await expect(row(page, 1)).toContainText(
    'Impossible as drawn. No tap reaches: the hole is 4.5 mm',
  );
  await expect(row(page, 2)).toContainText('Ready. Spiral-flute tap, 2–3 thread chamfer. Drill ');
  await expect(row(page, 3)).toContainText('Ready. Spiral-point tap');
  await expect(answer(page).locator('.part-apart')).toContainText('BREAK ALL SHARP EDGES');
  await expect(row(page, 4)).toContainText(
    'Caution. The hole named on the drawing is outside the class.',
  );
  await expect(answer(page).locator('.answer')).toContainText('2 of 4 are ready');
  await expect(answer(page).locator('.part-note')).toContainText(
    '1.5 mm stay below the thread: 1 pitch',
  );
  await expect(page.locator('#example')).toBeHidden();
});

test('the address opens the same part again, changes of single holes with it', async ({ page }) => {
  await open(page);
  await typePart(page);
  const fold = row(page, 3).getByText('Change for this hole 3');
  await fold.click();
  await row(page, 3).getByLabel('Material').selectOption('iron-grey');
  await expect(row(page, 3)).toContainText(/straight-flute/i);
  await expect.poll(() => page.url()).toContain('changes=3.material%3Diron-grey');
  await page.reload();
  await islandsReady(page);
  await expect(row(page, 3)).toContainText(/straight-flute/i);
  await expect(holes(page)).toHaveValue(LINES.join('\n'));

  // A line put in above it: the change goes along with its own.
  await holes(page).fill(['M5 THRU', ...LINES].join('\n'));
  await expect(row(page, 4)).toContainText(/straight-flute/i);
});

test('a list too long for the address goes into a file and comes back', async ({ page }) => {
  const many = Array.from(
    { length: 120 },
    (_, at) => `${(at % 9) + 2}× M${[5, 6, 8, 10][at % 4]}-6H ↧${10 + (at % 5)} / note ${at}`,
  );
  await open(page);
  await typePart(page, many);
  await expect(answer(page).locator('.part-hole')).toHaveCount(120);
  await expect(page.getByText('too long for the address')).toBeVisible();
  expect(page.url().length).toBeLessThan(4200);
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save to a file' }).click();
  const text = readFileSync(await (await download).path(), 'utf8');
  await page.reload();
  await islandsReady(page);
  await expect(answer(page).locator('.part-hole')).toHaveCount(120);
  await page.getByRole('button', { name: 'Start again' }).click();
  await expect(holes(page)).toHaveValue('');
  await page
    .locator('input[type=file]')
    .setInputFiles({ name: 'lid.json', mimeType: 'application/json', buffer: Buffer.from(text) });
  await expect(answer(page).locator('.part-hole')).toHaveCount(120);
  await page
    .locator('input[type=file]')
    .setInputFiles({ name: 'x.json', mimeType: 'application/json', buffer: Buffer.from('{') });
  await expect(page.getByText('This is no part file of the handbook.')).toBeVisible();
  await expect(answer(page).locator('.part-hole')).toHaveCount(120);
});

test('two hundred holes are all judged', async ({ page }) => {
  await open(page);
  await typePart(page);
  const lines = Array.from({ length: 200 }, (_, at) => `${(at % 7) + 1}X M8-6H ↧${8 + (at % 20)}`);
  await page.locator('textarea').first().fill(lines.join('\n'));
  await expect(answer(page).locator('.part-hole')).toHaveCount(200);
});

test('by keyboard alone', async ({ page }) => {
  await open(page);
  await holes(page).focus();
  await page.keyboard.type('M6 THRU');
  await page.keyboard.press('Tab');
  await page.keyboard.press('w');
  // Past the grade, which may stay empty.
  await page.keyboard.press('Tab');
  await page.keyboard.press('Tab');
  await page.keyboard.type('12');
  await page.keyboard.press('Enter');
  await expect(answer(page).locator('.part-hole')).toHaveCount(1);
  await expect(row(page, 1)).toContainText('Ready');
});

test('sent empty, it says what is wanted; nothing typed is lost', async ({ page }) => {
  await open(page);
  await page.getByRole('button', { name: 'Plan the part' }).click();
  await holes(page).fill('M6 THRU');
  await page.getByLabel('Thickness, where holes go through, mm').first().fill('thick');
  await page.getByRole('button', { name: 'Plan the part' }).click();
  const summary = page.getByRole('alert');
  await expect(summary).toContainText('Choose the material.');
  await expect(summary).toContainText('must be a length, like 16');
  await expect(page.getByLabel('Thickness, where holes go through, mm').first()).toHaveValue(
    'thick',
  );
});

test('the note is copied, the sheet prints on one page', async ({ page, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await open(page);
  await page.getByRole('button', { name: 'Try it with the example' }).click();
  await answer(page).getByRole('button', { name: 'Copy it' }).click();
  await expect(answer(page).getByText('Copied', { exact: true })).toBeVisible();
  const copied = await page.evaluate(() => navigator.clipboard.readText());
  expect(copied).toContain('Drill deeper');
  await page.emulateMedia({ media: 'print' });
  await expect(answer(page).locator('.sheet')).toBeVisible();
  await expect(answer(page).locator('.part-holes')).toBeHidden();
  const pdf = (await page.pdf({ format: 'A4' })).toString('latin1');
  expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
});

const TABLE = [
  'Lid HL-118',
  'Qty\tThread\tDepth\tTool\tRemark',
  '4\tM8x1.25-6H\t16\tT12\t',
  '2\tM6\tTHRU\tT13\tzingo',
].join('\n');

test('a table pasted from a spreadsheet: columns shown, changed by keyboard, at 390', async ({
  page,
  context,
}) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.setViewportSize({ width: 390, height: 844 });
  await open(page);
  await page.evaluate((text) => navigator.clipboard.writeText(text), TABLE);
  await holes(page).focus();
  await page.keyboard.press('ControlOrMeta+V');
  await page.getByLabel('Material', { exact: true }).first().selectOption('al-wrought');
  await expect(answer(page).locator('.part-hole')).toHaveCount(3);
  await expect(row(page, 2)).toContainText('4 | M8x1.25-6H | 16 | T12');
  await expect(row(page, 2)).toContainText('Ready.');
  await expect(row(page, 3)).toContainText('Caution. Not understood: “zingo”.');
  await expect(answer(page).locator('.sheet')).toContainText('Not understood: “zingo”.');
  await expect(answer(page).locator('.sheet')).toContainText('tool T12');
  await expect(answer(page).locator('.sheet-sections svg')).toHaveCount(2);

  // By keyboard: the columns are opened, and the remark is left out.
  await page.getByText('Read as a table of 5 columns').focus();
  await page.keyboard.press('Enter');
  const remark = page.getByLabel('Column 5, “Remark”');
  await remark.focus();
  await page.keyboard.type('Left out');
  await expect(row(page, 3)).toContainText('Ready.');
  expect(await tooWide(page)).toEqual([]);
  await expect.poll(() => page.url()).toContain('columns=');
  await page.reload();
  await islandsReady(page);
  await expect(row(page, 3)).toContainText('Ready.');
});

test('lines that belong together are one, until somebody parts them; what is no hole is set apart', async ({
  page,
}) => {
  await open(page);
  await typePart(page, ['4 × Ø6.8 ↧20', 'M8x1.25-6H ↧16', 'M6 CLEARANCE HOLE']);
  await expect(answer(page).locator('.part-hole')).toHaveCount(1);
  await expect(row(page, 1)).toContainText('Lines 1, 2 read as one');
  await row(page, 1).getByRole('button', { name: 'Part lines 1 and 2' }).click();
  await expect(answer(page).locator('.part-hole')).toHaveCount(2);
  await row(page, 2).getByRole('button', { name: 'Join line 2 to line 1' }).click();
  await expect(answer(page).locator('.part-hole')).toHaveCount(1);
  const apart = answer(page).getByRole('region', { name: 'Set apart: no threaded holes' });
  await expect(apart).toContainText('A hole that a screw or bolt goes through');
  await apart.getByRole('button', { name: /It is a threaded hole/ }).click();
  await expect(answer(page).locator('.part-hole')).toHaveCount(2);
  await expect(row(page, 2)).toContainText('Caution');
  await row(page, 2).getByRole('button', { name: 'Line 3 is no threaded hole after all' }).click();
  await expect(apart).toBeVisible();
});

test('planner and calculators read a callout while it is typed', async ({ page }) => {
  await open(page, '/plan/');
  const thread = page.getByLabel('Thread, as on the drawing');
  await page.getByLabel('Material').first().selectOption('al-wrought');
  await thread.pressSequentially('M8 16 DEEP ZINGO');
  await expect(page.getByLabel('Full thread, mm')).toHaveValue('16');
  await expect(page.getByText('Not understood: “ZINGO”.').first()).toBeVisible();
  await expect(page.getByRole('link', { name: /Not understood in the callout/ })).toBeVisible();
  await thread.press('Tab');
  await expect(thread).toHaveValue('M8x1.25-6H ZINGO');
  await page.goto('/calculators/blind-hole-depth/');
  await islandsReady(page);
  await page.getByLabel('Thread, as on the drawing').pressSequentially('M8-6H 16 DEEP');
  await expect(page.getByLabel('Full thread, mm')).toHaveValue('16');
});

test('the planner’s thread field takes a whole callout', async ({ page }) => {
  await open(page, '/plan/');
  const thread = page.getByLabel('Thread, as on the drawing');
  await thread.fill('6× M10×1.5-6H ↧15 / Ø8.5 ↧16.5');
  await thread.press('Tab');
  await page.getByLabel('Material').first().selectOption('al-wrought');
  await expect(thread).toHaveValue('M10x1.5-6H');
  await expect(page.getByText('The other fields were filled from it')).toBeVisible();
  await expect(page.getByLabel('Full thread, mm')).toHaveValue('15');
  await expect(page.getByLabel('No deeper than, mm')).toHaveValue('16.5');
});

for (const width of WIDTHS) {
  test(`reads well at ${width} px, in light and dark`, async ({ page }) => {
    await page.setViewportSize({ width, height: 900 });
    await open(page);
    await typePart(page);
    await expect(answer(page).locator('.part-hole')).toHaveCount(4);
    expect(await tooWide(page)).toEqual([]);
    if (width === 390) await expectAccessible(page);
  });
}

test.describe('script off', () => {
  test.use({ javaScriptEnabled: false });

  test('the worked example is there, and no dead control', async ({ page }) => {
    await page.goto('/drawing/');
    await expect(page.locator('#example .part-hole')).toHaveCount(6);
    await expect(page.locator('#example .sheet')).toBeVisible();
    await expect(page.getByRole('button').locator('visible=true')).toHaveCount(0);
  });
});

import { type Locator, type Page } from '@playwright/test';
import { expect, expectAccessible, islandsReady, tooWide, test } from './support';

/** The hole of the worked example, as a reader types it. */
const EXAMPLE_ADDRESS =
  '?thread=M8x1.25-6H&hole=blind&depth=16&limit=22&material=stainless-austenitic&torque=30';

const field = {
  thread: (page: Page) => page.getByLabel('Thread, as on the drawing'),
  depth: (page: Page) => page.getByLabel('Full thread, mm'),
  limit: (page: Page) => page.getByLabel('No deeper than, mm'),
  material: (page: Page) => page.getByLabel('Material'),
  torque: (page: Page) => page.getByLabel('Its torque, N·m'),
};

const answer = (page: Page): Locator => page.getByRole('region', { name: 'Answer', exact: true });
const sentence = (page: Page): Locator => answer(page).locator('.answer');
const example = (page: Page): Locator => page.getByRole('region', { name: 'Worked example' });
const complaint = (page: Page, name: string): Locator => page.locator(`#field-${name}-problem`);

const sheet = (page: Page): Locator => page.locator('article.card:not(.card-is-example)');

async function open(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await islandsReady(page);
}

async function typeExample(page: Page): Promise<void> {
  await field.thread(page).fill('M8x1.25-6H');
  await page.getByText('Blind', { exact: true }).click();
  await field.depth(page).fill('16');
  await field.limit(page).fill('22');
  await field.material(page).selectOption({ label: 'Austenitic stainless (304, 316)' });
  await field.torque(page).fill('30');
}

for (const size of [
  { width: 1366, height: 768 },
  { width: 390, height: 844 },
]) {
  test.describe(`planning a blind hole at ${size.width} × ${size.height}`, () => {
    test.use({ viewport: size });

    test('from a blank page to the answer, the drawing and the card', async ({ page }) => {
      await open(page, '/');
      await expect(example(page)).toBeVisible();
      await typeExample(page);
      await expect(example(page)).toBeHidden();

      // 16 + 3 × 1.25 of chamfer + 1.25 of clearance; the class allows 6.647 to 6.912 (ISO 965-1).
      await expect(sentence(page)).toHaveText(
        /Spiral-flute tap, 2–3 thread chamfer\. Drill 6\.8 mm, shoulder 21\.0 mm deep\./,
      );
      await page.getByRole('button', { name: 'Plan it' }).click();
      await expect(sentence(page)).toBeInViewport();
      const drawing = answer(page).getByRole('img', { name: /Section of the hole, to scale/ });
      await expect(drawing).toBeVisible();
      for (const [name, value] of [
        ['Drill shoulder at', '21.0 mm'],
        ['Tap to', '19.75 mm'],
        ['Feed', '1.25 mm/rev'],
      ] as const) {
        const row = answer(page).locator('dl.numbers > div').filter({ hasText: name });
        await expect(row.locator('dd').first()).toHaveText(value);
      }
      await expect(answer(page).getByText('Work-hardens').first()).toBeVisible();
      await expect(page.getByRole('status').first()).toHaveText(/Spiral-flute tap/);
      expect(await tooWide(page)).toEqual([]);

      await page.getByRole('link', { name: 'Print the job card' }).click();
      await expect(page).toHaveURL(/\/plan\/card\/\?thread=M8x1\.25-6H/);
      await expect(page.getByRole('heading', { name: 'M8x1.25-6H' })).toBeVisible();
    });

    test('has no fault that axe finds, answered, refused and on the card', async ({ page }) => {
      test.slow();
      await open(page, `/plan/${EXAMPLE_ADDRESS}`);
      await expect(sentence(page)).toBeVisible();
      await expectAccessible(page);
      await open(page, '/plan/?thread=8x1.25&hole=blind&depth=0&material=unknown');
      await page.getByRole('button', { name: 'Plan it' }).click();
      await expectAccessible(page);
      await open(page, `/plan/card/${EXAMPLE_ADDRESS}`);
      await expect(page.getByRole('heading', { name: 'M8x1.25-6H' })).toBeVisible();
      await expectAccessible(page);
    });
  });
}

test('the whole journey with the keyboard alone', async ({ page }) => {
  await open(page, '/plan/');
  await field.thread(page).focus();
  await page.keyboard.type('1/4-20 UNC-2B');
  await expect(page.locator('#field-thread-reading')).toContainText('20 threads per inch');
  // An inch thread on a millimetre page: the way to inches is the next stop.
  await page.keyboard.press('Tab');
  await expect(page.getByRole('button', { name: 'Use inches' })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(field.thread(page)).toBeFocused();
  await page.keyboard.press('Tab');
  await expect(page.getByRole('radio', { name: 'Blind' })).toBeFocused();
  await page.keyboard.press('Space');
  await page.keyboard.press('Tab');
  await page.keyboard.type('1/2');
  await page.keyboard.press('Tab');
  await page.keyboard.type('1');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Tab');
  await expect(field.material(page)).toBeFocused();
  await page.keyboard.type('Wrought');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await expect(sentence(page)).toHaveText(/Spiral-flute tap.*Drill #7, shoulder 0\.\d{3} in deep/);
  await expect(page).toHaveURL(/units=in/);
});

test.describe('with script off', () => {
  test.use({ javaScriptEnabled: false });

  for (const path of ['/', '/plan/', '/plan/card/']) {
    test(`${path} shows the marked example and no dead control`, async ({ page }) => {
      await page.goto(path);
      await expect(page.getByText(/script.* is off in this browser/i)).toBeVisible();
      await expect(page.locator('#example')).toContainText(/example/i);
      await expect(page.locator('#example')).toContainText('6.8 mm');
      await expect(page.locator('#example svg[role=img]').first()).toBeVisible();
      await expect(page.locator('input:visible, select:visible, button:visible')).toHaveCount(0);
    });
  }
});

test.describe('inputs live in the address', () => {
  test('reloading brings back what was typed and its answer', async ({ page }) => {
    await open(page, '/');
    await typeExample(page);
    await field.torque(page).blur();
    const before = await sentence(page).textContent();
    await page.reload();
    await expect(sentence(page)).toHaveText(before ?? '');
    await expect(field.depth(page)).toHaveValue('16');
    await expect(page).toHaveTitle(/^M8x1\.25-6H/);
  });

  test('Back undoes one field at a time, and the blank page shows the example again', async ({
    page,
  }) => {
    await open(page, '/plan/');
    await field.thread(page).fill('M8');
    await page.getByText('Blind', { exact: true }).click();
    await field.material(page).selectOption('steel-low');
    await expect(sentence(page)).toHaveText(/Drill 6\.8 mm/);
    await page.goBack();
    await expect(field.material(page)).toHaveValue('');
    await expect(page.getByRole('radio', { name: 'Blind' })).toBeChecked();
    await page.goBack();
    await expect(page.getByRole('radio', { name: 'Blind' })).not.toBeChecked();
    await expect(field.thread(page)).toHaveValue('M8');
    await page.goBack();
    await expect(field.thread(page)).toHaveValue('');
    await expect(example(page)).toBeVisible();
    await page.goForward();
    await expect(field.thread(page)).toHaveValue('M8');
  });

  test('an unknown word falls back for its field alone, and is told', async ({ page }) => {
    await open(page, '/plan/?thread=M8&hole=blind&material=unobtainium&colour=red');
    await expect(page.getByText('“unobtainium”')).toBeVisible();
    await expect(page.getByText('colour=red')).toBeVisible();
    await expect(field.thread(page)).toHaveValue('M8');
    await expect(answer(page)).toContainText('the material');
  });
});

test.describe('live, but complaining late', () => {
  test('says nothing while typing, and takes the old answer away at once', async ({ page }) => {
    await open(page, `/plan/${EXAMPLE_ADDRESS}`);
    await expect(sentence(page)).toHaveText(/21\.0 mm/);
    await field.depth(page).fill('');
    await field.depth(page).pressSequentially('30');
    await expect(sentence(page)).toHaveText('No answer yet.');
    await expect(answer(page).getByRole('img')).toHaveCount(0);
    await expect(complaint(page, 'depth')).toHaveCount(0);
    await field.depth(page).blur();
    await expect(complaint(page, 'depth')).toContainText('deeper than the hole');
    await expect(field.depth(page)).toHaveValue('30');
    await field.limit(page).fill('40');
    await expect(sentence(page)).toHaveText(/shoulder 36\.88 mm|shoulder 35\.0 mm/);
  });

  test('Enter on a blank form lists what is missing, and each line leads to its field', async ({
    page,
  }) => {
    await open(page, '/plan/');
    await field.thread(page).focus();
    await page.keyboard.press('Enter');
    const summary = page.getByRole('alert');
    await expect(summary).toBeFocused();
    await expect(page).toHaveTitle(/^Error: /);
    await expect(summary.getByRole('link')).toHaveText([
      /^Enter the thread/,
      'Choose whether the hole is blind or through.',
      'Choose the material.',
    ]);
    await summary.getByRole('link', { name: 'Choose the material.' }).click();
    await expect(field.material(page)).toBeFocused();
  });

  test('refuses what is no thread it plans, beside the field, and keeps what was typed', async ({
    page,
  }) => {
    await open(page, '/plan/');
    for (const [typed, words] of [
      ['8x1.25', 'Put M in front'],
      ['M8-6g', '6H'],
      ['M8x6H', '6H is a tolerance class'],
      ['M8x1.25x30', '30'],
      ['1/4-20 UNF', '28'],
      ['1/4', '1/4-20'],
      ['M8x20', '20'],
      ['7-40', '7'],
      ['M8-9H', '4'],
      ['R1/2', 'Rc'],
      ['Tr20x4', 'not covered'],
    ] as const) {
      await field.thread(page).fill(typed);
      await field.thread(page).blur();
      await expect(complaint(page, 'thread'), typed).toContainText(words);
      await expect(field.thread(page)).toHaveValue(typed);
      await expect(field.thread(page)).toHaveAttribute('aria-invalid', 'true');
      await expect(field.thread(page)).toHaveAccessibleDescription(new RegExp(words));
    }
  });

  test('refuses a full thread that is none, and keeps what was typed', async ({ page }) => {
    await open(page, '/plan/?thread=M8&hole=blind&material=steel-low');
    for (const [typed, words] of [
      ['0', 'more than 0'],
      ['-5', 'more than 0'],
      ['16000', 'deeper than any tap reaches'],
      ['deep', 'must be a length, like 16'],
    ] as const) {
      await field.depth(page).fill(typed);
      await field.depth(page).blur();
      await expect(complaint(page, 'depth'), typed).toContainText(words);
      await expect(field.depth(page)).toHaveValue(typed);
      await expect(sentence(page)).toHaveText('No answer yet.');
    }
  });

  test('an empty depth is no fault: the usual one is taken and listed', async ({ page }) => {
    await open(page, '/plan/?thread=M8&hole=blind&material=steel-low');
    await expect(sentence(page)).toHaveText(/Drill 6\.8 mm/);
    await expect(answer(page).locator('.assumed')).toContainText('12.0 mm');
  });

  test('takes a decimal comma and inch fractions, and says how they were read', async ({
    page,
  }) => {
    await open(page, '/plan/?thread=M8x1,25&hole=blind&material=steel-low');
    await field.depth(page).fill('12,5');
    await expect(page.locator('#field-depth-reading')).toHaveText('12.5 mm = 0.492 in');
    await field.depth(page).fill('1/2');
    await expect(page.locator('#field-depth-reading')).toHaveText('0.500 in = 12.7 mm');
    await expect(page.locator('#field-thread-reading')).toContainText('pitch 1.25 mm');
  });
});

test('turning to inches restates what was typed and changes no hole', async ({ page }) => {
  await open(page, `/plan/${EXAMPLE_ADDRESS}`);
  await page.getByText('inch', { exact: true }).click();
  await expect(sentence(page)).toHaveText(/shoulder 0\.827 in deep/);
  await expect(page.getByLabel('Full thread, in')).toHaveValue('16 mm');
  await page.getByText('mm', { exact: true }).first().click();
  await expect(sentence(page)).toHaveText(/shoulder 21\.0 mm deep/);
  await expect(field.depth(page)).toHaveValue('16');
});

test('a drawing no tap can meet says so, with what it can have and what would help', async ({
  page,
}) => {
  await open(page, '/plan/?thread=M10x1.5&hole=blind&depth=15&limit=16.5&material=al-wrought');
  await expect(sentence(page)).toHaveText(/No machine tap gives 15\.0 mm.*The most is 12\.0 mm/);
  await expect(answer(page).getByRole('heading', { name: /cheapest first/ })).toBeVisible();
  await expect(answer(page).locator('.remedies li').first()).toContainText('21.0 mm');
  await expect(answer(page).locator('dl.numbers')).toHaveCount(0);
  await expect(page.getByRole('link', { name: 'Print the job card' })).toHaveCount(0);
});

test.describe('the job card', () => {
  const full =
    '?thread=1/4-20&hole=through&thickness=3&below=20&fall=no&material=stainless-austenitic' +
    '&drive=floating&torque=10&point=135&coat-min=5&coat-max=12&interrupted=yes&web=2.2' +
    '&job=4471&part=Pump+cover+PC-16&operation=30&machine=TM-1&holes=480';

  for (const [what, query] of [
    ['the example', EXAMPLE_ADDRESS],
    ['a hole with much to watch', full],
    ['a hole no tap can make', '?thread=M10&hole=blind&depth=15&limit=16.5&material=al-wrought'],
  ] as const) {
    test(`prints ${what} on one page of A4 and of Letter`, async ({ page }) => {
      await open(page, `/plan/card/${query}`);
      await expect(sheet(page).locator('svg').last()).toBeVisible();
      for (const format of ['A4', 'Letter'] as const) {
        const pdf = (await page.pdf({ format })).toString('latin1');
        expect(pdf.match(/\/Type\s*\/Page\b(?!s)/g), format).toHaveLength(1);
      }
    });
  }

  test('carries what was typed on top of it, in the address too', async ({ page }) => {
    await open(page, `/plan/card/${EXAMPLE_ADDRESS}`);
    await page.getByLabel('Part').fill('Pump cover PC-16');
    await page.getByLabel('Part').blur();
    await expect(sheet(page)).toContainText('Pump cover PC-16');
    await expect(page).toHaveURL(/part=Pump\+cover\+PC-16/);
    await page.getByRole('link', { name: 'Back to the plan' }).click();
    await expect(field.depth(page)).toHaveValue('16');
    await page.getByRole('link', { name: 'Print the job card' }).click();
    await expect(sheet(page)).toContainText('Pump cover PC-16');
  });

  test('has a code of the plan’s own address', async ({ page, baseURL }) => {
    await open(page, `/plan/card/${EXAMPLE_ADDRESS}&job=4471`);
    await expect(page.getByRole('img', { name: 'Code of the plan’s address' })).toBeVisible();
    const shown = page.locator('.card-address');
    await expect(shown).toContainText(`${baseURL}/plan/?thread=M8x1.25-6H`);
    await expect(shown).not.toContainText('4471');
  });
});

import { type Locator, type Page } from '@playwright/test';
import { expect, expectAccessible, islandsReady, someOf, test, tooWide } from './support';

const answer = (page: Page): Locator => page.getByRole('region', { name: 'Answer', exact: true });
const sentence = (page: Page): Locator => answer(page).locator('.answer');
const example = (page: Page): Locator => page.getByRole('region', { name: 'Worked example' });
const complaint = (page: Page, name: string): Locator => page.locator(`#field-${name}-problem`);

/** Of each calculator: an address that is answered, what it says, and what is drawn. */
const ANSWERED = {
  'chip-direction': {
    search: '?see=climbs-right&hole=blind&material=steel-low',
    says: /go back up the flutes: right in a blind hole/,
    drawn: /drawn back|back up/i,
  },
  chamfer: {
    search: '?thread=M10x1.5&count=2.5&tap=spiral-flute&material=steel-medium',
    says: /2\.5 threads: semi-bottoming, form C, 3\.75 mm long/,
    drawn: /longer chamfer spares every tooth/,
  },
  'blind-hole-depth': {
    search: '?thread=M8x1.25-6H&full=16&chamfer=semi-bottoming',
    says: /Drill 21\.0 mm to the shoulder; tap to 19\.75 mm/,
    drawn: /Section of the hole, to scale/,
  },
  'chip-room': {
    search: '?thread=M10x1.5&full=20&hole=35&material=steel-medium',
    says: /do not fit.*about 46 mm deeper/,
    drawn: /Section of the hole, to scale/,
  },
  torque: {
    search: '?thread=M10x1.5&tap=spiral-flute&depth=15&material=steel-medium&spindle=30',
    says: /N·m sharp, .* N·m when worn/,
    drawn: /torque rises with the chamfer/,
  },
  'tap-strength': {
    search: '?thread=M8x1.25&tap=spiral-flute&torque=4.5',
    says: /breaks at about .* N·m\. Sharp, the job takes 28 % of that/,
    drawn: /as dangerous to its tap as M10x1\.5/,
  },
  spindle: {
    search: '?thread=M12x1.75&tap=spiral-point&material=steel-medium&points=50+60;+1200+60;+8000+9',
    says: /Yes: a worn tap needs .* of it is used/,
    drawn: /the spindle has torque to spare/,
  },
} as const;

const SLUGS = Object.keys(ANSWERED) as (keyof typeof ANSWERED)[];

async function open(page: Page, address: string): Promise<void> {
  await page.goto(`/calculators/${address}`);
  await islandsReady(page);
}

async function openAnswered(page: Page, slug: keyof typeof ANSWERED): Promise<void> {
  await open(page, `${slug}/${ANSWERED[slug].search}`);
  await expect(sentence(page)).toHaveText(ANSWERED[slug].says);
}

test('the list leads to every calculator, by its question', async ({ page }) => {
  await open(page, '');
  for (const slug of SLUGS) {
    await expect(page.locator(`main a[href="/calculators/${slug}/"]`)).toHaveCount(1);
  }
  await page.locator('main').getByRole('link', { name: 'Chip direction' }).click();
  await expect(page.locator('h1')).toHaveText(/Where do this tap’s chips go/);
  await expect(page.getByRole('link', { name: 'Calculators' }).first()).toHaveAttribute(
    'aria-current',
    'page',
  );
});

for (const slug of SLUGS) {
  test.describe(slug, () => {
    test('shows its example until it is used, and its answer after', async ({ page }) => {
      await open(page, `${slug}/`);
      await expect(example(page)).toBeVisible();
      await expect(example(page)).toContainText('Example');
      const told = (await example(page).locator('.answer').textContent()) ?? '';
      await page.getByRole('button', { name: 'Try it with the example' }).click();
      await expect(example(page)).toBeHidden();
      await expect(sentence(page)).toHaveText(told);
      await page.getByRole('button', { name: 'Start again' }).click();
      await expect(example(page)).toBeVisible();
      await expect(example(page).locator('.answer')).toHaveText(told);
      await expect(page).toHaveURL(new RegExp(`/calculators/${slug}/$`));
    });

    // One visit for all of it: on two cores, opening a page costs as much as asking it a question.
    test('answers from its address: drawn, told, at both sizes, printed, and after a reload', async ({
      page,
    }) => {
      await openAnswered(page, slug);
      for (const size of [
        { width: 390, height: 844 },
        { width: 1366, height: 768 },
      ]) {
        await page.setViewportSize(size);
        const figures = answer(page).locator('svg[role=img]:visible');
        expect(await figures.count()).toBeGreaterThan(0);
        await expect(answer(page).locator('figure').first()).toContainText(/\w/);
        await expect(answer(page).locator('dl.numbers')).toBeVisible();
        await expect(answer(page).getByRole('heading', { name: 'Assumed' })).toBeVisible();
        await expect(page.getByRole('heading', { name: 'Where it comes from' })).toBeVisible();
        await expect(page.getByRole('status').first()).toHaveText(/\w/);
        expect(await tooWide(page)).toEqual([]);
      }
      const named = answer(page).getByRole('img', { name: ANSWERED[slug].drawn });
      await expect(named.first()).toBeVisible();

      await page.emulateMedia({ media: 'print' });
      await expect(page.locator('form')).toBeHidden();
      await expect(sentence(page)).toBeVisible();
      await expect(answer(page).locator('.asked')).toBeVisible();
      await expect(page.locator('header.masthead')).toBeHidden();
      await page.emulateMedia({ media: null });

      const before = await sentence(page).textContent();
      await page.reload();
      await islandsReady(page);
      await expect(sentence(page)).toHaveText(before ?? '');
      expect(await page.title()).toContain(' · ');
    });
  });
}

for (const slug of someOf(SLUGS)) {
  test(`${slug} is accessible, answered and refused`, async ({ page }) => {
    test.slow();
    await openAnswered(page, slug);
    await expectAccessible(page);
    await open(page, `${slug}/?thread=8%20x%20nonsense&see=sideways&hole=-1`);
    await page.locator('button[type=submit]').click();
    await expect(page.getByRole('alert')).toBeVisible();
    await expectAccessible(page);
  });
}

test.describe('with script off', () => {
  test.use({ javaScriptEnabled: false });

  for (const slug of SLUGS) {
    test(`${slug} shows its marked example and no dead control`, async ({ page }) => {
      await page.goto(`/calculators/${slug}/`);
      await expect(page.getByText(/script.* is off in this browser/i)).toBeVisible();
      await expect(page.locator('#example')).toContainText('Example');
      await expect(page.locator('#example .answer')).toBeVisible();
      await expect(page.locator('#example svg[role=img]:visible').first()).toBeVisible();
      await expect(page.locator('input:visible, select:visible, button:visible')).toHaveCount(0);
    });
  }
});

test.describe('by keyboard alone', () => {
  test('a blind hole, from the first field to the answer', async ({ page }) => {
    await open(page, 'blind-hole-depth/');
    await page.getByLabel('Thread, as on the drawing').focus();
    await page.keyboard.type('M6x1');
    await page.keyboard.press('Tab');
    await expect(page.getByLabel('Full thread, mm')).toBeFocused();
    await page.keyboard.type('12');
    await page.keyboard.press('Tab');
    await expect(page.getByLabel('Chamfer of the tap')).toBeFocused();
    for (let option = 0; option < 3; option += 1) await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    await expect(sentence(page)).toHaveText(/Drill 16\.0 mm to the shoulder; tap to 15\.0 mm/);
  });

  test('a tap in the hand: tiles by arrow keys', async ({ page }) => {
    await open(page, 'chip-direction/');
    await page.getByRole('radio', { name: 'Straight flutes' }).focus();
    await page.keyboard.press('Space');
    await page.keyboard.press('ArrowRight');
    await expect(page.getByRole('radio', { name: 'Flutes climb to the right' })).toBeChecked();
    await page.keyboard.press('Tab');
    await expect(page.getByRole('radio', { name: 'right-hand thread' })).toBeFocused();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Space');
    // A right-hand spiral on a left-hand tap pushes ahead: wrong over a floor.
    await expect(sentence(page)).toHaveText(/go ahead of the tap: wrong in a blind hole/);
    await expect(page).toHaveURL(/see=climbs-right&hand=left&hole=blind/);
  });

  test('a chart’s table opens and scrolls', async ({ page }) => {
    await page.setViewportSize({ width: 390, height: 844 });
    await openAnswered(page, 'chamfer');
    const table = answer(page).locator('details.fig-data').last();
    await table.locator('summary').focus();
    await page.keyboard.press('Enter');
    await expect(table.locator('table')).toBeVisible();
    await page.keyboard.press('Tab');
    await expect(table.getByRole('region')).toBeFocused();
  });
});

test.describe('bad input', () => {
  test('a complaint waits until the field is left, then stays beside it with what was typed', async ({
    page,
  }) => {
    await open(page, 'chamfer/');
    const count = page.getByLabel('Threads on the chamfer');
    await page.getByLabel('Thread on the tap').fill('M10x1.5');
    await count.pressSequentially('four');
    await expect(complaint(page, 'count')).toHaveCount(0);
    await expect(sentence(page)).toHaveText('No answer yet');
    await count.press('Tab');
    await expect(complaint(page, 'count')).toHaveText(/number of threads, like 2\.5 or 4/);
    await expect(count).toHaveValue('four');
    await expect(count).toHaveAttribute('aria-invalid', 'true');
  });

  test('sending an empty form lists what is wanted and moves there', async ({ page }) => {
    await open(page, 'chip-room/');
    await page.getByLabel('Full thread, mm').fill('20');
    await page.getByRole('button', { name: 'Will they fit?' }).click();
    const summary = page.getByRole('alert');
    await expect(summary).toBeFocused();
    await expect(page).toHaveTitle(/^Error: /);
    await summary.getByRole('link', { name: /thread as the drawing gives it/ }).click();
    await expect(page.getByLabel('Thread, as on the drawing')).toBeFocused();
    await expect(page.getByLabel('Full thread, mm')).toHaveValue('20');
  });

  test('a stale answer goes as soon as the input no longer holds', async ({ page }) => {
    await openAnswered(page, 'blind-hole-depth');
    await page.getByLabel('Full thread, mm').fill('');
    await expect(sentence(page)).toHaveText('No answer yet');
  });

  test('what lies outside the method is refused with what to do instead', async ({ page }) => {
    await open(page, 'torque/?thread=M10&tap=spiral-flute&depth=15&material=steel-hard');
    await expect(answer(page)).toContainText('Too hard to tap');
    await expect(answer(page)).toContainText('mill the thread');
  });

  test('an address with an unknown word falls back field by field, with a note', async ({
    page,
  }) => {
    await open(page, 'chip-direction/?see=gash&hole=through&material=unobtainium&wobble=3');
    await expect(sentence(page)).toHaveText(/go ahead of the tap: right in a through hole/);
    await expect(page.getByText(/asks for “unobtainium”/)).toBeVisible();
    await expect(page.getByText(/wobble=3/)).toBeVisible();
  });
});

test.describe('units and address', () => {
  test('turning to inches restates what was typed and changes no hole', async ({ page }) => {
    await openAnswered(page, 'blind-hole-depth');
    await page.getByText('inch', { exact: true }).click();
    await expect(page.getByLabel('Full thread, in')).toHaveValue('16 mm');
    await expect(sentence(page)).toHaveText(/Drill 0\.827 in to the shoulder/);
    await expect(page).toHaveURL(/units=in/);
    await page.locator('header').getByText('mm', { exact: true }).click();
    await expect(page.getByLabel('Full thread, mm')).toHaveValue('16');
    await expect(sentence(page)).toHaveText(/Drill 21\.0 mm/);
  });

  test('an inch thread on a millimetre page offers inches', async ({ page }) => {
    await open(page, 'blind-hole-depth/');
    await page.getByLabel('Thread, as on the drawing').fill('9/16-18 UNF-2B');
    await page.getByRole('button', { name: 'Use inches' }).click();
    await expect(page.getByLabel('Thread, as on the drawing')).toBeFocused();
    await page.getByLabel('Full thread, in').fill('.80');
    await page.getByLabel('Chamfer of the tap').selectOption('semi-bottoming');
    await expect(sentence(page)).toHaveText(/Drill 1\.022 in to the shoulder/);
  });

  test('Back undoes a field, not a letter', async ({ page }) => {
    await open(page, 'chamfer/');
    await page.getByLabel('Thread on the tap').fill('M10x1.5');
    await page.getByLabel('Thread on the tap').blur();
    await page.getByLabel('Threads on the chamfer').pressSequentially('4.5');
    await page.getByLabel('Threads on the chamfer').blur();
    await expect(sentence(page)).toHaveText(/4\.5 threads: plug/);
    await page.goBack();
    await expect(page.getByLabel('Threads on the chamfer')).toHaveValue('');
    await expect(page.getByLabel('Thread on the tap')).toHaveValue('M10x1.5');
  });

  test('one calculator hands its hole to the next', async ({ page }) => {
    await openAnswered(page, 'blind-hole-depth');
    await answer(page)
      .getByRole('link', { name: /Work out the room for them/ })
      .click();
    await islandsReady(page);
    await expect(page.getByLabel('Thread, as on the drawing')).toHaveValue('M8x1.25-6H');
    await expect(page.getByLabel('Drilled to the shoulder, mm')).toHaveValue('21 mm');
    await page.getByLabel('Material').selectOption({ label: 'Grey cast iron' });
    await expect(sentence(page)).toHaveText(/too long for this hole/);
  });
});

import { readFileSync } from 'node:fs';
import { type Locator, type Page } from '@playwright/test';
import { expect, expectAccessible, islandsReady, planStands, test, tooWide } from './support';

const KEY = 'tapped-hole-handbook-jobs';
const HOLE = 'thread=M8x1.25-6H&hole=blind&depth=16&material=al-wrought&holes=4';

const jobs = (page: Page): Locator => page.locator('.jobs-live .job');
const said = (page: Page): Locator => page.locator('.job-said');

async function open(page: Page, address = '/jobs/'): Promise<void> {
  await page.goto(address);
  await islandsReady(page);
}

async function keepOne(page: Page, part: string): Promise<void> {
  await open(page, `/jobs/?${HOLE}&part=${part}`);
  await page.getByRole('button', { name: 'Keep it', exact: true }).click();
  await expect(said(page)).toHaveText('Kept.');
}

async function openFile(page: Page, text: string): Promise<void> {
  await page
    .locator('input[type=file]')
    .setInputFiles({ name: 'jobs.json', mimeType: 'application/json', buffer: Buffer.from(text) });
}

test('a hole goes from the planner into a job, and a second joins it', async ({ page }) => {
  await open(page, `/plan/?${HOLE}&part=Lid`);
  await planStands(page);
  await page.getByRole('link', { name: 'Keep it with the jobs' }).click();
  await expect(page).toHaveURL(/\/jobs\/\?/);
  await islandsReady(page);
  await page.getByRole('button', { name: 'Keep it', exact: true }).click();
  await expect(jobs(page)).toHaveCount(1);
  await expect(jobs(page)).toContainText('4 × M8x1.25-6H');
  await expect(jobs(page)).toContainText('Drill 6.8 mm, shoulder 21.0 mm deep.');
  await keepOne(page, 'Lid');
  await expect(jobs(page)).toHaveCount(1);
  await expect(jobs(page).locator('.job-holes > li')).toHaveCount(2);
  await page.reload();
  await islandsReady(page);
  await expect(jobs(page).locator('.job-holes > li')).toHaveCount(2);
});

test('a whole drawing is kept as one job', async ({ page }) => {
  await open(page, '/drawing/');
  await page.getByRole('button', { name: 'Try it with the example' }).click();
  await page.getByRole('button', { name: 'Keep it on this device' }).click();
  await expect(page.getByText('Kept. It is on the page of jobs.')).toBeVisible();
  await open(page);
  await expect(jobs(page)).toHaveCount(1);
  await expect(jobs(page)).toContainText('Housing lid HL-118');
  await expect(jobs(page).locator('.job-holes > li')).toHaveCount(6);
});

test('out to a file and in again, and nothing twice', async ({ page }) => {
  await keepOne(page, 'Lid');
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save all to a file' }).click();
  const text = readFileSync(await (await download).path(), 'utf8');
  const schema = (JSON.parse(text) as { $schema: string }).$schema;
  expect((await page.request.get(schema)).ok()).toBe(true);
  await openFile(page, text);
  await expect(said(page)).toContainText('Opened.');
  await expect(jobs(page)).toHaveCount(1);

  await page.getByRole('button', { name: 'Remove' }).click();
  await page.getByRole('button', { name: 'Remove it for good' }).click();
  await expect(jobs(page)).toHaveCount(0);
  await openFile(page, text);
  await expect(jobs(page)).toHaveCount(1);
});

test('a table for the spreadsheet cannot run there', async ({ page }) => {
  await open(page, `/jobs/?${HOLE}&part=${encodeURIComponent('=HYPERLINK("http://x")')}`);
  await page.getByRole('button', { name: 'Keep it', exact: true }).click();
  await expect(jobs(page)).toHaveCount(1);
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as a table (CSV)' }).click();
  const text = readFileSync(await (await download).path(), 'utf8');
  expect(text).toContain(`"'=HYPERLINK(""http://x"")"`);
});

test('two tabs: each hears of the other, and a job changed in both is kept twice', async ({
  page,
  context,
}) => {
  await keepOne(page, 'Lid');
  const other = await context.newPage();
  await open(other);
  await expect(jobs(other)).toHaveCount(1);
  await other.getByLabel('Operation').fill('30');
  await other.getByLabel('Operation').press('Tab');
  await expect(page.getByLabel('Operation')).toHaveValue('30');

  // Behind this tab's back, as when it has slept through the other's change.
  await other.evaluate((key) => {
    const data = JSON.parse(localStorage.getItem(key)!);
    data.jobs[0].operation = '40';
    data.jobs[0].revision += 1;
    localStorage.setItem(key, JSON.stringify(data));
  }, KEY);
  await other.getByLabel('Machine').fill('VMC-A');
  await other.getByLabel('Machine').press('Tab');
  await expect(said(other)).toContainText('Another tab had changed this job meanwhile');
  await expect(jobs(other)).toHaveCount(2);
});

const GOOD = JSON.stringify({
  format: 'tapped-hole-handbook jobs',
  version: 4,
  jobs: [],
  drawer: { taps: [], drills: [], machines: [] },
});

for (const [what, text] of [
  ['empty', ''],
  ['cut off', GOOD.slice(0, 30)],
  ['a word', 'jobs'],
  ['null', 'null'],
  ['a list', '[]'],
  ['another format', GOOD.replace('jobs', 'part')],
  ['no version', GOOD.replace('"version":4,', '')],
  ['version as text', GOOD.replace('"version":4', '"version":"4"')],
  ['version 0', GOOD.replace('"version":4', '"version":0')],
  ['two files in one', GOOD + GOOD],
] as const) {
  test(`a store or file that is ${what} is set aside, said and kept`, async ({ page }) => {
    await open(page);
    await page.evaluate(([key, typed]) => localStorage.setItem(key!, typed!), [KEY, text]);
    await page.reload();
    await islandsReady(page);
    await expect(page.getByText('It was set aside as it stood')).toBeVisible();
    const aside = await page.evaluate((key) => localStorage.getItem(`${key}-set-aside-1`), KEY);
    expect(aside).toBe(text);
    await openFile(page, text);
    await expect(said(page)).toHaveText('This is no file of jobs. Nothing was changed.');
  });
}

const INPUTS = { thread: 'M8', hole: 'blind', depth: '16', material: 'al-wrought' };
const QUERY = new URLSearchParams(INPUTS).toString();

for (const [version, data] of [
  [1, { version: 1, cards: [`/plan/card/?${QUERY}`] }],
  [2, { version: 2, jobs: [{ name: '4471', holes: [QUERY] }] }],
  [
    3,
    {
      version: 3,
      jobs: [
        { id: 'a', job: '', part: 'Lid', operation: '', machine: '', holes: [{ inputs: INPUTS }] },
      ],
    },
  ],
] as const) {
  test(`a store of version ${version} is brought up to date`, async ({ page }) => {
    await open(page);
    const text = JSON.stringify({ format: 'tapped-hole-handbook jobs', ...data });
    await page.evaluate(([key, typed]) => localStorage.setItem(key!, typed!), [KEY, text]);
    await page.reload();
    await islandsReady(page);
    await expect(jobs(page)).toHaveCount(1);
    await expect(jobs(page)).toContainText('M8x1.25-6H');
  });
}

test('a store of a later version is left alone', async ({ page }) => {
  const later = GOOD.replace('"version":4', '"version":9');
  await open(page);
  await page.evaluate(([key, typed]) => localStorage.setItem(key!, typed!), [KEY, later]);
  await page.reload();
  await islandsReady(page);
  await expect(page.getByText('written by a newer version of the handbook')).toBeVisible();
  await page.getByRole('button', { name: 'Start an empty job' }).click();
  await expect(said(page)).toContainText('Not saved');
  expect(await page.evaluate((key) => localStorage.getItem(key), KEY)).toBe(later);
});

test('a full store says so and keeps what it had', async ({ page }) => {
  await keepOne(page, 'Lid');
  await page.evaluate(() => {
    let size = 4 * 1024 * 1024;
    for (let at = 0; size >= 1; at += 1) {
      try {
        localStorage.setItem(`filler-${at}`, 'x'.repeat(size));
      } catch {
        size = Math.floor(size / 2);
      }
    }
  });
  await page
    .getByLabel('Machine')
    .fill('a machine with a very long name that does not fit any more');
  await page.getByLabel('Machine').press('Tab');
  await expect(said(page)).toContainText('no room left');
  const held = await page.evaluate((key) => localStorage.getItem(key), KEY);
  expect(held).toContain('Lid');
});

test('a blocked store says so; a file can still be looked at', async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(window, 'localStorage', {
      get: () => {
        throw new DOMException('denied', 'SecurityError');
      },
    });
  });
  await open(page, `/jobs/?${HOLE}`);
  await expect(
    page.getByText('This browser keeps nothing for this page', { exact: false }).first(),
  ).toBeVisible();
  await page.getByRole('button', { name: 'Keep it', exact: true }).click();
  await expect(said(page)).toContainText('Not saved');
});

test('an answer that a newer version gives differently is told', async ({ page }) => {
  await keepOne(page, 'Lid');
  await page.evaluate((key) => {
    const data = JSON.parse(localStorage.getItem(key)!);
    data.jobs[0].holes[0].answer = { version: '0.0.1', text: 'Drill 7.2 mm.' };
    localStorage.setItem(key, JSON.stringify(data));
  }, KEY);
  await page.reload();
  await islandsReady(page);
  await expect(page.locator('.job-changed')).toContainText('Drill 7.2 mm.');
});

test('the drawer is read row by row; the planner says what it makes of a hole', async ({
  page,
}) => {
  await open(page, '/jobs/drawer/');
  await page
    .getByLabel('What there is')
    .fill('tap; M8; form; plug\ndrill; 6,9\nmachine; VMC-B; synchronous; 30; 4000\ndrill; 6.81');
  await expect(page.locator('.drawer-rows tbody tr')).toHaveCount(4);
  await expect(page.locator('.drawer-bad')).toContainText('There is no stocked drill “6.81”');
  await page.getByRole('button', { name: 'Keep what could be read' }).click();
  await expect(page.getByRole('status').filter({ hasText: 'Kept.' })).toBeVisible();
  await expect(page.getByLabel('What there is')).toHaveValue(/6\.81/);
  await open(page, `/plan/?${HOLE}`);
  await expect(page.locator('.owned')).toContainText('The drawer has the form tap');
  await page.getByLabel('Machine of this shop').selectOption('VMC-B');
  await expect(page.getByLabel('Its torque, N·m')).toHaveValue('30');
});

test('a CSV from a spreadsheet: BOM, semicolons, quotes, decimal commas', async ({ page }) => {
  await open(page, '/jobs/drawer/');
  await page.locator('input[type=file]').setInputFiles({
    name: 'drawer.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from(
      '\ufeffkind;name;style;chamfer\r\ntap;"M10x1,5";"spiral flute";C\r\ndrill;"8,5"\r\n',
    ),
  });
  await expect(page.locator('.drawer-rows tbody tr')).toHaveCount(2);
  await expect(page.locator('.drawer-bad')).toHaveCount(0);
  await expect(page.locator('.drawer-rows')).toContainText(
    'Tap M10x1.5-6H, spiral flute, 2–3 threads',
  );
});

test('prints each job on its own sheet', async ({ page }) => {
  await keepOne(page, 'Lid');
  await keepOne(page, 'Body');
  await page.evaluate(() => {
    window.print = () => undefined;
  });
  await page.getByRole('button', { name: 'Print all jobs' }).click();
  await expect(page.locator('.job-print .sheet')).toHaveCount(2);
  const pdf = (await page.pdf({ format: 'A4' })).toString('latin1');
  expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(2);
});

test('readable and reachable on a phone, in light and dark', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await keepOne(page, 'Lid');
  expect(await tooWide(page)).toEqual([]);
  await expectAccessible(page);
  await open(page, '/jobs/drawer/');
  await page.getByLabel('What there is').fill('tap; M8; form; plug\ndrill; 6.81');
  expect(await tooWide(page)).toEqual([]);
  await expectAccessible(page);
});

test.describe('script off', () => {
  test.use({ javaScriptEnabled: false });

  test('an example of a job is there, and no dead control', async ({ page }) => {
    await page.goto('/jobs/');
    await expect(page.locator('#example .sheet')).toBeVisible();
    await expect(page.getByRole('button').locator('visible=true')).toHaveCount(0);
  });
});

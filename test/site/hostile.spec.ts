/**
 * What comes from the address, from the device and from files is somebody else's text. Each page is
 * given the worst of it. It must show it as text, run none of it, go on working, and lose nothing kept.
 */
import type { Page } from '@playwright/test';
import { allPages, htmlOf } from '../tools/pages';
import { expect, islandsReady, test } from './support';

const MARKUP = '"><img src=x onerror="window.broken=1"><script>window.broken=1</script>';
const NASTY = [
  MARKUP,
  'javascript:window.broken=1',
  '__proto__',
  '-1e999',
  'NaN',
  '\u0000\u202E\uFFFF𝟜½',
  `${'9'.repeat(400)}`,
  '{{constructor.constructor("window.broken=1")()}}',
];

/** Pages that read their address. */
const PAGES = allPages().filter(
  (page) => /<form/.test(htmlOf(page)) && !/^\/(lessons|teach|threads)\/./.test(page),
);

async function unharmed(page: Page): Promise<void> {
  const harm = await page.evaluate(() => ({
    broken: 'broken' in window,
    polluted: Object.keys(Object.prototype).length + ('polluted' in {} ? 1 : 0),
    images: document.querySelectorAll('img, iframe, object, embed').length,
    links: [...document.querySelectorAll('a')].filter(({ protocol }) => protocol === 'javascript:')
      .length,
    shown: /\bNaN\b(?!=)|\bInfinity\b|\[object /.exec(
      document
        .querySelector('main')!
        .innerText.replaceAll(/“[^”]*”|«[^»]*»|(The address says|La dirección dice) [^.]*\./g, ''),
    )?.[0],
  }));
  expect(harm).toEqual({ broken: false, polluted: 0, images: 0, links: 0, shown: undefined });
}

for (const address of PAGES) {
  test(`${address}: a hostile address is only text`, async ({ page }) => {
    // The fields stand in the page as it was built, before any script.
    const main = htmlOf(address).split('<main')[1]!;
    const names = [...new Set(main.match(/(?<= name=")[^"]+(?=")/g))];
    expect(names).not.toEqual([]);
    // Half of them at a time, in turn over the fields.
    const half = NASTY.length / 2;
    for (let at = 0; at < NASTY.length; at += half) {
      const text = NASTY[at]!;
      const query = new URLSearchParams([
        ...names.map((name, index) => [name, NASTY[at + (index % half)]!]),
        ['__proto__', '{"polluted":1}'],
        ['constructor[prototype][polluted]', '1'],
        [MARKUP, MARKUP],
      ]);
      await page.goto(`${address}?${query}#${encodeURIComponent(text.slice(0, 100))}`);
      await islandsReady(page);
      await expect(page.locator('h1')).toBeVisible();
      await unharmed(page);
    }
  });
}

const STORED: Record<string, string> = {
  markup: JSON.stringify({ version: 1, jobs: [{ id: MARKUP, name: MARKUP, holes: [MARKUP] }] }),
  prototype: '{"version":1,"__proto__":{"polluted":1},"jobs":{"__proto__":{"polluted":1}}}',
  'not JSON': MARKUP,
  'wrong kinds':
    '{"version":"1","jobs":[null,1,[],{"id":{},"holes":"x"}],"unit":["mm"],"readings":1}',
  'the future': '{"version":999999,"jobs":[]}',
  deep: `${'['.repeat(5000)}${']'.repeat(5000)}`,
  numbers: '{"version":1,"unit":1e999,"drawer":[{"diameter":-1e308}],"cards":[{"due":1e400}]}',
};

const KEYS = ['tapped-hole-handbook', 'tapped-hole-handbook-jobs', 'tapped-hole-handbook-review'];

for (const [kind, text] of Object.entries(STORED)) {
  test(`a hostile device store (${kind}) is set aside whole, and every page works`, async ({
    page,
  }) => {
    await page.addInitScript(
      ([keys, stored]) => {
        if (sessionStorage.getItem('laid')) return;
        for (const key of keys!) localStorage.setItem(key, stored as string);
        sessionStorage.setItem('laid', 'yes');
      },
      [KEYS, text] as const,
    );
    for (const address of [
      '/jobs/',
      '/jobs/drawer/',
      '/review/',
      '/drawing/',
      '/calculators/torque/?thread=M8x1.25-6H',
      '/plan/?thread=M8x1.25-6H&hole=blind&depth=16&material=al-wrought',
    ]) {
      await page.goto(address);
      await islandsReady(page);
      await unharmed(page);
    }
    await expect(page.locator('main')).toContainText('6.8 mm');
    // Keep something over it: what stood there must still be somewhere.
    await page.goto('/jobs/?thread=M8x1.25-6H&hole=blind&depth=16&material=al-wrought&part=Lid');
    await islandsReady(page);
    const keep = page.getByRole('button', { name: 'Keep it', exact: true });
    if (await keep.isEnabled()) await keep.click();
    await expect(page.locator('.job-said')).not.toBeEmpty();
    const all = await page.evaluate(() => Object.values({ ...localStorage }));
    expect(all.some((each) => each === text)).toBe(true);
    await unharmed(page);
  });
}

const FILES: [string, string, string][] = [
  ['/jobs/', 'jobs.json', STORED['markup']!],
  ['/jobs/', 'jobs.json', STORED['prototype']!],
  ['/jobs/', 'jobs.json', STORED['deep']!],
  ['/jobs/', 'jobs.json', '\u0000\u0001PNG'],
  ['/jobs/', 'jobs.json', `{"version":1,"jobs":[],"x":"${'y'.repeat(6_000_000)}"}`],
  ['/jobs/drawer/', 'drawer.csv', `size;pitch\n${MARKUP};${MARKUP}\n=cmd|'/c calc'!A1;@x`],
  ['/jobs/drawer/', 'drawer.csv', '"unclosed\n"a,b\n,,,,\n'.repeat(3000)],
  ['/drawing/', 'part.json', STORED['wrong kinds']!],
  ['/drawing/', 'part.json', STORED['prototype']!],
];

for (const [at, [address, name, text]] of FILES.entries()) {
  test(`a hostile file (${at + 1}, ${name} on ${address}) is answered in words`, async ({
    page,
  }) => {
    await page.goto(address);
    await islandsReady(page);
    const before = await page.evaluate(() => JSON.stringify({ ...localStorage }));
    const silent = await page.locator('main').innerText();
    await page
      .locator('input[type=file]')
      .first()
      .setInputFiles({ name, mimeType: 'text/plain', buffer: Buffer.from(text) });
    // Something is said of it that was not there before.
    await expect.poll(() => page.locator('main').innerText()).not.toBe(silent);
    await unharmed(page);
    const after = await page.evaluate(() => JSON.stringify({ ...localStorage }));
    if (address === '/jobs/') expect(after).toBe(before);
  });
}

/** The example configuration for nginx, tried with nginx itself where it is installed. */
import { spawn, spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { OFFLINE } from '../../components/words/en/offline';
import { DIST } from '../tools/pages';
import { expect, islandsReady, test as base } from './support';

const EXAMPLE = new URL('../../site/hosting/nginx.conf', import.meta.url);

function freePort(): Promise<number> {
  return new Promise((resolve) => {
    const server = createServer().listen(0, 'localhost', () => {
      const { port } = server.address() as AddressInfo;
      server.close(() => resolve(port));
    });
  });
}

const test = base.extend<{ host: string }>({
  // The first argument names what a fixture stands on: this one stands on nothing.
  // oxlint-disable-next-line no-empty-pattern
  host: async ({}, use) => {
    const missing = spawnSync('nginx', ['-v'], { stdio: 'ignore' }).status !== 0;
    base.skip(missing, 'no nginx on this machine');
    const port = await freePort();
    const place = mkdtempSync(join(tmpdir(), 'nginx-'));
    mkdirSync(join(place, 'logs'));
    const site = readFileSync(EXAMPLE, 'utf8')
      .replace('listen 8080;', `listen ${port};`)
      .replace('root /srv/tapped-hole-handbook;', `root ${DIST};`);
    // What a distribution's own nginx.conf says around it.
    const types = 'include /etc/nginx/mime.types;';
    const whole = `daemon off; ${process.getuid?.() === 0 ? 'user root;' : ''} pid ${place}/pid; error_log ${place}/error.log;
      events {} http { ${types} access_log off; client_body_temp_path ${place}/b; proxy_temp_path ${place}/p;
      fastcgi_temp_path ${place}/f; uwsgi_temp_path ${place}/u; scgi_temp_path ${place}/s;\n${site}\n}`;
    writeFileSync(join(place, 'nginx.conf'), whole);
    const nginx = spawn('nginx', ['-p', place, '-c', join(place, 'nginx.conf')], {
      stdio: 'ignore',
    });
    const address = `http://localhost:${port}`;
    await expect
      .poll(() =>
        fetch(address).then(
          ({ ok }) => ok,
          () => false,
        ),
      )
      .toBe(true);
    await use(address);
    nginx.kill();
    rmSync(place, { recursive: true, force: true });
  },
  baseURL: async ({ host }, use) => use(host),
});

test.use({ serviceWorkers: 'allow' });

test('nginx, as the example has it, serves the handbook with its headers, and it is kept', async ({
  page,
  host,
}) => {
  const response = await fetch(`${host}/plan/`);
  expect(Object.fromEntries(response.headers)).toMatchObject({
    'content-type': 'text/html; charset=utf-8',
    'content-security-policy': "frame-ancestors 'none'",
    'x-content-type-options': 'nosniff',
    'referrer-policy': 'no-referrer',
    'cache-control': 'no-cache',
    'content-encoding': 'gzip',
  });
  const script = /src="(\/_astro\/[^"]+\.js)"/.exec(await response.text())?.[1];
  const asset = await fetch(host + script!);
  expect(asset.headers.get('cache-control')).toContain('immutable');
  expect(asset.headers.get('content-type')).toContain('javascript');
  const lost = await fetch(`${host}/threads/m8x9/`);
  expect(lost.status).toBe(404);
  expect(await lost.text()).toContain('No page at this address');
  const folder = await fetch(`${host}/plan`, { redirect: 'manual' });
  expect(folder.headers.get('location')).toBe('/plan/');

  await page.goto('/plan/?thread=M8x1.25-6H&hole=blind&depth=16&material=al-wrought');
  await islandsReady(page);
  await expect(page.locator('main')).toContainText('6.8 mm');
  await expect(page.locator('[data-kept]')).toHaveText(OFFLINE.all, { timeout: 120_000 });
});

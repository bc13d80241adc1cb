/** The licences of what travels inside the built site, read from the packages themselves. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const SHIPPED = [
  {
    name: '@fontsource-variable/atkinson-hyperlegible-next',
    what: 'typeface Atkinson Hyperlegible Next',
  },
  { name: 'preact', what: 'draws what moves on a page' },
  { name: '@preact/signals', what: 'travels with Preact' },
  { name: 'astro', what: 'wakes the moving parts of a page' },
  { name: 'd3-array', what: 'ticks of the charts' },
  { name: 'd3-shape', what: 'lines and areas of the charts' },
  { name: 'minisearch', what: 'index of the search' },
  { name: 'papaparse', what: 'tables of the tap drawer and the jobs' },
  { name: 'uqr', what: 'QR code of the job card' },
  { name: 'workbox-precaching', what: 'keeps the handbook on the device' },
  { name: 'workbox-core', what: 'travels with workbox-precaching' },
  { name: 'valibot', what: 'checks what the device has stored' },
];

function licenceOf(name: string): string {
  const folder = join(process.cwd(), 'node_modules', name);
  const file = readdirSync(folder).find((each) => /^licen[cs]e/i.test(each));
  if (!file) throw new Error(`${name} came without its licence, which must travel with it.`);
  return readFileSync(join(folder, file), 'utf8').trim();
}

export function GET(): Response {
  const rule = '='.repeat(72);
  const parts = SHIPPED.map(
    ({ name, what }) => `${rule}\n${name}: ${what}\n${rule}\n\n${licenceOf(name)}\n`,
  );
  const head = 'The handbook itself is under the MIT licence. It carries these works of others.\n';
  return new Response([head, ...parts].join('\n'), {
    headers: { 'content-type': 'text/plain; charset=utf-8' },
  });
}

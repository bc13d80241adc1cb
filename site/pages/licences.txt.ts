/** The licences of what travels inside the built site, read from the packages themselves. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { LICENCES } from '../../components/words/en/pages/licences';

function licenceOf(name: string): string {
  const folder = join(process.cwd(), 'node_modules', name);
  const file = readdirSync(folder).find((each) => /^licen[cs]e/i.test(each));
  if (!file) throw new Error(`${name} came without its licence, which must travel with it.`);
  return readFileSync(join(folder, file), 'utf8').trim();
}

export function GET(): Response {
  const rule = '='.repeat(72);
  const parts = Object.entries(LICENCES.works).map(
    ([name, what]) => `${rule}\n${name}: ${what}\n${rule}\n\n${licenceOf(name)}\n`,
  );
  return new Response([`${LICENCES.head}\n`, ...parts].join('\n'), {
    headers: { 'content-type': 'text/plain; charset=utf-8' },
  });
}

/** The licences of what travels inside the built site, read from the packages themselves. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { LICENCES } from '../../components/words/en/pages/licences';

function licenceOf(name: string): string {
  const folder = join(process.cwd(), 'node_modules', name);
  const file = readdirSync(folder).find((each) => /^licen[cs]e/i.test(each));
  if (!file) throw new Error(`${name} came without its licence, which must travel with it.`);
  // A bundler lists the licences of what is bundled in itself after its own; none of that travels.
  const [own] = readFileSync(join(folder, file), 'utf8').split(
    /^# Licenses of bundled dependencies/m,
  );
  return own!.trim();
}

export function GET(): Response {
  const rule = '='.repeat(72);
  const section = (title: string, text: string) => `${rule}\n${title}\n${rule}\n\n${text}\n`;
  const works = Object.entries(LICENCES.works).map(([name, what]) =>
    section(`${name}: ${what}`, licenceOf(name)),
  );
  const data = Object.entries(LICENCES.data).map(([file, what]) =>
    section(what, readFileSync(join(process.cwd(), file), 'utf8').trim()),
  );
  return new Response([`${LICENCES.head}\n`, ...works, ...data].join('\n'), {
    headers: { 'content-type': 'text/plain; charset=utf-8' },
  });
}

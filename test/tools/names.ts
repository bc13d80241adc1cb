/**
 * `npm run names`: every name that a reader sees on the built pages, with who made it: the trade, a
 * standard (which), or this handbook. A new name stands in the list without a mark until somebody has
 * asked where it comes from; the tests refuse it until then.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parse } from 'node-html-parser';
import Papa from 'papaparse';
import { isTranslation } from '../../site/language.ts';
import { allPages, DIST, htmlOf } from './pages.ts';

export type Mark = 'trade' | 'standard' | 'ours' | '';

export interface Name {
  name: string;
  /** Heading, label, option, button, parameter of an address, or word of a file. */
  kind: string;
  /** A page where it stands. */
  page: string;
  mark: Mark;
  /** Which standard. */
  of: string;
}

const FILE = fileURLToPath(new URL('../names/names.csv', import.meta.url));

/** What the pages show, by kind. What stands in a lesson's question is prose, and no name. */
const SHOWN: [kind: string, selector: string][] = [
  ['page', 'header nav a, footer li a'],
  ['heading', 'main h1, main h2, main h3'],
  ['label', '.field > label, .field > legend, legend, .tile > span'],
  ['option', 'option'],
  ['button', 'button, summary, .button'],
  ['column', 'thead th'],
];
const PROSE = '.recall, .checks, .prediction, .ask, form[data-check]';
/** Thread pages are alike: one of each kind speaks for all, and their designations are the standards'. */
const ONE_OF_EACH = /^\/threads\/(m8x1\.25|1-4-20-unc|g1-4|rp1-4|1-4-18-npt|tables\/[^/]+)\/$/;

function wanted(page: string): boolean {
  if (/^\/teach\/./.test(page)) return false;
  // A translation names nothing that has no English name; its words are asked for in their own test.
  if (isTranslation(page)) return false;
  return !/^\/threads\/./.test(page) || ONE_OF_EACH.test(page);
}

const clean = (text: string): string => text.replaceAll(/\s+/g, ' ').trim();

export function shownNames(): Map<string, Pick<Name, 'kind' | 'page'>> {
  const names = new Map<string, Pick<Name, 'kind' | 'page'>>();
  const add = (name: string, kind: string, page: string): void => {
    // A unit, a sign or a number is no name.
    if (!/[a-z]{2}|^[A-Z]/i.test(name) || names.has(name)) return;
    names.set(name, { kind, page });
  };
  for (const page of allPages().filter(wanted)) {
    const root = parse(htmlOf(page));
    for (const each of root.querySelectorAll(PROSE)) each.remove();
    for (const [kind, selector] of SHOWN)
      for (const each of root.querySelectorAll(selector))
        add(clean(each.structuredText), kind, page);
    for (const each of root.querySelectorAll('main [name]'))
      add(each.getAttribute('name') ?? '', 'parameter', page);
  }
  const schema = readFileSync(join(DIST, 'jobs.schema.json'), 'utf8');
  for (const [, word] of schema.matchAll(/"([a-z][A-Za-z]*)":/g)) add(word!, 'file', '/jobs/');
  return names;
}

export function markedNames(): Name[] {
  const { data } = Papa.parse<Name>(readFileSync(FILE, 'utf8'), {
    header: true,
    skipEmptyLines: true,
  });
  return data;
}

if (process.argv[1]?.endsWith('names.ts')) {
  const shown = shownNames();
  const known = new Map(markedNames().map((each) => [each.name, each]));
  const rows = [...shown]
    .map(([name, where]) => ({
      name,
      ...where,
      mark: known.get(name)?.mark ?? '',
      of: known.get(name)?.of ?? '',
    }))
    .sort((a, b) => (a.kind + a.name < b.kind + b.name ? -1 : 1));
  writeFileSync(
    FILE,
    `${Papa.unparse(rows, { columns: ['name', 'kind', 'page', 'mark', 'of'], newline: '\n' })}\n`,
  );
  const count = (mark: Mark): number => rows.filter((row) => row.mark === mark).length;
  process.stdout.write(
    `${rows.length} names: ${count('trade')} of the trade, ${count('standard')} of standards, ${count('ours')} our own, ${count('')} without a mark\n`,
  );
}

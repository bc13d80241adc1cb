/** Another language holds the same words, place for place, and shows the same numbers in them. */
import { existsSync, globSync } from 'node:fs';
import { basename, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { counterpart, TRANSLATED, TRANSLATIONS } from '../../site/language';
import { ROOT } from '../tools/modules';
import { reached } from '../tools/reached';

type Words = { [key: string]: unknown };

/** Every text of a module by its path, `PROBLEMS.empty`; lists by their positions. */
function texts(value: unknown, path = ''): [string, string][] {
  if (typeof value === 'string') return [[path, value]];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) =>
    texts(inner, path === '' ? key : `${path}.${key}`),
  );
}

const numbersIn = (text: string): string[] =>
  [...new Set([...text.matchAll(/\{\w+(?::\w+)?\}/g)].map(([slot]) => slot))].sort();

/** All that the translated pages are made of. */
const made = reached(Object.values(TRANSLATED).map((page) => `site/pages/${page}.astro`));

/** Not words: what stays as it is in every language. */
const SAME = /(^|\.)(ids|sources|cautions|lesson|level|href|tag|home)(\.|$)/;

describe.each(TRANSLATIONS)('%s', (language) => {
  const files = globSync(`components/words/${language}/**/*.ts`, { cwd: ROOT }).filter(
    (file) => basename(file) !== 'same.ts',
  );

  test('there is something to compare', () => {
    expect(files.length).toBeGreaterThan(10);
  });

  test.each(files)('%s says all that the English does, with the same numbers', async (file) => {
    const english = file.replaceAll('\\', '/').replace(`/words/${language}/`, '/words/en/');
    expect(counterpart(`/${english}`, language)).toBe(`/${file.replaceAll('\\', '/')}`);
    const ours = new Map(texts((await import(join(ROOT, file))) as Words));
    const theirs = new Map(texts((await import(join(ROOT, english))) as Words));
    expect([...ours.keys()].sort()).toEqual([...theirs.keys()].sort());
    const untold = [...theirs]
      .filter(([path]) => !SAME.test(path))
      .filter(([path, text]) => numbersIn(text).join() !== numbersIn(ours.get(path) ?? '').join())
      .map(([path]) => path);
    expect(untold).toEqual([]);
  });

  test('every module of words that the translated pages load has its translation', () => {
    const english = [...made].filter((file) => file.includes('/words/en/'));
    expect(english.length).toBeGreaterThan(20);
    const missing = english.filter(
      (file) => !existsSync(join(ROOT, counterpart(`/${file}`, language) ?? '')),
    );
    expect(missing).toEqual([]);
  });

  test('sentences are translated, not copied', async () => {
    for (const file of files) {
      const english = file.replaceAll('\\', '/').replace(`/words/${language}/`, '/words/en/');
      const ours = new Map(texts((await import(join(ROOT, file))) as Words));
      const theirs = texts((await import(join(ROOT, english))) as Words);
      const copied = theirs.filter(
        ([path, text]) => !SAME.test(path) && text.split(' ').length > 4 && ours.get(path) === text,
      );
      expect(
        copied.map(([path]) => path),
        file,
      ).toEqual([]);
    }
  });
});

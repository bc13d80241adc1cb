/** A translated page says nothing in English that its language has words for, and shows the same numbers. */
import { globSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'node-html-parser';
import { describe, expect, test } from 'vitest';
import { isTranslation, TRANSLATIONS } from '../../site/language';
import { ROOT } from '../tools/modules';
import { allPages, htmlOf } from '../tools/pages';

function texts(value: unknown): string[] {
  if (typeof value === 'string') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(texts) : [];
}

/** Pieces of a text between its values, long enough to be nobody else's. */
const pieces = (text: string): string[] =>
  text
    .split(/\{[^}]*\}|[[\]]/)
    .map((piece) => piece.trim())
    .filter((piece) => /\p{L}+ \p{L}+/u.test(piece) && piece.length > 8);

const bodyOf = (page: string): string => {
  const body = parse(htmlOf(page)).querySelector('body')!;
  for (const script of body.querySelectorAll('script, style')) script.remove();
  return body.textContent.replace(/\s+/g, ' ');
};

/** The other page is named in its own language. */
const NAMED = ['The planner in English'];

describe.each(TRANSLATIONS)('pages in %s', (language) => {
  const pages = allPages().filter((page) => page.startsWith(`/${language}/`));

  test('are there, and told apart from the others', () => {
    expect(pages).toEqual([`/${language}/`, `/${language}/plan/`, `/${language}/plan/card/`]);
    expect(pages.every(isTranslation)).toBe(true);
    for (const page of pages) {
      const html = parse(htmlOf(page));
      expect(html.querySelector('html')?.getAttribute('lang')).toBe(language);
      const others = html.querySelectorAll('footer a[hreflang]');
      expect(others.map((link) => link.getAttribute('hreflang'))).toContain('en');
    }
  });

  test('say nothing in English', async () => {
    const english: string[] = [];
    for (const file of globSync('components/words/en/**/*.ts', { cwd: ROOT })) {
      english.push(...texts(await import(join(ROOT, file))).flatMap(pieces));
    }
    expect(english.length).toBeGreaterThan(2000);
    for (const page of pages) {
      const said = bodyOf(page);
      const left = english.filter((piece) => said.includes(piece) && !NAMED.includes(piece));
      expect([...new Set(left)], page).toEqual([]);
    }
  });

  test('show the numbers of the English page, each as often', () => {
    for (const page of pages) {
      const numbers = (text: string) => (text.match(/\d+(?:[.,/]\d+)*/g) ?? []).toSorted();
      const english = page.slice(language.length + 1);
      expect(numbers(bodyOf(page)), page).toEqual(numbers(bodyOf(english)));
    }
  });
});

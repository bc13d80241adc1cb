import MiniSearch from 'minisearch';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { INDEX_OPTIONS, words, type Entry } from '../../components/search/entry';
import { find, hrefOf, LONGEST, type Match } from '../../components/search/find';
import { allPages, DIST } from '../tools/pages';

const index = MiniSearch.loadJSON<Entry>(
  readFileSync(join(DIST, 'search/index.json'), 'utf8'),
  INDEX_OPTIONS,
);
const search = (query: string): Match[] => find(index, query);
const links = (query: string): string[] => search(query).map(hrefOf);

describe('what is typed at a machine', () => {
  test('m8 drill: the thread, and the drill calculator with it filled in', () => {
    const [first, second] = links('m8 drill');
    expect(first).toBe('/threads/m8x1.25/');
    expect(second).toBe('/calculators/tap-drill/?thread=M8x1.25');
  });

  test('10-32, however it is written', () => {
    for (const typed of ['10-32', '#10-32', '10-32 unf', '10/32', ' # 10-32 UNF ']) {
      expect(links(typed)[0], typed).toBe('/threads/10-32-unf/');
    }
  });

  test('bottoming: the word, and where it is taught', () => {
    const found = links('bottoming').slice(0, 8);
    expect(found).toContain('/glossary/#bottoming-chamfer');
    expect(found.some((link) => link.startsWith('/lessons/chamfer-classes/'))).toBe(true);
  });

  test.each([
    ['M 8 × 1,25', '/threads/m8x1.25/'],
    ['m8x1', '/threads/m8x1/'],
    ['M10', '/threads/m10x1.5/'],
    ['1/4-20', '/threads/1-4-20-unc/'],
    ['1/4 20', '/threads/1-4-20-unc/'],
    ['1/4 unf', '/threads/1-4-28-unf/'],
    ['g1/4', '/threads/g1-4/'],
    ['bspp 1/4', '/threads/g1-4/'],
    ['npt 1/2', '/threads/1-2-14-npt/'],
  ])('%s', (typed, link) => {
    expect(links(typed)[0]).toBe(link);
  });

  test.each([
    ['cross bore', 'cross-bore'],
    ['keyway', 'keyway'],
    ['slanting face', 'slanting-face'],
  ])('%s: the word, and where it is taught', (typed, term) => {
    const found = links(typed).slice(0, 8);
    expect(found).toContain(`/glossary/#${term}`);
    expect(found.some((link) => link.startsWith('/lessons/through-holes/'))).toBe(true);
  });

  test.each([
    ['intersecting hole', '/glossary/#cross-bore'],
    ['keyseat', '/glossary/#keyway'],
    ['angled surface', '/glossary/#slanting-face'],
    ['spotface', '/glossary/#spot-face'],
  ])('by its other name: %s', (typed, link) => {
    expect(links(typed).slice(0, 6)).toContain(link);
  });

  test.each([
    ['botoming', '/glossary/#bottoming-chamfer'],
    ['torqe', '/calculators/torque/'],
    ['chamfre', '/calculators/chamfer/'],
    ['enggement', '/calculators/engagement/'],
    ['gage', '/calculators/gauging/'],
    ['brocken tap', '/broken-taps/'],
    ['spiral piont', '/glossary/#spiral-point'],
  ])('a typing error: %s', (typed, link) => {
    expect(links(typed).slice(0, 6)).toContain(link);
  });

  test('a fault that can be seen opens in the finder', () => {
    expect(links('broke at the bottom').slice(0, 4)).toContain(
      '/broken-taps/?symptom=broke-bottom',
    );
  });

  test('a thread by itself leads to its page and to planning it', () => {
    expect(links('M12').slice(0, 2)).toEqual(['/threads/m12x1.75/', '/plan/?thread=M12x1.75']);
  });
});

describe('every kind of thing is found by its own name', () => {
  const kinds = ['page', 'calculator', 'lesson', 'section', 'table', 'symptom', 'rule', 'word'];
  const held = index.search(MiniSearch.wildcard);

  test.each(kinds)('%s', (kind) => {
    const some = held.filter((entry) => entry['kind'] === kind);
    expect(some.length).toBeGreaterThan(0);
    const lost = some
      .map(({ id, title }) => ({ id: String(id), title: String(title) }))
      .filter(({ id, title }) => !find(index, title).some((match) => match.id === id));
    expect(lost).toEqual([]);
  });

  test('every thread leads, typed as its page has it', () => {
    const threads = held.filter((entry) => entry['kind'] === 'thread');
    expect(threads.length).toBeGreaterThan(300);
    const lost = threads.filter(({ title, id }) => find(index, String(title))[0]?.id !== id);
    expect(lost.map(({ title }) => String(title))).toEqual([]);
  });

  test('every page that was built is in it', () => {
    const known = new Set(held.map(({ id }) => String(id)));
    const without = allPages().filter((page) => !known.has(page));
    // The front page, the search itself, and what is said in another language.
    expect(
      without.filter((page) => !/^\/((search\/|no-network\/|404\.html)?$|es\/)/.test(page)),
    ).toEqual([]);
  });
});

describe('what nobody would type', () => {
  test('nothing, spaces, signs, words too common to find anything', () => {
    for (const typed of ['', '   ', '?!"', 'the of and']) expect(search(typed), typed).toEqual([]);
  });

  test('script, odd letters, names of the language’s own, and a megabyte', () => {
    for (const typed of [
      '<script>alert(1)</script>',
      '__proto__',
      'constructor',
      '\u202E\u0000',
      '🔩'.repeat(40),
    ]) {
      expect(() => search(typed), typed).not.toThrow();
    }
    expect('a'.repeat(1e6).length).toBeGreaterThan(LONGEST);
    expect(search('m8 '.repeat(1e5))).toEqual([]);
  });

  test('a link carries a thread only as text', () => {
    for (const link of links('m8 drill')) expect(link).toMatch(/^\/[^/]/);
    expect(words('“M8”')).toEqual(['m8']);
  });
});

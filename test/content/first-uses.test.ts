import { globSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { linkFirstUses } from '../../site/markdown/first-uses';

const TERMS = [
  { id: 'pitch-diameter', term: 'pitch diameter' },
  { id: 'flute', term: 'flute' },
  { id: 'spiral-flute', term: 'spiral-flute tap' },
];

describe('first uses of glossary terms', () => {
  test('the first use is linked and the second is not', () => {
    expect(linkFirstUses('<p>A flute. Flutes.</p>', TERMS)).toBe(
      '<p>A <a href="/glossary/#flute">flute</a>. Flutes.</p>',
    );
  });

  test('a longer term is not taken for a shorter one, nor a part of a word', () => {
    expect(linkFirstUses('<p>A spiral-flute tap, fluted.</p>', TERMS)).toBe(
      '<p>A <a href="/glossary/#spiral-flute">spiral-flute tap</a>, fluted.</p>',
    );
  });

  test.each([
    '<h2>The flute</h2>',
    '<a href="/x/">flute</a>',
    '<astro-island props="{&quot;a>b&quot;:1}"><p>flute</p></astro-island>',
    '<svg><text>flute</text></svg>',
    '<script>const flute = 1 < 2;</script>',
    '<form><p>flute</p></form>',
  ])('nothing is linked inside %s', (html) => {
    expect(linkFirstUses(html, TERMS)).toBe(html);
  });

  test('text after a closed element is open again', () => {
    expect(linkFirstUses('<h2>flute</h2><p>flute</p>', TERMS)).toContain('<p><a href');
  });
});

describe('the glossary', () => {
  const entries = globSync('site/content/glossary/*.md').map((path) => ({
    path,
    text: readFileSync(path, 'utf8'),
  }));

  test('has its terms, each once', () => {
    const terms = entries.map(({ text }) => /^term: (.*)$/m.exec(text)?.[1] ?? '');
    expect(terms.length).toBeGreaterThan(40);
    expect(terms.filter((term) => term === '')).toEqual([]);
    expect(new Set(terms).size).toBe(terms.length);
  });

  test('every term has one meaning, in a paragraph, and a source', () => {
    const wrong = entries.filter(({ text }) => {
      const meaning = text.split('---')[2]?.trim() ?? '';
      const sourced = /^sources: \[\w/m.test(text);
      return meaning === '' || meaning.includes('\n\n') || !sourced;
    });
    expect(wrong.map(({ path }) => path)).toEqual([]);
  });

  test('every term has a word from at least one side', () => {
    const silent = entries.filter(
      ({ text }) => /^us: \[\]/m.test(text) && /^uk: \[\]/m.test(text) && /^iso: \[\]/m.test(text),
    );
    expect(silent.map(({ path }) => path)).toEqual([]);
  });
});

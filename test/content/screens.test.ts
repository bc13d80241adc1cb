/** A lesson's HTML taken apart and laid out for a class: nothing lost, one idea each. */
import { globSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { SESSIONS } from '../../components/words/en/course';
import { blocksOf } from '../../site/markdown/blocks';
import { isSpoken, screensOf } from '../../site/markdown/screens';

const words = (letters: number) => 'word '.repeat(Math.ceil(letters / 5)).trim();
const parts = (html: string) =>
  screensOf(blocksOf(html)).map(({ part, blocks }) => [part, blocks.map(({ tag }) => tag)]);

describe('blocks', () => {
  test('stand side by side, whatever is nested in them', () => {
    const html =
      '<p>One <b>bold</b><br>line</p>\n<figure class="fig a"><svg><path d="M0 0"/></svg><p>in</p></figure><hr>';
    const blocks = blocksOf(html);
    expect(blocks.map(({ tag }) => tag)).toEqual(['p', 'figure', 'hr']);
    expect(blocks[1]?.classes).toEqual(['fig', 'a']);
    expect(blocks.map(({ html: each }) => each).join('')).toBe(html.replace('\n', ''));
    expect(blocks[0]?.text).toBe('One bold line');
  });

  test('a quote with a tag in it ends nothing, and a loader stays with its island', () => {
    const html =
      '<script>if (a < b) { "</p>" }</script><astro-island props="{&quot;a&quot;:&quot;<p>&quot;}"><p>x</p></astro-island><p>y</p>';
    const blocks = blocksOf(html);
    expect(blocks.map(({ tag }) => tag)).toEqual(['astro-island', 'p']);
    expect(blocks[0]?.html).toContain('<script>');
  });
});

describe('screens', () => {
  test('a heading opens one, and is not repeated in the text', () => {
    const screens = screensOf(blocksOf('<p>a</p><h2 id="x">Part</h2><p>b</p>'));
    expect(screens.map(({ part, opens }) => [part, opens])).toEqual([
      [null, false],
      ['Part', true],
    ]);
  });

  test('short paragraphs share one, long ones do not', () => {
    expect(parts(`<p>${words(100)}</p><p>${words(100)}</p>`)).toEqual([[null, ['p', 'p']]]);
    expect(parts(`<p>${words(300)}</p><p>${words(300)}</p>`)).toHaveLength(2);
  });

  test('a figure stands alone, with a short line that leads to it', () => {
    expect(parts(`<p>${words(300)}</p><figure></figure><p>after</p>`)).toHaveLength(3);
    expect(parts('<p>Look here.</p><figure></figure>')).toEqual([[null, ['p', 'figure']]]);
  });

  test('a line that ends in a colon is never left alone', () => {
    expect(parts(`<p>${words(400)}:</p><ul><li>${words(300)}</li></ul>`)).toHaveLength(1);
  });

  test('few words alone are set large, figures are not', () => {
    const [text, figure] = screensOf(blocksOf(`<p>${words(200)}</p><figure></figure>`));
    expect([isSpoken(text!), isSpoken(figure!)]).toEqual([true, false]);
  });
});

describe('the course', () => {
  const slugs = globSync('site/content/lessons/*.mdx').map(
    (path) => /\d+-([a-z0-9-]+)\.mdx$/.exec(path)?.[1] ?? path,
  );

  test('every lesson has its place in a session, and the sessions name no other', () => {
    const named = SESSIONS.flatMap(({ lessons }) => lessons);
    expect([...named].sort()).toEqual([...slugs].sort());
  });

  test('a session takes fifty minutes', () => {
    for (const { parts: spent } of SESSIONS) {
      expect(spent.reduce((sum, { minutes }) => sum + minutes, 0)).toBe(50);
    }
  });

  const notes = globSync('site/content/teaching/*.yaml');

  test('every lesson has notes for whoever teaches it', () => {
    const noted = notes.map((path) => /([a-z0-9-]+)\.yaml$/.exec(path)?.[1] ?? path);
    expect(noted.sort()).toEqual([...slugs].sort());
  });

  test.each(notes)('%s belongs to a lesson and spends its minutes', (path) => {
    const slug = /([a-z0-9-]+)\.yaml$/.exec(path)?.[1] ?? path;
    expect(slugs).toContain(slug);
    const [lesson = ''] = globSync(`site/content/lessons/*-${slug}.mdx`);
    const whole = Number(/^minutes: (\d+)$/m.exec(readFileSync(lesson, 'utf8'))?.[1]);
    const spent = [...readFileSync(path, 'utf8').matchAll(/minutes: (\d+)/g)];
    expect(spent.reduce((sum, [, minutes]) => sum + Number(minutes), 0)).toBe(whole);
  });
});

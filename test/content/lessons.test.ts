import { globSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

interface Head {
  slug: string;
  order: number;
  needs: string[];
}

/** Order and needs from the head of a lesson; the rest of the head is the build's to check. */
function readHead(path: string, text: string): Head {
  const slug = /(?:^|\/)\d+-([a-z0-9-]+)\.mdx$/.exec(path.replaceAll('\\', '/'))?.[1] ?? path;
  const head = /^---\n([\s\S]*?)\n---/.exec(text)?.[1] ?? '';
  const inline = /^needs:\s*\[(.*)\]/m.exec(head)?.[1];
  const block = /^needs:\n((?:\s+- .*\n?)+)/m.exec(head)?.[1];
  const needs = (inline?.split(',') ?? block?.split('\n') ?? [])
    .map((each) => each.replace(/^[\s-]+|['"\s]/g, ''))
    .filter(Boolean);
  return { slug, order: Number(/^order:\s*(\d+)/m.exec(head)?.[1]), needs };
}

/** Needs that do not come before the lesson that names them. */
function outOfOrder(lessons: readonly Head[]): string[] {
  const place = new Map(lessons.map(({ slug, order }) => [slug, order]));
  return lessons.flatMap(({ slug, order, needs }) =>
    needs
      .filter((need) => !((place.get(need) ?? Infinity) < order))
      .map((need) => `${slug} needs ${need}`),
  );
}

const lessons = globSync('site/content/lessons/*.mdx').map((path) =>
  readHead(path, readFileSync(path, 'utf8')),
);

describe('the course', () => {
  test('has lessons, each with a place of its own', () => {
    expect(lessons.length).toBeGreaterThan(0);
    expect(lessons.filter(({ order }) => !(order > 0))).toEqual([]);
    expect(new Set(lessons.map(({ order }) => order)).size).toBe(lessons.length);
  });

  test('never needs what comes later', () => {
    expect(outOfOrder(lessons)).toEqual([]);
  });

  test('the rule sees a need that comes later, one that is missing, and both ways to write a list', () => {
    const first = readHead('lessons/1-one.mdx', '---\norder: 1\nneeds: [two]\n---\n');
    const second = readHead(
      'lessons/2-two.mdx',
      "---\norder: 2\nneeds:\n  - one\n  - 'none'\n---\n",
    );
    expect(outOfOrder([first, second])).toEqual(['one needs two', 'two needs none']);
  });
});

describe('questions to answer from memory', () => {
  const texts = globSync('site/content/lessons/*.mdx').map((path) => ({
    path,
    text: readFileSync(path, 'utf8'),
  }));

  test.each(texts)('$path keeps them in its head, where the review finds them too', ({ text }) => {
    const head = /^---\n([\s\S]*?)\n---/.exec(text)?.[1] ?? '';
    const ids = [...head.matchAll(/^ {2}- id: (\S+)$/gm)].map(([, id]) => id);
    expect(ids.length, 'recall: in the head, 3 to 6 of id, ask and answer').toBeGreaterThanOrEqual(
      3,
    );
    expect(ids.length).toBeLessThanOrEqual(6);
    expect(new Set(ids).size).toBe(ids.length);
    expect(text).toContain('<Recall prompts={frontmatter.recall} />');
  });

  test.each(texts)('$path has a note for the instructor', ({ text }) => {
    expect(text).toMatch(/\n<Instructor>\n[\s\S]{100,}\n<\/Instructor>\n/);
  });
});

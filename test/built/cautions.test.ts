/**
 * Every built page where a tool turns or is struck, with the cautions that it must show: page and caution are
 * the names of the tests. Titles, where a page lists them; the line that defers to manual, data sheet and rules on all.
 */
import { describe, expect, test } from 'vitest';
import { parse } from 'node-html-parser';
import { CAUTIONS, NOT_A_RATING, type CautionId } from '../../components/words/en/cautions';
import * as spanish from '../../components/words/es/cautions';
import { allPages, htmlOf } from '../tools/pages';

const pages = allPages();
const under = (folder: string) =>
  pages.filter((page) => new RegExp(`^/${folder}/[^/]+/$`).test(page));
const TURNS = ['entanglement', 'part-spins', 'flying-chips', 'chips-by-hand'] as const;

const EXPECTED: [pages: readonly string[], cautions: readonly CautionId[]][] = [
  [under('calculators'), ['flying-chips']],
  [
    ['/calculators/tap-drill/', '/calculators/torque/', '/calculators/hand-tapping/'],
    ['entanglement', 'part-spins', 'flying-chips'],
  ],
  [
    ['/calculators/tap-removal/'],
    [
      'reaching-in',
      'broken-tap-struck',
      'broken-tap-cut',
      'broken-tap-spark',
      'broken-tap-dissolved',
      'welding',
    ],
  ],
  [under('lessons'), ['flying-chips']],
  [under('teach'), TURNS],
  [['/plan/', '/plan/card/', '/drawing/'], TURNS],
  [['/broken-taps/'], [...TURNS, 'reaching-in', 'broken-tap-struck', 'broken-tap-cut']],
  [['/broken-taps/rework/'], [...TURNS, 'welding']],
];

const rows = EXPECTED.flatMap(([where, cautions]) =>
  where.flatMap((page) => cautions.map((caution) => ({ page, caution }))),
);
const texts = new Map<string, string>();
function textOf(page: string): string {
  const known = texts.get(page);
  if (known !== undefined) return known;
  const text = parse(htmlOf(page)).querySelector('main')!.textContent.replace(/\s+/g, ' ');
  texts.set(page, text);
  return text;
}

describe('where a tool turns or is struck', () => {
  test('the folders that were meant are there', () => {
    expect(under('calculators').length).toBeGreaterThanOrEqual(17);
    expect(under('lessons').length).toBeGreaterThanOrEqual(15);
    expect(under('teach').length).toBeGreaterThanOrEqual(15);
  });

  test.each(rows)('$page: $caution', ({ page, caution }) => {
    expect(textOf(page)).toContain(CAUTIONS[caution].title);
  });

  test.each([...new Set(rows.map(({ page }) => page))])(
    '%s defers to those who know better',
    (page) => {
      expect(textOf(page)).toContain(NOT_A_RATING.defer);
    },
  );

  test.each(['/es/plan/', '/es/plan/card/'])('%s: the same, in its language', (page) => {
    for (const id of TURNS) expect(textOf(page)).toContain(spanish.CAUTIONS[id].title);
    expect(textOf(page)).toContain(spanish.NOT_A_RATING.defer);
  });
});

/** What holds for the words of every line, whatever stands on it. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { planDrawing, readCallout, type HoleVerdict } from '../../../core';
import { GERMAN } from './corpus/german';
import { GRAVE } from './corpus/grave';
import { JOINED } from './corpus/joined';
import { ORDINARY } from './corpus/ordinary';

const shop = { material: 'steel-medium' } as const;
const LINES = [...ORDINARY, ...GRAVE, ...GERMAN].map(({ line }) => line);
const GRAVITY: Record<HoleVerdict, number> = { ready: 0, caution: 1, impossible: 2, unread: 3 };

const PIECES = [
  ...['4X', 'M8', 'M10×1.5-6H', '1/4-20 UNC-2B', 'THRU', '↧15', 'Ø8.5', 'DEEP', 'TYP', 'LH', 'FINE', 'INSERT'],
  ...['HARDEN', 'ZINC', 'FOR', 'SCREW', 'INTO', 'BORE', '±0.5', 'MIN', '(', ')', '/', ',', '\t', '\n', '½', '\\P', '%%c'],
  ...['tief', 'prof.', '深', 'THRU 40', '⌴ Ø15 ↧8', '⌵ Ø9 X 90°', '…', '\u200b', '\u00a0', '🔩', 'ﬁ', '0', '.', '-6H'],
] as const; // prettier-ignore
const line = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 60 }),
  fc.array(fc.constantFrom(...PIECES), { maxLength: 10 }).map((parts) => parts.join(' ')),
  fc.array(fc.constantFrom(...PIECES), { maxLength: 10 }).map((parts) => parts.join('')),
  fc.constantFrom(...LINES),
);

const verdictOf = (text: string): HoleVerdict => planDrawing([text], shop).holes[0]!.verdict;

describe('the words of a line', () => {
  test('each is in exactly one of the three lists, as it stands there', () => {
    fc.assert(
      fc.property(line, (text) => {
        const read = readCallout(text);
        if (!read.ok) return;
        const { read: acted, harmless, notRead } = read.value;
        const words = text.split(/\s+/).filter((word) => word !== '');
        expect([...acted, ...harmless, ...notRead].sort()).toEqual([...words].sort());
      }),
      { numRuns: 2000, seed: 71 },
    );
  });

  test('one more harmless word, or one not understood, never improves the verdict', () => {
    const more = fc.constantFrom(
      'TYP',
      'EQ SP',
      'NEAR SIDE',
      '(B)',
      'FROBNICATED',
      'QUUX 7',
      'ZWISCHENSTÜCK',
    );
    fc.assert(
      fc.property(fc.constantFrom(...LINES), more, fc.boolean(), (text, word, first) => {
        const longer = first ? `${word} ${text}` : `${text} ${word}`;
        expect(GRAVITY[verdictOf(longer)], longer).toBeGreaterThanOrEqual(GRAVITY[verdictOf(text)]);
      }),
      { numRuns: 300, seed: 72 },
    );
  });
});

describe('the order of the groups', () => {
  const hole = fc.constantFrom('Ø6.8 ↧22', 'Ø6.8 22 DEEP', 'DRILL Ø6.8 ↧22', '6.8 DRILL 22 DEEP');
  const thread = fc.constantFrom(
    'M8x1.25-6H ↧16',
    'M8 16 DEEP',
    'M8-6H FULL THREAD 16',
    'TAP M8 x 16 DEEP',
  );
  const other = fc.constantFrom(
    '⌵ Ø9 X 90°',
    'EQ SP ON Ø60 B.C.',
    'LH',
    'ZINC PLATED',
    'TYP',
    'HARDEN',
    'QUUX',
  );

  test('does not change the reading', () => {
    fc.assert(
      fc.property(hole, thread, other, (first, second, third) => {
        const parts = [first, second, third];
        const orders = [
          [0, 1, 2],
          [1, 0, 2],
          [2, 0, 1],
          [0, 2, 1],
          [1, 2, 0],
          [2, 1, 0],
        ];
        const readings = orders.map((order) => {
          const read = readCallout(order.map((at) => parts[at]!).join(' / '));
          if (!read.ok) return read.problems;
          const { read: acted, harmless, notRead, ...rest } = read.value;
          const sorted = [acted, harmless, notRead].map((list) =>
            list.filter((word) => word !== '/').sort(),
          );
          return { ...rest, sorted };
        });
        for (const reading of readings) expect(reading).toEqual(readings[0]);
      }),
      { numRuns: 120, seed: 73 },
    );
  });
});

describe('lines of one callout', () => {
  test('a person may part what was joined, and join what was not', () => {
    const lines = ['4 × Ø6.8 ↧20', 'M8x1.25-6H ↧16'];
    const joined = planDrawing(lines, shop).holes;
    expect(joined.map((hole) => [hole.line, hole.lines])).toEqual([[lines.join('\n'), [1, 2]]]);
    expect(planDrawing(lines, { ...shop, joins: { 2: false } }).holes).toHaveLength(2);
    const apart = ['2X Ø6.8 ↧20', '2X M8x1.25-6H ↧16'];
    expect(planDrawing(apart, shop).holes).toHaveLength(2);
    expect(planDrawing(apart, { ...shop, joins: { 2: true } }).holes).toHaveLength(1);
  });

  test('what either neighbour could claim belongs to neither', () => {
    const { holes } = planDrawing(['M8 ↧16', 'Ø6.8 ↧20', 'M8 ↧12'], shop);
    expect(holes.map(({ lines, verdict }) => [lines[0], verdict])).toEqual([
      [1, 'ready'],
      [2, 'unread'],
      [3, 'ready'],
    ]);
  });

  test('blank lines part, and the numbers count them', () => {
    const { holes } = planDrawing(['', '4 × Ø6.8 ↧20', '', 'M8 ↧16'], shop);
    expect(holes.map(({ lines }) => lines)).toEqual([[2], [4]]);
  });

  test('a bolt’s line is planned when a person says that it is tapped', () => {
    const text = 'M8 FOR SCREW THRU';
    expect(planDrawing([text], shop).holes[0]).toMatchObject({
      apart: 'clearance',
      verdict: 'unread',
    });
    const said = planDrawing([text], { ...shop, tapped: [1] }).holes[0];
    expect(said).toMatchObject({ verdict: 'caution' });
    expect(said?.apart).toBeUndefined();
  });

  test('never throws and loses no line, with tabs and joins', () => {
    fc.assert(
      fc.property(fc.array(line, { maxLength: 6 }), (texts) => {
        const lines = texts.flatMap((text) => text.split('\n'));
        const { holes } = planDrawing(lines, shop);
        for (const { line: typed, lines: numbers } of holes) {
          expect(typed).toBe(numbers.map((number) => lines[number - 1]).join('\n'));
        }
      }),
      { numRuns: 300, seed: 74 },
    );
    expect(JOINED.length).toBeGreaterThan(10);
  });
});

/** What must hold for every line anybody pastes. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CALLOUT_NOTE_CODES, CALLOUT_PROBLEM_CODES, planDrawing, readCallout } from '../../../core';
import { LIMITS_NOTE_CODES } from '../../../core/limits/codes';
import { THREAD_NOTE_CODES, THREAD_PROBLEM_CODES } from '../../../core/thread/codes';

const NOTES: readonly string[] = [
  ...CALLOUT_NOTE_CODES,
  ...THREAD_NOTE_CODES,
  ...LIMITS_NOTE_CODES,
];
const PROBLEMS: readonly string[] = [...CALLOUT_PROBLEM_CODES, ...THREAD_PROBLEM_CODES];

const PIECES = [
  '4X', '6×', 'M8', 'M10×1.5-6H', '1/4-20 UNC-2B', '#10-32', '.250-20', 'THRU', '↧15', '↧ .50', 'Ø8.5',
  'Ø', '↧', '⌵', '⌴ Ø11 ↧6', 'X 90°', 'TYP', 'DEEP', 'FULL THD', '(4 PLACES)', '/', '-', 'LH', '6H',
  '1/0', '0', '-1', '99999999999999999999', '±0.1', 'NPT', '1/8-27', 'G1/4', '\u0000', '\ufeff', '🔩',
  '(', '[', '\\', '$&', '%%c', 'Infinity', '1e309', 'NaN', '1/0-20', 'EG', 'MJ', 'x', ',', '.',
] as const; // prettier-ignore

const line = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 80 }),
  fc.array(fc.constantFrom(...PIECES), { maxLength: 12 }).map((parts) => parts.join(' ')),
  fc.array(fc.constantFrom(...PIECES), { maxLength: 12 }).map((parts) => parts.join('')),
);

function expectSound(text: string): void {
  const outcome = readCallout(text);
  if (!outcome.ok) {
    expect(outcome.problems.length, text).toBeGreaterThan(0);
    for (const { code } of outcome.problems) expect(PROBLEMS, text).toContain(code);
    return;
  }
  for (const { code } of outcome.notes) expect(NOTES, text).toContain(code);
  const { count, fullThread, hole, countersink } = outcome.value;
  expect(Number.isInteger(count) && count >= 1 && count <= 999, text).toBe(true);
  const lengths = [
    fullThread,
    hole?.diameter,
    hole?.depth,
    countersink?.diameter,
    countersink?.angle,
  ];
  for (const length of lengths) {
    if (length !== undefined) expect(Number.isFinite(length) && length > 0, text).toBe(true);
  }
}

describe('any text', () => {
  test('is read or refused, never thrown at, and gives no number that is not one', () => {
    fc.assert(fc.property(line, expectSound), { numRuns: 3000, seed: 61 });
  });

  test('a reading is read back the same when its thread is written canonically', () => {
    fc.assert(
      fc.property(line, (text) => {
        const first = readCallout(text);
        if (!first.ok) return;
        const again = readCallout(`${first.value.count}X ${first.value.thread} THRU`);
        expect(again.ok && again.value.thread, text).toBe(first.value.thread);
        expect(again.ok && again.value.count, text).toBe(first.value.count);
      }),
      { numRuns: 1000, seed: 62 },
    );
  });

  test('what could not be read is kept word for word', () => {
    const outcome = readCallout('4X M6X1 ↧12 PER NOTE SEVEN');
    const note = outcome.ok && outcome.notes.find(({ code }) => code === 'not-read');
    expect(note && note.data).toEqual({ text: 'PER NOTE SEVEN' });
  });

  test('a number that may be the depth is asked about, not taken for nothing', () => {
    const { holes, questions } = planDrawing(['M10-6H 20/25'], { material: 'steel-low' });
    expect(holes[0]?.verdict).toBe('caution');
    expect(questions.map(({ code }) => code)).toContain('depth-not-clear');
  });
});

describe('a list of lines', () => {
  test('comes back whole and in order, whatever it holds', () => {
    fc.assert(
      fc.property(fc.array(line, { maxLength: 8 }), (lines) => {
        const drawing = planDrawing(lines, { material: 'al-wrought', thickness: 12 });
        expect(drawing.holes.map((hole) => hole.line).join('\n')).toBe(
          lines.filter((each) => each.trim() !== '').join('\n'),
        );
        expect(drawing.holes.flatMap((hole) => hole.lines)).toEqual(
          lines.flatMap((each, at) => (each.trim() === '' ? [] : [at + 1])),
        );
        const known = new Set(drawing.holes.keys());
        const named = [
          ...drawing.taps.flatMap(({ holes }) => holes),
          ...drawing.drills.flatMap(({ holes }) => holes),
          ...drawing.questions.map(({ hole }) => hole),
        ];
        for (const index of named) expect(known.has(index)).toBe(true);
      }),
      { numRuns: 300, seed: 63 },
    );
  });
});

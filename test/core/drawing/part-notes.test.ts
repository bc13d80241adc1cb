/** Lines without a hole that touch holes all the same. As drawings carry them; common practice. */
import { describe, expect, test } from 'vitest';
import { planDrawing } from '../../../core/index';

function verdicts(...lines: string[]): string[] {
  return planDrawing(lines, { material: 'al-wrought', thickness: 12 }).holes.map(
    ({ verdict, apart }) => apart ?? verdict,
  );
}

function asked(...lines: string[]) {
  return planDrawing(lines, { material: 'al-wrought' }).questions;
}

describe('a note of a process or a duty touches every hole', () => {
  test.each([
    'PLATE ALL OVER ZINC 8 µm',
    'HARDEN TO 58 HRC',
    'FINISH: ANODISE BLACK',
    'ALL OVER HARD ANODISED',
    'NOTE 3: NICKEL PLATE AFTER MACHINING',
    'OBERFLÄCHE: VERZINKT',
    'PRESSURE TIGHT TO 10 BAR',
  ])('%s', (note) => {
    expect(verdicts('M6 ↧12', note, '4X M8 ↧16').filter((each) => each === 'ready')).toEqual([]);
    expect(asked('M6 ↧12', '', note, '4X M8 ↧16')).toContainEqual(
      expect.objectContaining({ code: 'note-touches-all', numbers: { line: 3 } }),
    );
  });

  test('a note that touches no thread leaves the ticks alone', () => {
    const notes = ['BREAK ALL SHARP EDGES', 'DEBURR', 'ALL DIMENSIONS IN MM', 'SCALE 1:2'];
    expect(verdicts('M6 ↧12', ...notes)[0]).toBe('ready');
  });

  test('a clearance hole beside it neither', () => {
    expect(verdicts('4X M6 ↧12', 'Ø9 THRU FOR M8 SCREW')).toEqual(['ready', 'clearance']);
  });
});

test('a depth on a line of its own asks about the hole above it', () => {
  expect(verdicts('3x M5-6H THRU', '↧ 10 FROM FAR SIDE')).toEqual(['caution', 'unread']);
});

test('IN is a place where a place follows', () => {
  expect(asked('M8 ↧16 IN WELDMENT')).toEqual([]);
  const { holes } = planDrawing(['M8 ↧16 IN WELDMENT'], { material: 'al-wrought' });
  expect(holes[0]!.callout).toMatchObject({ ok: true, value: { fullThread: 16 } });
  expect(holes[0]!.verdict).toBe('caution');
});

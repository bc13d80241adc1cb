import { describe, expect, test } from 'vitest';
import { fromCallout } from '../../components/planner/fromCallout';
import { followLines, readChanges, writeChanges } from '../../components/part/inputs';
import { readPart, writePart } from '../../components/part/file';
import { EXAMPLE } from '../../components/part/examples';

describe('a callout typed in the planner’s thread field', () => {
  test('fills the other fields and says so', () => {
    const filled = fromCallout('6× M10×1.5-6H ↧15 / Ø8.5 ↧16.5', 'mm');
    expect(filled?.changes).toEqual({
      thread: 'M10x1.5-6H',
      hole: 'blind',
      depth: '15',
      limit: '16.5',
      at: 'shoulder',
      holes: '6',
    });
    expect(filled?.said).toContain('The other fields were filled from it');
  });

  test('THRU makes it through; where nothing says so, the choice stays the reader’s', () => {
    expect(fromCallout('4X 1/4-20 UNC-2B THRU', 'in')?.changes.hole).toBe('through');
    expect(fromCallout('4X 1/4-20 UNC-2B', 'in')?.changes.hole).toBeUndefined();
  });

  test('a thread alone, a question and plain nonsense are left to the thread reader', () => {
    for (const text of ['M8x1.25-6H', '1/4-20', 'M12x16', '2X 1/4', 'hello', '']) {
      expect(fromCallout(text, 'mm'), text).toBeNull();
    }
  });
});

describe('what differs for single holes', () => {
  const changes = { 2: { material: 'iron-grey', thickness: '8' }, 3: { torque: '60' } };

  test('is written and read back', () => {
    expect(readChanges(writeChanges(changes))).toEqual(changes);
    expect(readChanges('x;2.colour=red;2.=;;9999.torque=1')).toEqual({});
  });

  test('follows its line', () => {
    const before = 'M6\nM8\nM10';
    expect(followLines(changes, before, 'M5\nM6\nM8\nM10')).toEqual({
      3: changes[2],
      4: changes[3],
    });
    expect(followLines(changes, before, 'M8\nM6\nM10')).toEqual({ 1: changes[2], 3: changes[3] });
    expect(followLines(changes, before, 'M6\nM8 THRU\nM10')).toEqual(changes);
    expect(followLines(changes, before, 'M6\nM10')).toEqual({ 2: changes[3] });
  });
});

describe('a part’s file', () => {
  test('brings back what was typed', () => {
    const opened = readPart(writePart(EXAMPLE));
    expect(opened).toEqual({ ok: true, values: EXAMPLE, notes: [] });
  });

  test.each([
    '',
    '{',
    '[]',
    '{"format":"other"}',
    'null',
    '{"format":"tapped-hole-handbook part","version":2,"values":{}}',
  ])('says what is wrong with %j and changes nothing', (text) => {
    const opened = readPart(text);
    expect(opened.ok ? '' : opened.said).toMatch(/\.$/);
  });
});

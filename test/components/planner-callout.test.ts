import { describe, expect, test } from 'vitest';
import { INPUTS as BLIND } from '../../components/calculators/blind-hole-depth/inputs';
import { engine as blindEngine } from '../../components/calculators/blind-hole-depth/engine';
import {
  fromCallout as calculatorCallout,
  reading,
  system,
} from '../../components/calculators/reading';
import { withCallout } from '../../components/calculators/withCallout';
import { FIELDS, type Inputs } from '../../components/planner/inputs';
import { worded } from '../../components/planner/PlanNotices';
import { attempt } from '../../components/planner/state';
import { initialValues } from '../../components/state/address';
import { inchToMm } from '../../core/units';
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

describe('a callout counts while it is typed', () => {
  const blank = initialValues(FIELDS);
  const typed = (values: Partial<Inputs>) => attempt({ ...blank, ...values }, 'mm');

  test('THRU and depth are in the plan before the field is left', () => {
    const blind = typed({ thread: '6x M8-6H ↧16 / Ø6.8 ↧22', material: 'al-wrought' });
    expect(blind.request).toMatchObject({
      thread: 'M8x1.25-6H',
      fullThread: 16,
      hole: { kind: 'blind', limit: { at: 'shoulder', depth: 22 } },
    });
    const through = typed({ thread: 'M8 THRU 40', hole: 'blind', material: 'al-wrought' });
    expect(through.request?.hole).toMatchObject({ kind: 'through', thickness: 40 });
  });

  test('depths are carried to the last digit, not rounded for the eye', () => {
    const inch = attempt(
      { ...blank, thread: '1/4-20 UNC-2B .6437 DEEP', material: 'al-wrought' },
      'in',
    );
    expect(inch.request?.fullThread).toBe(inchToMm(0.6437));
  });

  test('words that were not understood stay in the field, are said, and lower the verdict', () => {
    const filled = fromCallout('4x M8-6H ↧16 ZINGO COAT', 'mm')!;
    expect(filled.notRead.join(' ')).toContain('ZINGO');
    expect(filled.said).toContain('Not understood: “');
    const left = typed({ ...filled.changes, material: 'al-wrought' });
    expect(left.callout?.notRead).toEqual(filled.notRead);
    expect(left.request).toMatchObject({ thread: 'M8x1.25-6H', fullThread: 16 });
    const watched = worded(left.plan!, 'mm', left.callout!.notRead);
    expect(watched[0]).toMatchObject({ code: 'callout-not-read', level: 'amber' });
    // Settled and taken out: the thread alone.
    expect(typed({ thread: filled.designation, material: 'al-wrought' }).callout).toBeNull();
  });
});

describe('a callout in a calculator’s thread field', () => {
  const text = '4x M10x1.5-6H ↧15 / Ø8.5 ↧20 ZINGO';

  test('fills the fields that the calculator has for it, and says what it did not understand', () => {
    const places = { full: 'full', hole: 'hole', kind: 'kind' } as const;
    expect(calculatorCallout(text, 'mm', places)).toEqual({
      thread: 'M10x1.5-6H',
      kept: 'M10x1.5-6H ZINGO',
      others: { full: '15', hole: '20', kind: 'blind' },
    });
    expect(reading('thread', text, 'mm')).toContain('Not understood, and not part of this answer');
    expect(system('4x 1/4-20 UNC THRU')).toBe('inch');
    expect(calculatorCallout('M10x1.5-6H', 'mm', places)).toBeNull();
  });

  test('counts before the field is left, in an engine as it is', () => {
    const blank = initialValues(BLIND.fields);
    const whole = withCallout(
      BLIND,
      blindEngine,
      { ...blank, thread: text, chamfer: 'plug' },
      'mm',
    );
    expect(blindEngine.attempt(whole.values, 'mm').answer?.study).toBeDefined();
    expect(whole.read?.filled).toMatchObject({ thread: 'M10x1.5-6H ZINGO', full: '15' });
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

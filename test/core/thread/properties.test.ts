/** What must hold for every text and every thread. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { externalMajorMin, externalPitchMin } from '../../../core/limits/external';
import { minorLimitsMm, threadLimits } from '../../../core/limits/thread-limits';
import { LIMITS_NOTE_CODES, LIMITS_PROBLEM_CODES } from '../../../core/limits/codes';
import { THREAD_NOTE_CODES, THREAD_PROBLEM_CODES } from '../../../core/thread/codes';
import { basicDiameters } from '../../../core/thread/profile';
import { readThread } from '../../../core/thread/read';
import { standardThreads } from '../../../core/thread/standard';
import type { Thread } from '../../../core/thread/thread';
import { read } from './read-or-throw';

const standard = standardThreads();

/** Every number anywhere inside a value. */
function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  return value && typeof value === 'object' ? Object.values(value).flatMap(numbersIn) : [];
}

function checkThread(thread: Thread): void {
  const again = readThread(thread.designation);
  expect(again.ok && again.value.designation, thread.designation).toBe(thread.designation);
  const { classGiven: _given, ...same } = again.ok ? again.value : thread;
  expect(thread).toMatchObject(thread.inch?.size.includes('.') ? { form: same.form } : same);
  const sizes = [
    ...numbersIn(thread),
    ...numbersIn(basicDiameters(thread)),
    externalMajorMin(thread),
    externalPitchMin(thread),
  ];
  expect(
    sizes.every((size) => Number.isFinite(size) && size > 0),
    thread.designation,
  ).toBe(true);
}

function checkLimits(thread: Thread): void {
  const outcome = threadLimits(thread);
  if (!outcome.ok) {
    expect(LIMITS_PROBLEM_CODES).toContain(outcome.problems[0]?.code);
    return;
  }
  outcome.notes.forEach(({ code }) => expect(LIMITS_NOTE_CODES).toContain(code));
  const { pitch, minor, majorMin, unit } = outcome.value;
  const name = thread.designation;
  expect(numbersIn(outcome.value).every((limit) => Number.isFinite(limit) && limit > 0)).toBe(true);
  expect(pitch.min, name).toBeLessThan(pitch.max);
  if (minor.max !== undefined) expect(minor.min, name).toBeLessThan(minor.max);
  expect(minor.min, name).toBeLessThan(pitch.min);
  expect(pitch.min, name).toBeLessThan(majorMin);
  expect(minorLimitsMm(outcome.value).min).toBeCloseTo(minor.min * (unit === 'in' ? 25.4 : 1), 9);
}

function checkText(text: string): void {
  const reading = readThread(text);
  if (reading.ok) {
    reading.notes.forEach(({ code }) => expect(THREAD_NOTE_CODES).toContain(code));
    checkThread(reading.value);
    checkLimits(reading.value);
    return;
  }
  expect(reading.problems.length).toBeGreaterThan(0);
  for (const { code, field, data } of reading.problems) {
    expect(THREAD_PROBLEM_CODES).toContain(code);
    expect(field).toBe('thread');
    expect(data?.['typed']).toBeTypeOf('string');
  }
}

const pieces = fc.constantFrom(
  ...'M MJ x × X - – . , / " # No. EG STI UNC UNF UNEF UN UNS UNJF NC LH RH 6H 5H6H 6g 2B 3B 2A G R Rp Rc'.split(
    ' ',
  ),
  ...'NPT BSP TPI mm in 1/4 ½ 1 2 3 4.5 5 6 8 10 12 16 20 32 40 80 0.5 1.25 1,25 .250 S L ( ) 21 Tr BA'.split(
    ' ',
  ),
  ' ',
  '',
);

describe('any text', () => {
  test('is read or refused, never thrown at', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary' }), checkText), { numRuns: 1000 });
    fc.assert(fc.property(fc.string({ unit: 'grapheme' }), checkText), { numRuns: 1000 });
  });

  test('made of the pieces of designations', () => {
    const texts = fc.array(pieces, { maxLength: 9 }).map((parts) => parts.join(''));
    fc.assert(fc.property(texts, checkText), { numRuns: 8000 });
  });

  test('a designation with one letter lost, doubled or replaced', () => {
    const mangled = fc
      .tuple(
        fc.constantFrom(...standard),
        fc.nat(),
        fc.constantFrom('cut', 'double', 'put'),
        fc.constantFrom(...'0123456789.,-/x HGBA#"'),
      )
      .map(([thread, at, how, put]) => {
        const text = thread.designation;
        const place = at % text.length;
        const middle = { cut: '', double: text[place]! + text[place]!, put }[how]!;
        return text.slice(0, place) + middle + text.slice(place + 1);
      });
    fc.assert(fc.property(mangled, checkText), { numRuns: 5000 });
  });

  test('that is no text at all', () => {
    for (const value of [undefined, null, 8, {}, []]) {
      expect(readThread(value as unknown as string).ok).toBe(false);
    }
  });
});

describe('any thread', () => {
  const metric = fc
    .tuple(
      fc.integer({ min: 50, max: 35000 }),
      fc.integer({ min: 5, max: 800 }),
      fc.constantFrom('', '-4H', '-5H', '-6H', '-7H', '-8H', '-6G', '-4G5G', '-5H6H'),
      fc.constantFrom('', '-LH', '-S', '-L-LH', '-12'),
      fc.constantFrom('M', 'MJ', 'EG M', 'EG MJ'),
    )
    .map(([size, pitch, grade, rest, form]) => {
      const tail = grade === '' && rest === '-12' ? '' : rest;
      return `${form}${size / 100}x${pitch / 100}${grade}${tail}`;
    });
  const unified = fc
    .tuple(
      fc.integer({ min: 4, max: 6 * 64 }),
      fc.integer({ min: 3, max: 100 }),
      fc.constantFrom('', '-1B', '-2B', '-3B'),
      fc.constantFrom('', 'UN', 'UNS', 'UNJ'),
      fc.constantFrom('', 'STI '),
    )
    .map(([size, tpi, grade, series, insert]) => `${insert}${size}/64"-${tpi} ${series}${grade}`);
  const decimal = fc
    .tuple(fc.integer({ min: 600, max: 60000 }), fc.integer({ min: 3, max: 100 }))
    .map(([size, tpi]) => `${size / 10000}-${tpi}`);

  test('metric reads back to itself and its limits stand in order', () => {
    fc.assert(fc.property(metric, checkText), { numRuns: 5000 });
  });

  test('unified likewise', () => {
    fc.assert(fc.property(unified, checkText), { numRuns: 5000 });
    fc.assert(fc.property(decimal, checkText), { numRuns: 5000 });
  });

  test('standard ones too, in each class, hand and as insert holes', () => {
    const names = standard.flatMap(({ designation, system, class: grade }) => {
      const classes =
        system === 'metric' ? ['4H', '5H', '6H', '7H', '8H', '6G'] : ['1B', '2B', '3B'];
      const insert = system === 'metric' ? 'EG' : 'STI';
      return classes.flatMap((each) => {
        const name = designation.replace(`-${grade}`, `-${each}`);
        return [name, `${name}-LH`, `${insert} ${name}`];
      });
    });
    names.forEach(checkText);
    expect(names.every((name) => read(name).designation === name)).toBe(true);
  });

  test('spacing, case and dashes change nothing', () => {
    const noise = fc.tuple(fc.constantFrom(...standard), fc.nat({ max: 3 }), fc.boolean());
    fc.assert(
      fc.property(noise, ([thread, kind, upper]) => {
        const plain = thread.designation;
        const dashed = [
          plain,
          plain.replaceAll('-', '–'),
          plain.replaceAll('-', ' - '),
          ` ${plain} `,
        ];
        const text = (dashed[kind] ?? plain).replace('x', upper ? ' X ' : '×');
        expect(read(text)).toEqual({ ...thread, classGiven: true });
        expect(read(text.toLowerCase())).toEqual({ ...thread, classGiven: true });
      }),
      { numRuns: 1000 },
    );
  });
});

/** Unified limits beyond the printed rows: the rules themselves, J threads, inserts, long engagement. */

import { describe, expect, test } from 'vitest';
import { minorLimitsMm, threadLimits } from '../../../core/limits/thread-limits';
import {
  engagementFactor,
  minorTolerance,
  pitchToleranceTwoA,
} from '../../../core/limits/unified-tolerances';
import { limitsOf, printed, read } from '../thread/read-or-throw';

describe('classes', () => {
  test('all start at basic; 1B is half as wide again as 2B, 3B three quarters', () => {
    const [first, second, third] = ['1B', '2B', '3B'].map(
      (grade) => limitsOf(`3/8-16 UNC-${grade}`).pitch,
    );
    expect(new Set([first!.min, second!.min, third!.min]).size).toBe(1);
    const width = pitchToleranceTwoA(0.375, 16);
    expect(first!.max - first!.min).toBeCloseTo(1.95 * width, 4);
    expect(second!.max - second!.min).toBeCloseTo(1.3 * width, 4);
    expect(third!.max - third!.min).toBeCloseTo(0.975 * width, 4);
  });

  test('1B has the minor diameter of 2B', () => {
    expect(limitsOf('3/8-16 UNC-1B').minor).toEqual(limitsOf('3/8-16 UNC-2B').minor);
  });

  test('the major diameter starts at basic', () => {
    expect(limitsOf('3/8-16').majorMin).toBe(0.375);
    expect(limitsOf('#10-32').majorMin).toBe(0.19);
  });
});

describe('pitch-diameter tolerance: engagement and diameter that it assumes', () => {
  test('coarse and fine series: one diameter', () => {
    const expected = 0.0015 * Math.cbrt(0.25) + 0.0015 * Math.sqrt(0.25) + 0.015 * 0.05 ** (2 / 3);
    expect(pitchToleranceTwoA(0.25, 20)).toBeCloseTo(expected, 6);
    expect(pitchToleranceTwoA(1, 14)).toBeCloseTo(0.003 + 0.015 * (1 / 14) ** (2 / 3), 6);
  });

  test('others: nine pitches, at the nearest step of diameter, of two the smaller', () => {
    const at = (step: number, tpi: number) =>
      0.0015 * Math.cbrt(step) + 0.0015 * Math.sqrt(9 / tpi) + 0.015 * (1 / tpi) ** (2 / 3);
    expect(pitchToleranceTwoA(0.9375, 12)).toBeCloseTo(at(1, 12), 6);
    expect(pitchToleranceTwoA(0.6875, 24)).toBeCloseTo(at(0.625, 24), 6);
    expect(pitchToleranceTwoA(0.5625, 24)).toBeCloseTo(at(0.5, 24), 6);
    expect(pitchToleranceTwoA(0.216, 32)).toBeCloseTo(at(0.19, 32), 6);
    expect(pitchToleranceTwoA(2.75, 16)).toBeCloseTo(at(2.5, 16), 6);
  });
});

describe('minor-diameter tolerance', () => {
  test.each([
    [0.25, 20, '2B', 0.0115],
    [0.375, 16, '2B', 0.0141],
    [2.5, 4, '2B', 0.0375],
    [4, 3, '2B', 0.05],
    [0.06, 80, '2B', 0.0049],
    [0.19, 24, '2B', 0.0106],
    // From 1/4 up the small sizes' formula no longer counts, coarse as the pitch may be: 0.25 P - 0.4 P².
    [0.25, 8, '2B', 0.025],
    [0.19, 32, '2B', 0.0079],
    [0.5, 13, '3B', 0.0117],
    [0.5625, 12, '3B', 0.012],
    [1, 12, '3B', 0.01],
    [0.25, 20, '3B', 0.0108],
  ])('%d-%d %s: %d', (diameter, tpi, grade, expected) => {
    expect(minorTolerance(diameter, tpi, grade)).toBe(expected);
  });

  test('finer threads have a floor of their own in 3B', () => {
    expect(minorTolerance(0.75, 16, '3B')).toBe(0.0085);
    expect(minorTolerance(1, 20, '3B')).toBeCloseTo(0.23 / 20 - 1.5 / 400, 4);
  });
});

describe('rounding of the minor diameter', () => {
  test('to #5 four places, from #6 three; 3B keeps four in its maximum', () => {
    expect(printed('#5-44 UNF-2B', 4)[0]).toBe('0.1004');
    expect(printed('#6-40 UNF-2B', 4)[0]).toBe('0.1110');
    expect(printed('#6-40 UNF-3B', 4)[1]).toBe('0.1186');
  });

  test('a special rounds once, a listed thread twice', () => {
    // 1-14: .922676 to .938... in one step; by way of .9227 it would be the same minimum
    expect(limitsOf('1-14 UNS-2B').minor).toEqual({ min: 0.923, max: 0.938 });
    expect(limitsOf('1-3/4-5 UNC-2B').minor.min).toBe(1.534);
  });
});

describe('UNJ: a raised minor diameter, its maximum not held', () => {
  test.each([
    ['1/4-28 UNJF-3B', 0.2152],
    ['#10-32 UNJF-3B', 0.1596],
  ])('%s from %d (D - 0.974279 P)', (name, min) => {
    expect(limitsOf(name).minor).toEqual({ min });
    const outcome = threadLimits(read(name));
    expect(outcome.ok && outcome.notes.map(({ code }) => code)).toEqual(['minor-max-unknown']);
    expect(minorLimitsMm(limitsOf(name))).toEqual({ min: min * 25.4 });
    expect(minorLimitsMm(limitsOf('1/4-20')).max).toBeCloseTo(0.207 * 25.4, 9);
    expect(minorLimitsMm(limitsOf('M8'))).toEqual({ min: 6.647, max: 6.912 });
  });

  test('the pitch diameter is that of UN', () => {
    expect(limitsOf('1/4-28 UNJF-3B').pitch).toEqual(limitsOf('1/4-28 UNF-3B').pitch);
  });
});

describe('insert holes', () => {
  test('STI 1/4-20: one thread height further out', () => {
    expect(printed('STI 1/4-20 UNC-2B', 4)).toEqual(['0.2608', '0.2723', '0.2825', '0.2874']);
    expect(limitsOf('STI 1/4-20').majorMin).toBe(0.315);
  });

  test('STI #10-32: D + 0.2165 P, and the tolerance of the small size it is named by', () => {
    expect(limitsOf('STI #10-32 UNF-2B').minor).toEqual({ min: 0.1968, max: 0.2047 });
  });

  test('STI #6-32-3B has the formula’s tolerance', () => {
    const { pitch } = limitsOf('STI #6-32 UNC-3B');
    expect(pitch.max - pitch.min).toBeCloseTo(0.0028, 9);
  });
});

describe('the printed cell', () => {
  test('is told, where it stands', () => {
    const notes = (name: string) => {
      const outcome = threadLimits(read(name));
      return outcome.ok ? outcome.notes.map(({ code }) => code) : [];
    };
    expect(notes('#6-32 UNC-3B')).toEqual(['printed-cell']);
    expect(notes('#6-32 UNC-2B')).toEqual([]);
  });

  test('does not stand for a long engagement: the formula, a quarter wider', () => {
    const outcome = threadLimits(read('#6-32 UNC-3B'), { engagement: 8 });
    if (!outcome.ok) throw new Error('refused');
    expect(outcome.notes.map(({ code }) => code)).toEqual(['long-engagement']);
    const { min, max } = outcome.value.pitch;
    expect(max - min).toBeCloseTo(1.25 * 0.975 * pitchToleranceTwoA(0.138, 32), 4);
  });
});

describe('specials', () => {
  test('1/4-19 UNS-2B is computed, and said so', () => {
    const outcome = threadLimits(read('1/4-19'));
    expect(outcome.ok && outcome.notes.map(({ code }) => code)).toEqual(['not-tabulated']);
    expect(printed('1/4-19 UNS-2B', 4)).toEqual(['0.1930', '0.2050', '0.2158', '0.2211']);
  });

  test('1-14 UNS is in its standard', () => {
    const outcome = threadLimits(read('1-14 UNS'));
    expect(outcome.ok && outcome.notes).toEqual([]);
  });

  test('above 6 inches there are no rules', () => {
    expect(threadLimits(read('6-1/4-8'))).toMatchObject({
      ok: false,
      problems: [{ code: 'outside-tolerances' }],
    });
    expect(threadLimits(read('6-8')).ok).toBe(true);
  });

  test('nor below any', () => {
    const quarter = read('1/4-20');
    const none = { ...quarter, inch: { ...quarter.inch!, diameter: 0 } };
    expect(threadLimits(none)).toMatchObject({ problems: [{ code: 'outside-tolerances' }] });
  });

  test('a class that cannot come from reading is refused', () => {
    expect(threadLimits({ ...read('1/4-20'), class: '4B' })).toMatchObject({
      ok: false,
      problems: [{ code: 'class-unknown', data: { class: '4B' } }],
    });
  });
});

describe('long engagement (from memory)', () => {
  test('coarse and fine: beyond 1.5 D a quarter wider, beyond 3 D half', () => {
    const thread = read('1/2-13');
    expect(engagementFactor(thread, 19.05)).toBe(1);
    expect(engagementFactor(thread, 19.06)).toBe(1.25);
    expect(engagementFactor(thread, 38.1)).toBe(1.25);
    expect(engagementFactor(thread, 38.2)).toBe(1.5);
  });

  test('1-14 UNS is reckoned as a fine thread: 1.5 D is 38.1 mm, fifteen pitches were 27.2', () => {
    const thread = read('1-14 UNS');
    expect(engagementFactor(thread, 38)).toBe(1);
    expect(engagementFactor(thread, 39)).toBe(1.25);
  });

  test('constant pitch: beyond 15 and 30 pitches', () => {
    const thread = read('15/16-12');
    expect(engagementFactor(thread, 15 * thread.pitch)).toBe(1);
    expect(engagementFactor(thread, 16 * thread.pitch)).toBe(1.25);
    expect(engagementFactor(thread, 31 * thread.pitch)).toBe(1.5);
  });

  test('widens the pitch diameter alone, and is told', () => {
    const usual = limitsOf('1/2-13 UNC-2B');
    const long = limitsOf('1/2-13 UNC-2B', { engagement: 25 });
    expect(long.minor).toEqual(usual.minor);
    expect(long.pitch.max - long.pitch.min).toBeCloseTo(0.0081, 9);
    const outcome = threadLimits(read('1/2-13'), { engagement: 25 });
    expect(outcome.ok && outcome.notes).toEqual([
      { code: 'long-engagement', numbers: { factor: 1.25 } },
    ]);
  });

  test('a metric thread changes class instead', () => {
    expect(engagementFactor(read('M8'), 100)).toBe(1);
    expect(limitsOf('M8', { engagement: 100 })).toEqual(limitsOf('M8'));
  });
});

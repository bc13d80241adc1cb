import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  R40,
  inchToMm,
  mmToInch,
  parseDecimal,
  roundDecimals,
  roundDown,
  roundHalfUp,
  roundToR40,
  roundUp,
} from '../../core/units';

describe('rounding', () => {
  test('halves go away from zero although their binary float lies below', () => {
    expect(roundHalfUp(1.0005, 0.001)).toBe(1.001);
    expect(roundHalfUp(0.1885, 0.001)).toBe(0.189);
    expect(roundHalfUp(2.675, 0.01)).toBe(2.68);
    expect(roundHalfUp(-1.0005, 0.001)).toBe(-1.001);
    expect(roundHalfUp(0.00335, 0.0001)).toBe(0.0034);
  });

  test('what is just below a half stays below', () => {
    expect(roundHalfUp(1.000499, 0.001)).toBe(1);
    expect(roundHalfUp(2.6749, 0.01)).toBe(2.67);
  });

  test('to steps that are no decimals', () => {
    expect(roundHalfUp(0.26, 1 / 64)).toBe(17 / 64);
    expect(roundHalfUp(7, 2)).toBe(8);
    expect(roundHalfUp(1234, 100)).toBe(1200);
  });

  test('up and down keep what is already on the step', () => {
    expect(roundUp(0.3, 0.1)).toBe(0.3);
    expect(roundUp(0.301, 0.1)).toBe(0.4);
    expect(roundDown(0.3, 0.1)).toBe(0.3);
    expect(roundDown(0.299, 0.1)).toBe(0.2);
    expect(roundDown(-0.05, 0.1)).toBe(-0.1);
  });

  test('to decimals, and nothing becomes minus nothing', () => {
    expect(roundDecimals(6.7345, 2)).toBe(6.73);
    expect(Object.is(roundHalfUp(-0.0001, 0.001), 0)).toBe(true);
  });

  test('any whole number of thousandths comes back exactly', () => {
    fc.assert(
      fc.property(fc.integer({ min: -200000, max: 200000 }), (thousandths) => {
        expect(roundHalfUp(thousandths / 1000, 0.001)).toBe(thousandths / 1000);
        expect(roundHalfUp((thousandths * 10 + 5) / 10000, 0.001)).toBe(
          thousandths >= 0 ? (thousandths + 1) / 1000 : thousandths / 1000 || 0,
        );
      }),
    );
  });
});

describe('preferred numbers R40', () => {
  test('the series grows by about 6 % a step', () => {
    expect(R40).toHaveLength(40);
    R40.forEach((value, place) => {
      expect(Math.abs(value / 10 ** (place / 40) - 1)).toBeLessThan(0.013);
    });
  });

  test.each([
    [134.9, 132],
    [136.1, 140],
    [97, 95],
    [99, 100],
    [1, 1],
    [9.8, 10],
    [0.236, 0.236],
    [1000, 1000],
  ])('%d goes to %d', (value, nearest) => {
    expect(roundToR40(value)).toBe(nearest);
  });

  test('of two equally near, the larger', () => {
    expect(roundToR40(1.03)).toBe(1.06);
    expect(roundToR40(925)).toBe(950);
  });
});

describe('inch and millimetre', () => {
  test('decimal inches give decimal millimetres', () => {
    expect(inchToMm(0.164)).toBe(4.1656);
    expect(inchToMm(0.073)).toBe(1.8542);
    expect(inchToMm(1)).toBe(25.4);
  });

  test('there and back', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 10_000_000 }), (millionths) => {
        expect(mmToInch(inchToMm(millionths / 1e6))).toBeCloseTo(millionths / 1e6, 12);
      }),
    );
  });
});

describe('decimals as typed', () => {
  test.each([
    ['8.5', 8.5],
    ['8,5', 8.5],
    ['.5', 0.5],
    [' 12 ', 12],
    ['3.', 3],
    ['0', 0],
  ])('%j is %d', (text, value) => {
    expect(parseDecimal(text)).toBe(value);
  });

  test.each(['', '-1', '1e3', '1.2.3', '1,2,3', 'M8', '1 2', '.', 'Infinity', '9'.repeat(400)])(
    '%j is no decimal',
    (text) => {
      expect(parseDecimal(text)).toBeNull();
    },
  );
});

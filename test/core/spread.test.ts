/** Seeded numbers and the way doubt is carried: against closed forms of the triangle. */
import { describe, expect, it } from 'vitest';
import { seeded } from '../../core/seeded';
import { propagate, quantile, swings, type Spread } from '../../core/spread';

describe('seeded row', () => {
  it('repeats from its seed, differs from another, stays from 0 up to 1', () => {
    const row = (seed: number) => {
      const draw = seeded(seed);
      return Array.from({ length: 1000 }, draw);
    };
    expect(row(7)).toEqual(row(7));
    expect(row(7)).not.toEqual(row(8));
    for (const value of row(7)) {
      expect(value).toBeGreaterThanOrEqual(0);
      expect(value).toBeLessThan(1);
    }
  });

  it('is even: 20 bins of 20,000 draws, chi-square below 43.8 (19 degrees, 1 in 1,000)', () => {
    for (const seed of [1, 2, 3, 20]) {
      const draw = seeded(seed);
      const bins = Array.from({ length: 20 }, () => 0);
      for (let count = 0; count < 20000; count += 1) bins[Math.floor(draw() * 20)]! += 1;
      const chi = bins.reduce((sum, bin) => sum + (bin - 1000) ** 2 / 1000, 0);
      expect(chi).toBeLessThan(43.8);
    }
  });

  it('neighbours do not follow one another (correlation of 20,000 pairs under 0.02)', () => {
    const draw = seeded(20);
    const row = Array.from({ length: 20001 }, draw);
    let sum = 0;
    for (let index = 0; index < 20000; index += 1)
      sum += (row[index]! - 0.5) * (row[index + 1]! - 0.5);
    expect(Math.abs((12 * sum) / 20000)).toBeLessThan(0.02);
  });
});

describe('quantile', () => {
  it('by linear interpolation', () => {
    expect(quantile([1, 2, 3, 4, 5], 0.5)).toBe(3);
    expect(quantile([1, 2, 3, 4], 0.5)).toBe(2.5);
    expect(quantile([1, 2, 3, 4, 5], 0)).toBe(1);
    expect(quantile([1, 2, 3, 4, 5], 1)).toBe(5);
  });
});

describe('one triangular input', () => {
  const spread: Spread = { low: 2, likely: 3, high: 6 };

  it('comes out with the triangle’s own 5, 50 and 95 % points (closed form)', () => {
    const { answer } = propagate({ a: spread }, ({ a }) => ({ answer: a }), { samples: 40000 });
    // Width 4, peak at a quarter: below it low + √(u·4·1), above it high − √((1 − u)·4·3).
    expect(answer.low).toBeCloseTo(2 + Math.sqrt(0.05 * 4), 1);
    expect(answer.middle).toBeCloseTo(6 - Math.sqrt(0.5 * 12), 1);
    expect(answer.high).toBeCloseTo(6 - Math.sqrt(0.05 * 12), 1);
  });

  it('a sum of two like inputs is narrower than twice one (independent), never outside the ends', () => {
    const sum = propagate({ a: spread, b: spread }, ({ a, b }) => ({ sum: a + b })).sum;
    const one = propagate({ a: spread }, ({ a }) => ({ one: a })).one;
    expect(sum.high - sum.low).toBeLessThan(2 * (one.high - one.low));
    expect(sum.low).toBeGreaterThan(4);
    expect(sum.high).toBeLessThan(12);
  });

  it('a spread without width gives the value itself', () => {
    const still = { low: 5, likely: 5, high: 5 };
    expect(propagate({ a: still }, ({ a }) => ({ a })).a).toEqual({ low: 5, middle: 5, high: 5 });
  });
});

describe('swings', () => {
  it('moves one input at a time, widest first, whichever way it points', () => {
    const inputs = {
      weak: { low: 0, likely: 1, high: 2 },
      strong: { low: 0, likely: 1, high: 2 },
    };
    const found = swings(inputs, ({ weak, strong }) => weak - 3 * strong);
    expect(found).toEqual([
      { input: 'strong', low: -5, high: 1 },
      { input: 'weak', low: -3, high: -1 },
    ]);
  });
});

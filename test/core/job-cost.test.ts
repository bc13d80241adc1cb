/** Worked costs of a small shop at 75 an hour. Kind: common practice for the inputs, derived for the sums. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { COST_PROBLEM_CODES, holeCost, type CostInput } from '../../core/job/cost';

/** 480 holes M6, blind, in 6061. Tools 0.03 and gauging 0.02 a hole, as the shop books them. */
const EASY: CostInput = {
  seconds: 9.5,
  machineRate: 75,
  gaugeRate: 45,
  tapPrice: 20,
  tapLife: 1000,
  drillPrice: 10,
  drillLife: 1000,
  gaugeSeconds: 16,
  gaugeEvery: 10,
  setupMinutes: 25,
  holes: 480,
  breaksIn: 3000,
  breakCost: 200,
};

/** The same hole in 304: slower, a dearer tap that lasts 150 holes and breaks five times as often. */
const HARD: CostInput = {
  ...EASY,
  seconds: 16,
  tapPrice: 38,
  tapLife: 150,
  drillPrice: 0,
  breaksIn: 600,
  breakCost: 300,
};

function cost(input: CostInput) {
  const outcome = holeCost(input);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

describe('cost of a hole', () => {
  test('M6 in 6061: 0.38, line by line', () => {
    const { time, tools, gauging, setup, breakage, total } = cost(EASY);
    expect(time).toBeCloseTo(0.2, 2);
    expect(tools).toBeCloseTo(0.03, 6);
    expect(gauging).toBeCloseTo(0.02, 6);
    expect(setup).toBeCloseTo(0.065, 3);
    expect(breakage).toBeCloseTo(0.067, 3);
    expect(total).toBeCloseTo(0.38, 2);
  });

  test('the same in 304: 1.17, of which 43 % is the risk of a break', () => {
    const { total, breakageShare, breakage } = cost(HARD);
    expect(breakage).toBeCloseTo(0.5, 6);
    expect(total).toBeCloseTo(1.17, 2);
    expect(breakageShare).toBeCloseTo(0.43, 2);
  });

  test('the parts add up, and a job costs its holes', () => {
    const amount = fc.double({ min: 0, max: 1e6, noNaN: true });
    const count = fc.double({ min: 1, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(amount, amount, count, count, (seconds, tapPrice, holes, breaksIn) => {
        const found = cost({ ...EASY, seconds, tapPrice, holes, breaksIn });
        const sum = found.time + found.tools + found.gauging + found.setup + found.breakage;
        expect(found.total).toBeCloseTo(sum, 6);
        expect(found.job / holes / found.total).toBeCloseTo(1, 9);
        expect(found.breakageShare).toBeLessThanOrEqual(1);
      }),
      { seed: 71 },
    );
  });

  test.each(Object.keys(EASY) as (keyof CostInput)[])('%s below zero is refused', (field) => {
    const outcome = holeCost({ ...EASY, [field]: -1 });
    expect(outcome.ok ? [] : outcome.problems.map(({ code }) => code)).toEqual(['cost-below-zero']);
    expect(outcome.ok ? '' : outcome.problems[0]?.field).toBe(field);
    for (const { code } of outcome.ok ? [] : outcome.problems) {
      expect(COST_PROBLEM_CODES as readonly string[]).toContain(code);
    }
  });

  test('a life of no holes is refused, not infinite', () => {
    const outcome = holeCost({ ...EASY, tapLife: 0 });
    expect(outcome.ok ? '' : outcome.problems[0]?.code).toBe('cost-not-above-zero');
  });
});

/**
 * The policy of the review, one sentence a test. The figures are the handbook's own choice; that a rest
 * grows when it was kept, and that a long delay survived counts for more, is common practice.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isRelearning, POLICY, reschedule, type Standing } from '../../../core/review/schedule';

const DAY = 20_000;
const MINUTES = 1 / (24 * 60);

/** A question with ten days of rest, last asked on DAY. */
const rested = (interval = 10): Standing => ({ interval, seen: DAY, due: DAY + interval });
const remembered = (before: Standing | null, when: number) =>
  reschedule(before, when, 'remembered');
const forgotten = (before: Standing | null, when: number) => reschedule(before, when, 'forgotten');

describe('a new question', () => {
  test('remembered: it comes back in two days', () => {
    expect(remembered(null, DAY)).toEqual({ interval: 2, seen: DAY, due: DAY + 2 });
  });

  test('forgotten: it comes back in ten minutes', () => {
    expect(forgotten(null, DAY).due).toBeCloseTo(DAY + 10 * MINUTES, 9);
  });

  test('forgotten, then remembered ten minutes later: it comes back tomorrow', () => {
    const again = remembered(forgotten(null, DAY), DAY + 10 * MINUTES);
    expect(again.due - DAY).toBeCloseTo(1, 1);
  });
});

describe('remembered', () => {
  test('on the day: the next rest is two and a half times as long', () => {
    expect(remembered(rested(), DAY + 10).interval).toBe(25);
  });

  test('every time, to the day: two days, five, twelve, a month, and at most a year', () => {
    const rests: number[] = [];
    let standing = remembered(null, DAY);
    while (rests.length < 8) {
      rests.push(Math.floor(standing.interval));
      standing = remembered(standing, standing.due);
    }
    expect(rests).toEqual([2, 5, 12, 31, 78, 195, 365, 365]);
  });

  test('after a long delay: the delay counts as rest, for it was survived', () => {
    expect(remembered(rested(), DAY + 20).interval).toBe(50);
  });

  test('after a very long delay: no more than three planned rests count, for luck may have helped', () => {
    expect(remembered(rested(), DAY + 30).interval).toBe(75);
    expect(remembered(rested(), DAY + 200).interval).toBe(75);
  });

  test('early: the rest grows, but less', () => {
    const early = remembered(rested(), DAY + 5).interval;
    expect(early).toBeGreaterThan(10);
    expect(early).toBeLessThan(25);
  });

  test('twice in one sitting: the second time earns nothing', () => {
    expect(remembered(rested(), DAY).interval).toBe(10);
  });
});

describe('forgotten', () => {
  test('it comes back in ten minutes, however long its rest was', () => {
    expect(forgotten(rested(200), DAY + 200).due).toBeCloseTo(DAY + 200 + 10 * MINUTES, 9);
  });

  test('a lapse costs three quarters of the rest, not all of it', () => {
    const lapsed = forgotten(rested(80), DAY + 80);
    expect(lapsed.interval).toBe(20);
    expect(isRelearning(lapsed)).toBe(true);
    expect(remembered(lapsed, lapsed.due).interval).toBeCloseTo(20, 1);
  });

  test('forgotten again while it is being learned anew: no second loss', () => {
    const once = forgotten(rested(80), DAY + 80);
    expect(forgotten(once, once.due).interval).toBe(20);
  });

  test('a short rest never falls below a day', () => {
    expect(forgotten(rested(2), DAY + 2).interval).toBe(1);
  });
});

test('a clock that was set back earns nothing and takes nothing', () => {
  expect(remembered(rested(), DAY - 3)).toEqual({ interval: 10, seen: DAY - 3, due: DAY + 7 });
});

describe('for any history', () => {
  const step = fc.record({
    wait: fc.double({ min: 0, max: 900, noNaN: true }),
    outcome: fc.constantFrom('remembered' as const, 'forgotten' as const),
  });
  const history = fc.array(step, { maxLength: 30 });

  /** The standing after a history, and the day it ended. */
  function after(steps: readonly { wait: number; outcome: 'remembered' | 'forgotten' }[]) {
    let [standing, when]: [Standing | null, number] = [null, DAY];
    for (const { wait, outcome } of steps) {
      when += wait;
      standing = reschedule(standing, when, outcome);
    }
    return { standing, when };
  }

  test('a rest lies between a day and a year, and what is asked is due later', () => {
    fc.assert(
      fc.property(history, (steps) => {
        const { standing, when } = after(steps);
        if (!standing) return;
        expect(standing.interval).toBeGreaterThanOrEqual(POLICY.shortest);
        expect(standing.interval).toBeLessThanOrEqual(POLICY.longest);
        expect(standing.due).toBeGreaterThan(when);
      }),
      { numRuns: 500, seed: 91 },
    );
  });

  test('remembering never shortens a rest, forgetting never lengthens one', () => {
    fc.assert(
      fc.property(history, fc.double({ min: 0, max: 900, noNaN: true }), (steps, wait) => {
        const { standing, when } = after(steps);
        if (!standing) return;
        expect(remembered(standing, when + wait).interval).toBeGreaterThanOrEqual(
          standing.interval,
        );
        expect(forgotten(standing, when + wait).interval).toBeLessThanOrEqual(standing.interval);
      }),
      { numRuns: 500, seed: 92 },
    );
  });

  test('the longer it was remembered, the longer it may rest', () => {
    const wait = fc.double({ min: 0, max: 900, noNaN: true });
    fc.assert(
      fc.property(history, wait, wait, (steps, a, b) => {
        const { standing, when } = after(steps);
        const rests = [Math.min(a, b), Math.max(a, b)].map(
          (each) => remembered(standing, when + each).interval,
        );
        expect(rests[1]).toBeGreaterThanOrEqual(rests[0]! - 1e-9);
      }),
      { numRuns: 500, seed: 93 },
    );
  });
});

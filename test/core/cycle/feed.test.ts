/** Feeds, drift, reach and time of a tapping cycle. The kind of each value stands beside it. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkFeed, cleanSpeeds, exactFeed, roundedFeed } from '../../../core/cycle/feed';
import { cycleTime, overrun, rampTravel, reachableRpm } from '../../../core/cycle/reach';

const M8 = { pitch: 1.25, rpm: 500, unit: 'in', mode: 'per-minute', thread: 20 } as const;

describe('M8 in an inch program at 500 rev/min', () => {
  test('the exact feed is 24.606 in/min (derived)', () => {
    expect(exactFeed(1.25, 500, 'in', 'per-minute')).toBeCloseTo(24.606, 3);
    expect(exactFeed(1.25, 500, 'mm', 'per-minute')).toBe(625);
  });

  test('F24.6 drifts 0.005 mm in 20 mm, which nobody can measure (derived; verdict common practice)', () => {
    const found = checkFeed({ ...M8, programmed: 24.6 });
    expect(Math.abs(found.error) * 100).toBeCloseTo(0.026, 3);
    expect(Math.abs(found.drift)).toBeCloseTo(0.005, 3);
    expect(found.turns).toBe(16);
    expect(found.verdict).toBe('good');
  });

  test('F24 drifts 0.49 mm over sixteen turns and is refused (derived; verdict common practice)', () => {
    const found = checkFeed({ ...M8, programmed: 24 });
    expect(found.error * 100).toBeCloseTo(-2.46, 2);
    expect(found.drift).toBeCloseTo(-0.49, 2);
    expect(found.verdict).toBe('refuse');
  });

  test('508 rev/min needs no rounding: 25.000 in/min (derived)', () => {
    expect(cleanSpeeds(1.25, 500, 'in')[0]).toEqual({ rpm: 508, feed: 25, decimals: 0 });
  });
});

describe('7/16-14 at 300 rev/min', () => {
  const question = { pitch: 25.4 / 14, rpm: 300, unit: 'in', mode: 'per-minute' } as const;

  test('F21.43 is harmless, F21 is 2 % out: 0.020 in over 1 in (derived)', () => {
    expect(exactFeed(question.pitch, 300, 'in', 'per-minute')).toBeCloseTo(21.4286, 4);
    const near = checkFeed({ ...question, programmed: 21.43, thread: 25.4 });
    expect(near.error * 100).toBeCloseTo(0.007, 3);
    expect(near.verdict).toBe('good');
    const far = checkFeed({ ...question, programmed: 21, thread: 25.4 });
    expect(far.drift / 25.4).toBeCloseTo(-0.02, 3);
    expect(far.verdict).toBe('refuse');
  });

  test('clean speeds are multiples of the threads per inch (common practice)', () => {
    for (const { rpm, decimals } of cleanSpeeds(question.pitch, 300, 'in')) {
      if (decimals === 0) expect(rpm % 14).toBe(0);
    }
    expect(cleanSpeeds(question.pitch, 300, 'in')[0]?.rpm).toBe(294);
  });

  test('0.0714 in per turn drifts where 0.071429 does not (derived)', () => {
    const perTurn = { ...question, mode: 'per-revolution', thread: 25.4 } as const;
    expect(checkFeed({ ...perTurn, programmed: 0.071429 }).verdict).toBe('good');
    expect(checkFeed({ ...perTurn, programmed: 0.071 }).verdict).toBe('refuse');
  });
});

describe('any speed offered as clean', () => {
  const pitches = [0.4, 0.5, 0.7, 0.8, 1, 1.25, 1.5, 1.75, 2, 25.4 / 20, 25.4 / 13, 25.4 / 32];

  test('has a feed that, written as offered, follows the pitch', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...pitches),
        fc.integer({ min: 20, max: 4000 }),
        fc.constantFrom('mm' as const, 'in' as const),
        (pitch, rpm, unit) => {
          for (const clean of cleanSpeeds(pitch, rpm, unit)) {
            expect(roundedFeed(clean.feed, clean.decimals)).toBe(clean.feed);
            const found = checkFeed({
              pitch,
              rpm: clean.rpm,
              unit,
              mode: 'per-minute',
              programmed: clean.feed,
              thread: 20 * pitch,
            });
            expect(Math.abs(found.drift)).toBeLessThan(1e-6);
            expect(Math.abs(clean.rpm / rpm - 1)).toBeLessThanOrEqual(0.081);
          }
        },
      ),
      { seed: 72 },
    );
  });
});

describe('what the spindle’s acceleration makes of it', () => {
  test('M6×1, 12 mm at 100 rev/s²: no more than 2080 rev/min (derived)', () => {
    expect(Math.round(reachableRpm(100, 1, 12) / 10) * 10).toBe(2080);
  });

  test('a start plane further off lets it reach more (derived)', () => {
    expect(reachableRpm(100, 1, 15)).toBeGreaterThan(reachableRpm(100, 1, 12));
    // Half the travel just brings the spindle to the speed that is reached.
    expect(rampTravel(reachableRpm(100, 1, 12), 100, 1)).toBeCloseTo(6, 9);
  });

  test('M8, 29.1 mm at 480 rev/min takes 5.8 s at speed (common practice, derived)', () => {
    const { total, reached } = cycleTime({ travel: 29.1, pitch: 1.25, rpm: 480 });
    expect(total).toBeCloseTo(5.82, 2);
    expect(reached).toEqual({ in: 480, out: 480 });
  });

  test('where the ramps meet, a higher speed gains nothing (derived)', () => {
    const at = (rpm: number) => cycleTime({ travel: 12, pitch: 1, rpm, acceleration: 100 });
    expect(at(3000).total).toBeCloseTo(at(6000).total, 9);
    expect(at(3000).reached.in).toBeCloseTo(2078.46, 2);
    // Up and down over 12 turns at 100 rev/s²: 2·√(12/100) s each way.
    expect(at(3000).in).toBeCloseTo(2 * Math.sqrt(0.12), 9);
  });

  test('out twice as fast takes half the time out, and no less than the ramps (derived)', () => {
    const plain = cycleTime({ travel: 30, pitch: 1.5, rpm: 600 });
    const fast = cycleTime({ travel: 30, pitch: 1.5, rpm: 600, retract: 2 });
    expect(fast.out).toBeCloseTo(plain.out / 2, 9);
    expect(fast.in).toBe(plain.in);
  });

  test('a floating holder runs on by the square of the speed (derived)', () => {
    expect(overrun(600, 50, 1.25)).toBeCloseTo(1.25, 9);
    expect(overrun(1200, 50, 1.25)).toBeCloseTo(5, 9);
  });
});

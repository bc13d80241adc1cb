/** The blind-hole sum from each side. Expected depths: derived in pitches, and common practice. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  solveBlindHole,
  threadDepthBands,
  type BlindHoleAnswer,
  type BlindHoleSum,
} from '../../../core/hole/blind';

const solve = (sum: BlindHoleSum): BlindHoleAnswer => {
  const outcome = solveBlindHole(sum);
  if (!outcome.ok) throw new Error(outcome.problems[0]!.code);
  return outcome.value;
};
const depth = (sum: BlindHoleSum) => {
  const found = solve(sum);
  if (found.asked === 'chamfer') throw new Error('a chamfer, not a depth');
  return found.depth;
};

const FORM_C = { min: 2, max: 3 };
const plain = { clearance: 1, centre: 0 };

describe('shoulder depth from the full thread', () => {
  it('M6×1, 12 full, 2–3 threads, one pitch of stop: 16.0, in the middle 15.5', () => {
    const found = depth({ pitch: 1, fullThread: 12, chamfer: FORM_C, ...plain });
    expect(found.worst).toBeCloseTo(16, 9);
    expect(found.middle).toBeCloseTo(15.5, 9);
    expect(found.best).toBeCloseTo(15, 9);
  });

  it('9/16-18, .80 in full: 1.022 in, in the middle .994 in', () => {
    const found = depth({ pitch: 25.4 / 18, fullThread: 20.32, chamfer: FORM_C, ...plain });
    expect(found.worst / 25.4).toBeCloseTo(1.022, 3);
    expect(found.middle / 25.4).toBeCloseTo(0.994, 3);
  });

  it('a floating head and a 2 mm male centre are each added once', () => {
    const found = depth({ pitch: 1, fullThread: 12, chamfer: FORM_C, clearance: 3, centre: 2 });
    expect(found.worst).toBeCloseTo(12 + 3 + 3 + 2, 9);
  });
});

describe('full thread from the shoulder depth: M10×1.5, floor at 16.5', () => {
  it.each([
    [FORM_C, 1, 10.5, 11.25],
    [{ min: 1.5, max: 2 }, 1, 12, 12.375],
    [{ min: 1, max: 1.5 }, 0.25, 13.875, 14.25],
  ])(
    'chamfer %o, %s pitches of stop: %s certain, %s in the middle',
    (chamfer, clearance, worst, middle) => {
      const found = depth({ pitch: 1.5, shoulder: 16.5, chamfer, clearance, centre: 0 });
      expect(found.worst).toBeCloseTo(worst, 6);
      expect(found.middle).toBeCloseTo(middle, 6);
    },
  );
});

describe('chamfer from both depths', () => {
  it('M10×1.5 with 5.25 mm of room: 3.5 pitches, 2.5 threads', () => {
    const found = solve({ pitch: 1.5, fullThread: 15, shoulder: 20.25, ...plain });
    expect(found).toMatchObject({ asked: 'chamfer', threads: 2.5, roomInPitches: 3.5 });
  });

  it('a hole one pitch deeper than its thread has room for none', () => {
    const outcome = solveBlindHole({ pitch: 1.5, fullThread: 15, shoulder: 16.5, ...plain });
    expect(outcome).toEqual({ ok: false, problems: [{ code: 'no-room', field: 'shoulder' }] });
  });

  it('a hole just deeper than that holds a sliver of chamfer', () => {
    const found = solve({ pitch: 1.5, fullThread: 15, shoulder: 16.53, ...plain });
    expect(found).toMatchObject({ threads: expect.closeTo(0.02, 9) });
  });

  it('a male centre takes its own length, in pitches, from the chamfer', () => {
    const sum = { pitch: 1.5, fullThread: 15, shoulder: 21.75, clearance: 1, centre: 1.5 };
    expect(solve(sum)).toMatchObject({ threads: expect.closeTo(2.5, 9), roomInPitches: 4.5 });
  });
});

describe('refuses', () => {
  it('anything but two of the three', () => {
    expect(solveBlindHole({ pitch: 1, fullThread: 12, ...plain }).ok).toBe(false);
    const all = { pitch: 1, fullThread: 12, shoulder: 20, chamfer: FORM_C, ...plain };
    expect(solveBlindHole(all)).toMatchObject({ ok: false, problems: [{ code: 'two-of-three' }] });
  });

  // M10×1.5, 2–3 threads and a pitch of stop: the shortest chamfer wants 4.5 mm before any thread is full.
  it.each([3, 4.5])(
    'a floor at %d mm, where even the shortest chamfer leaves no full thread',
    (floor) => {
      const outcome = solveBlindHole({ pitch: 1.5, shoulder: floor, chamfer: FORM_C, ...plain });
      expect(outcome).toEqual({ ok: false, problems: [{ code: 'no-room', field: 'shoulder' }] });
    },
  );

  it('but not a floor where only the longest chamfer leaves none', () => {
    const found = depth({ pitch: 1.5, shoulder: 5, chamfer: FORM_C, ...plain });
    expect(found).toEqual({ worst: 0, middle: 0, best: 0.5 });
  });
});

const any = fc.record({
  pitch: fc.double({ min: 0.2, max: 6, noNaN: true }),
  fullThread: fc.double({ min: 0.5, max: 100, noNaN: true }),
  least: fc.double({ min: 0.5, max: 8, noNaN: true }),
  spread: fc.double({ min: 0, max: 3, noNaN: true }),
  clearance: fc.double({ min: 0, max: 4, noNaN: true }),
  centre: fc.double({ min: 0, max: 5, noNaN: true }),
});

describe('from any side the same sum', () => {
  it('the hole it asks for yields the thread it was asked about, and holds the chamfer', () => {
    fc.assert(
      fc.property(any, ({ least, spread, fullThread, ...rest }) => {
        const chamfer = { min: least, max: least + spread };
        const needed = depth({ ...rest, fullThread, chamfer }).worst;
        expect(depth({ ...rest, shoulder: needed, chamfer }).worst).toBeCloseTo(fullThread, 6);
        const held = solve({ ...rest, fullThread, shoulder: needed });
        expect(held.asked === 'chamfer' ? held.threads : 0).toBeCloseTo(chamfer.max, 6);
      }),
    );
  });

  it('more thread never needs less hole, and a longer chamfer never a shallower one', () => {
    fc.assert(
      fc.property(any, ({ least, spread, fullThread, ...rest }) => {
        const chamfer = { min: least, max: least + spread };
        const first = depth({ ...rest, fullThread, chamfer });
        const more = depth({ ...rest, fullThread: fullThread + 1, chamfer });
        expect(more.worst).toBeGreaterThan(first.worst);
        expect(first.worst).toBeGreaterThanOrEqual(first.middle);
        expect(first.middle).toBeGreaterThanOrEqual(first.best);
      }),
    );
  });
});

describe('bands of thread against hole depth', () => {
  const M8 = { pitch: 1.25, system: 'metric', ...plain } as const;

  it('hold every class, never fall, and say the same as the sum', () => {
    const bands = threadDepthBands(M8, 0, 40);
    expect(bands.map(({ chamfer }) => chamfer.form)).toEqual(['A', 'D', 'C', 'E']);
    for (const { chamfer, points } of bands) {
      points.forEach(({ shoulder, sure, atBest }, index) => {
        const before = points[index - 1];
        expect(sure).toBeLessThanOrEqual(atBest);
        if (before) expect(sure).toBeGreaterThanOrEqual(before.sure);
        if (before) expect(shoulder).toBeGreaterThan(before.shoulder);
        if (sure > 0) {
          const sum = depth({ pitch: 1.25, shoulder, chamfer: chamfer.threads, ...plain });
          expect([sum.worst, sum.best]).toEqual([sure, atBest]);
        }
      });
    }
  });

  const depths = (from: number, to: number, steps: number) =>
    threadDepthBands({ pitch: 1, system: 'metric', ...plain }, from, to, steps)
      .find(({ chamfer }) => chamfer.form === 'C')!
      .points.map(({ shoulder }) => shoulder);

  // M6×1, form C (2–3 threads) and a pitch of stop: the edges leave zero at 3 and at 4 mm.
  it.each([
    ['even steps, both corners among them', 0, 10, 4, [0, 2.5, 3, 4, 5, 7.5, 10]],
    ['a corner on a step is there once', 0, 8, 4, [0, 2, 3, 4, 6, 8]],
    ['corners outside are left out', 5, 10, 2, [5, 7.5, 10]],
    ['as are corners at the ends', 3, 4, 2, [3, 3.5, 4]],
    ['one corner inside', 3.5, 4.5, 1, [3.5, 4, 4.5]],
    ['the other', 2.5, 3.5, 1, [2.5, 3, 3.5]],
  ])('%s: from %d to %d in %d', (_, from, to, steps, expected) => {
    expect(depths(from, to, steps)).toEqual(expected);
  });

  it('takes twelve steps unless told otherwise', () => {
    const [formA] = threadDepthBands(M8, 20, 44);
    expect(formA!.points.map(({ shoulder }) => shoulder)).toEqual(
      Array.from({ length: 13 }, (_, index) => 20 + 2 * index),
    );
  });
});

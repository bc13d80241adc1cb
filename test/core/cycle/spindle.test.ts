/** A spindle's torque over its speeds: exact where theory is, refused where the manual is misread. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { torqueFromMeter } from '../../../core/cycle/load-meter';
import { powerOf, spindleCurve, torqueAt, type SpindlePoint } from '../../../core/cycle/spindle';
import {
  mostPower,
  sharedSpeeds,
  speedsWithTorque,
  spindleLoad,
} from '../../../core/cycle/spindle-speeds';

function curveOf(...points: [number, number][]) {
  const found = spindleCurve(points.map(([rpm, torque]): SpindlePoint => ({ rpm, torque })));
  if (!found.ok) throw new Error(found.problems[0]?.code);
  return found.value;
}

/** 60 N·m up to 1,200 rev/min, then 7.54 kW as far as 8,000. */
const vmc = curveOf([50, 60], [1200, 60], [8000, 9]);

describe('between the points', () => {
  it('constant torque and constant power come out exactly', () => {
    expect(torqueAt(vmc, 600)).toBeCloseTo(60, 9);
    expect(torqueAt(vmc, 2400)).toBeCloseTo(30, 9);
    expect(powerOf(torqueAt(vmc, 5000) ?? 0, 5000)).toBeCloseTo(powerOf(60, 1200), 9);
  });

  it('beyond them nothing is said', () => {
    expect(torqueAt(vmc, 49)).toBeNull();
    expect(torqueAt(vmc, 8001)).toBeNull();
    expect(torqueAt(curveOf([90, 320]), 91)).toBeNull();
    expect(torqueAt(curveOf([90, 320]), 90)).toBe(320);
  });

  it('the order they were typed in does not matter', () => {
    expect(curveOf([8000, 9], [50, 60], [1200, 60])).toEqual(vmc);
  });
});

describe('misread points', () => {
  const code = (...points: [number, number][]) => {
    const found = spindleCurve(points.map(([rpm, torque]) => ({ rpm, torque })));
    return found.ok ? 'ok' : found.problems[0]?.code;
  };

  it.each([
    ['no points', [], 'spindle-no-points'],
    ['a speed of 0', [[0, 60]], 'spindle-point-out-of-range'],
    ['a negative torque', [[500, -1]], 'spindle-point-out-of-range'],
    ['not a number', [[Number.NaN, 5]], 'spindle-point-out-of-range'],
    [
      'the same speed twice',
      [
        [500, 60],
        [500, 40],
      ],
      'spindle-speed-twice',
    ],
    ['a slipped decimal point', [[8000, 900]], 'spindle-power-absurd'],
    [
      'thirteen points',
      Array.from({ length: 13 }, (_, n) => [100 + n, 5]),
      'spindle-too-many-points',
    ],
  ] as [string, [number, number][], string][])('%s', (_, points, expected) => {
    expect(code(...points)).toBe(expected);
  });
});

describe('speeds that give a torque', () => {
  it('30 N·m: from the slowest to 2,400; 61: none; at a dip, two ranges', () => {
    expect(speedsWithTorque(vmc, 30)).toEqual([{ min: 50, max: expect.closeTo(2400, 6) }]);
    expect(speedsWithTorque(vmc, 61)).toEqual([]);
    const dip = curveOf([50, 20], [200, 60], [800, 30], [1600, 60]);
    const found = speedsWithTorque(dip, 40);
    expect(found).toHaveLength(2);
    expect(torqueAt(dip, found[0]!.min)).toBeCloseTo(40, 9);
    expect(torqueAt(dip, found[0]!.max)).toBeCloseTo(40, 9);
    expect(torqueAt(dip, found[1]!.min)).toBeCloseTo(40, 9);
  });

  it('shared with what the material wants', () => {
    expect(sharedSpeeds(vmc, 30, { min: 400, max: 3000 })).toEqual([
      { min: 400, max: expect.closeTo(2400, 6) },
    ]);
    expect(sharedSpeeds(vmc, 30, { min: 3000, max: 4000 })).toEqual([]);
    expect(sharedSpeeds(curveOf([90, 320]), 100, { min: 50, max: 120 })).toEqual([
      { min: 90, max: 90 },
    ]);
  });

  it('whatever the curve: inside a range there is enough, at its inner ends just enough', () => {
    const point = fc.tuple(
      fc.integer({ min: 20, max: 12000 }),
      fc.double({ min: 1, max: 200, noNaN: true }),
    );
    const points = fc.uniqueArray(point, {
      minLength: 2,
      maxLength: 8,
      selector: ([rpm]) => rpm,
    });
    fc.assert(
      fc.property(points, fc.double({ min: 0.5, max: 220, noNaN: true }), (typed, wanted) => {
        const checked = spindleCurve(typed.map(([rpm, torque]) => ({ rpm, torque })));
        if (!checked.ok) return;
        for (const { min, max } of speedsWithTorque(checked.value, wanted)) {
          for (const share of [0, 0.3, 0.7, 1]) {
            const given = torqueAt(checked.value, Math.min(max, min + share * (max - min)));
            expect(given === null ? Infinity : given).toBeGreaterThanOrEqual(wanted * (1 - 1e-6));
          }
        }
      }),
    );
  });
});

describe('torque, not power', () => {
  it('M30×3.5 in C45: 115 N·m at 90 rev/min is 1.1 kW and far beyond a spindle of 30 N·m and 11 kW', () => {
    const vmcB = curveOf([60, 30], [3500, 30], [10000, 10.5]);
    const load = spindleLoad(vmcB, 115, 90);
    expect(load.power).toBeCloseTo(1.08, 2);
    expect(load.mostPower).toBeCloseTo(11, 1);
    expect(load.share).toBeCloseTo(115 / 30, 9);
    expect(speedsWithTorque(vmcB, 115)).toEqual([]);
    expect(mostPower(vmcB)).toBe(load.mostPower);
  });

  it('beyond the points there is no share', () => {
    expect(spindleLoad(vmc, 10, 9000)).toMatchObject({ given: null, share: null });
  });
});

describe('a load meter', () => {
  const read = (percent: number, idle: number, rpm: number) =>
    torqueFromMeter({ percent, idle, rpm }, vmc);

  it('20 % less 5 % idling of 60 N·m is 9 N·m', () => {
    expect(read(20, 5, 600)).toMatchObject({ ok: true, value: 9 });
  });

  it.each([
    [0, 0, 600, 'meter-out-of-range'],
    [300, 0, 600, 'meter-out-of-range'],
    [Number.NaN, 0, 600, 'meter-out-of-range'],
    [10, 12, 600, 'meter-idle-over-reading'],
    [20, 5, 20, 'meter-speed-off-curve'],
  ])('%s %%, idle %s %%, %s rev/min: %s', (percent, idle, rpm, code) => {
    const found = read(percent, idle, rpm);
    expect(found.ok ? 'ok' : found.problems[0]?.code).toBe(code);
  });
});

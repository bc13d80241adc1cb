/** Torque along the stroke against an integration of its own, and what must hold of its shape. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { meanMetalShare, metalShare } from '../../../core/load/cross-hole';
import {
  reversalTorque,
  strokeBends,
  strokeCurve,
  strokePeak,
} from '../../../core/load/stroke-curve';
import { strokeEnd, strokeTorque, type Stroke } from '../../../core/load/stroke';
import { engagedShare, peakTorque, wholeTorque } from '../../../core/load/torque';

const groove = { major: 10, pitch: 1.5, hole: 8.5 };
const material = { kc11: 1600, mc: 0.25, friction: 0.1 };
const whole = wholeTorque({ ...groove, material, flutes: 4 });
const base: Stroke = {
  process: 'cut',
  groove,
  whole,
  threads: 5,
  friction: 0.1,
  fullThread: 20,
  thickness: Infinity,
};
const through: Stroke = { ...base, thickness: 20, travel: 20 + 7.5 + 1.5 };

/** The chamfer in 4,000 slices from nose to full thread: which are in metal, and what each takes. */
function sliced(stroke: Stroke, travel: number): number {
  const { major, pitch, hole } = stroke.groove;
  const height = (major - hole) / 2;
  const length = stroke.threads * pitch;
  const count = 4000;
  let [inMetal, all] = [0, 0];
  for (let index = 0; index < count; index += 1) {
    const behind = ((index + 0.5) / count) * length;
    const y = (height * behind) / length;
    const width =
      stroke.process === 'cut'
        ? pitch / 8 + 2 * (height - y) * Math.tan(Math.PI / 6)
        : pitch / 8 + 2 * y * Math.tan(Math.PI / 6);
    const part = width * (hole / 2 + y);
    all += part;
    const depth = travel - behind;
    if (depth > 0 && depth < stroke.thickness) inMetal += part;
  }
  return (stroke.whole * inMetal) / all;
}

describe('cutting part against slices of the same chamfer, within 0.5 % of the whole', () => {
  const cases: [string, Stroke][] = [
    ['thick blind', base],
    ['thick through', through],
    ['thin through', { ...base, thickness: 3, fullThread: 3, travel: 12 }],
    ['formed through', { ...through, process: 'form', groove: { ...groove, hole: 9.35 } }],
    ['formed thin', { ...base, process: 'form', groove: { ...groove, hole: 9.35 }, thickness: 3 }],
  ];
  it.each(cases)('%s', (_, stroke) => {
    for (let share = 0.02; share <= 1; share += 0.07) {
      const travel = share * strokeEnd(stroke);
      const found = strokeTorque(stroke, travel).cutting;
      expect(Math.abs(found - sliced(stroke, travel))).toBeLessThan(0.005 * stroke.whole);
    }
  });
});

describe('shape', () => {
  const value = (stroke: Stroke, travel: number) => strokeTorque(stroke, travel).torque;

  it('rises while the chamfer goes in, holds, falls as it breaks out, and ends on rubbing alone', () => {
    expect(value(through, 0)).toBe(0);
    expect(value(through, 3)).toBeGreaterThan(value(through, 1));
    expect(value(through, 7.5)).toBeCloseTo(whole, 9);
    expect(value(through, 20)).toBeCloseTo(whole * (1 + (0.1 * 12.5) / 10), 9);
    expect(value(through, 24)).toBeLessThan(value(through, 20));
    expect(value(through, 27.5)).toBeCloseTo((whole * 0.1 * 12.5) / 10, 9);
  });

  it('stays on the plateau to the stop in a blind hole', () => {
    expect(strokeEnd(base)).toBe(27.5);
    expect(strokeTorque(base, 27.5).cutting).toBeCloseTo(whole, 9);
    expect(strokePeak(base).torque).toBeCloseTo(value(base, 27.5), 9);
  });

  it('bends where the chamfer is buried, the nose and the chamfer come out, and at the stop', () => {
    expect(strokeBends(through)).toEqual([
      { at: 'buried', travel: 7.5 },
      { at: 'nose-out', travel: 20 },
      { at: 'chamfer-out', travel: 27.5 },
      { at: 'stop', travel: 29 },
    ]);
    expect(strokeBends(base).map(({ at }) => at)).toEqual(['buried', 'stop']);
    const thin = { ...base, thickness: 3, fullThread: 3, travel: 12 };
    expect(strokeBends(thin).map(({ at }) => at)).toEqual(['nose-out', 'chamfer-out', 'stop']);
    const equal = { ...thin, thickness: 7.5 };
    expect(strokeBends(equal).map(({ at }) => at)).toEqual(['buried', 'nose-out', 'stop']);
  });

  it('is drawn in even steps with every bend between them, in order, each once', () => {
    const travels = (stroke: Stroke, points: number) => {
      const curve = strokeCurve(stroke, points);
      return curve.ok ? curve.value.map(({ travel }) => travel) : [];
    };
    expect(travels(base, 4)).toEqual([0, 6.875, 7.5, 13.75, 20.625, 27.5]);
    expect(travels(through, 2)).toEqual([0, 7.5, 14.5, 20, 27.5, 29]);
    expect(travels(through, 58)).toHaveLength(59);
  });

  it('the peak is where it is first reached: with nothing rubbing, as the chamfer is buried', () => {
    expect(strokePeak({ ...base, friction: 0 }).travel).toBe(7.5);
  });

  it('a form tap peaks in thin work as its full thread enters, a cutting tap as its nose leaves', () => {
    const thin = { ...base, thickness: 3, fullThread: 3, travel: 12 };
    expect(strokePeak(thin).travel).toBeCloseTo(3, 9);
    const formed: Stroke = { ...thin, process: 'form', groove: { ...groove, hole: 9.35 } };
    expect(strokePeak(formed).travel).toBeGreaterThan(7);
  });

  it('the way back is rubbing alone, all threads in metal', () => {
    expect(reversalTorque(base, 27.5)).toBeCloseTo((whole * 0.1 * 20) / 10, 9);
    expect(reversalTorque(base, 0)).toBe(0);
  });

  it('refuses a hole as large as the thread', () => {
    const wide = { ...base, groove: { ...groove, hole: 10 } };
    expect(strokeCurve(wide)).toEqual({
      ok: false,
      problems: [{ code: 'hole-over-thread', field: 'hole' }],
    });
    expect(strokePeak({ ...wide, friction: 0 })).toMatchObject({ travel: 0, torque: 0 });
    expect(strokeTorque(wide, 5).cutting).toBe(0);
  });
});

describe('the peak is the single-number torque', () => {
  it('for any chamfer, thickness and thread', () => {
    const length = fc.double({ min: 0.5, max: 60, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 1, max: 10, noNaN: true }), length, (threads, thickness) => {
        const stroke = { ...base, threads, thickness, fullThread: thickness };
        const single = peakTorque({
          ...groove,
          material,
          flutes: 4,
          threads,
          thickness,
          fullThread: thickness,
        });
        expect(strokePeak(stroke).torque / single).toBeCloseTo(1, 9);
        expect(strokePeak(stroke).torque).toBeGreaterThanOrEqual(
          whole * engagedShare(groove, threads, thickness) - 1e-9,
        );
      }),
    );
  });
});

describe('a bore that crosses the hole', () => {
  const crossHoles = [{ depth: 10, diameter: 6, bothSides: true }];
  const crossed: Stroke = { ...through, threads: 2.5, travel: 25, crossHoles };

  it('takes a share of the wall: a 6 mm bore through a wall of radius 5 leaves 1 − 2·asin(3/5)/π', () => {
    expect(metalShare(10, 5, crossHoles)).toBeCloseTo(1 - (2 * Math.asin(0.6)) / Math.PI, 9);
    expect(metalShare(10, 5, [{ ...crossHoles[0]!, bothSides: false }])).toBeCloseTo(
      1 - Math.asin(0.6) / Math.PI,
      9,
    );
    expect(metalShare(14, 5, crossHoles)).toBe(1);
    expect(metalShare(10, 2.9, crossHoles)).toBe(0);
  });

  const finely = (from: number, to: number, radius: number) => {
    let sum = 0;
    for (let index = 0; index < 20000; index += 1) {
      sum += metalShare(from + ((to - from) * (index + 0.5)) / 20000, radius, crossHoles);
    }
    return sum / 20000;
  };

  it.each([
    [7, 13],
    [7, 10],
    [0, 9],
  ])('the mean from %d to %d is that of 20,000 fine steps', (from, to) => {
    const mean = meanMetalShare(from, to, 5, crossHoles);
    expect(Math.abs(mean - finely(from, to, 5))).toBeLessThan(0.002);
  });

  it('over no length at all nothing is missing', () => {
    expect(meanMetalShare(10, 10, 5, crossHoles)).toBe(1);
  });

  it('cuts as its chamfer in 4,000 slices, each with the metal at its own depth and radius', () => {
    const [length, height] = [3.75, 0.75];
    for (let travel = 6.5; travel <= 17; travel += 0.75) {
      let [inMetal, all] = [0, 0];
      for (let index = 0; index < 4000; index += 1) {
        const behind = ((index + 0.5) / 4000) * length;
        const y = (height * behind) / length;
        const part = (1.5 / 8 + 2 * (height - y) * Math.tan(Math.PI / 6)) * (4.25 + y);
        const chord = Math.sqrt(Math.max(0, 9 - (travel - behind - 10) ** 2));
        all += part;
        inMetal += part * (1 - (2 * Math.asin(chord / (4.25 + y))) / Math.PI);
      }
      const found = strokeTorque(crossed, travel).cutting / whole;
      expect(Math.abs(found - inMetal / all)).toBeLessThan(0.0005);
    }
  });

  it('the threads rub on the metal that is there, at the middle of their height', () => {
    // Chamfer 3.75: at 20 mm of travel, full thread lies from the face to 16.25.
    const rubbing = ((whole * 0.1) / 10) * 16.25 * finely(0, 16.25, 4.625);
    expect(strokeTorque(crossed, 20).rubbing / rubbing).toBeCloseTo(1, 2);
    const short = ((whole * 0.1) / 10) * 6.25 * finely(0, 6.25, 4.625);
    expect(strokeTorque(crossed, 10).rubbing / short).toBeCloseTo(1, 2);
  });

  it('lowers the torque there and nowhere else; what whole metal would ask for is kept beside it', () => {
    const inside = strokeTorque(crossed, 12);
    expect(inside.torque).toBeLessThan(0.8 * inside.whole);
    const before = strokeTorque(crossed, 6);
    expect(before.torque).toBeCloseTo(before.whole, 9);
    for (const travel of [2, 12, 22]) {
      const plain = strokeTorque({ ...crossed, crossHoles: [] }, travel);
      expect(strokeTorque(crossed, travel).whole).toBeCloseTo(plain.torque, 9);
    }
  });

  it('is reckoned in slices that agree with the closed form where nothing crosses', () => {
    const far = { ...crossed, crossHoles: [{ depth: 900, diameter: 1, bothSides: true }] };
    for (const travel of [1, 3, 12, 21, 23]) {
      const one = strokeTorque(far, travel).torque;
      const two = strokeTorque({ ...crossed, crossHoles: [] }, travel).torque;
      expect(Math.abs(one - two)).toBeLessThan(1e-6);
    }
  });
});

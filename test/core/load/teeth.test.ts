/** Every tooth of the chamfer: the closed form against adding them up; hand-worked rows; properties. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chamferTeeth, cuttingThreads, rubbingOf } from '../../../core/load/teeth';
import {
  grooveGeometry,
  heaviestToothLoad,
  specificForce,
  toothGeometry,
} from '../../../core/load/torque';
import { findMaterial } from '../../../core/material/table';

const steel = { kc11: 1600, mc: 0.25, workHardens: false };
const stainless = findMaterial('stainless-austenitic')!;
const m10 = { major: 10, pitch: 1.5, hole: 8.5 };

function teethOf(groove: typeof m10, threads: number, flutes: number, nose?: number) {
  const found = chamferTeeth(groove, { threads, flutes, nose }, steel);
  if (!found.ok) throw new Error(found.problems[0]?.code);
  return found.value;
}

/** Area and first moment of a polygon about the axis, by its corners: nothing of the core in it. */
function polygon(points: [r: number, z: number][]): { area: number; moment: number } {
  let [area, moment] = [0, 0];
  points.forEach(([r1, z1], index) => {
    const [r2, z2] = points[(index + 1) % points.length]!;
    const cross = r1 * z2 - r2 * z1;
    area += cross / 2;
    moment += (cross * (r1 + r2)) / 6;
  });
  return { area: Math.abs(area), moment: Math.abs(moment) };
}

/** Torque tooth by tooth: each takes a trapezoid of the groove, corners on the true flanks. */
function summed(groove: typeof m10, threads: number, flutes: number): number {
  const height = (groove.major - groove.hole) / 2;
  const step = height / (threads * flutes);
  const half = (y: number) => groove.pitch / 16 + (height - y) * Math.tan(Math.PI / 6);
  const chip = (groove.pitch / flutes) * Math.sin(Math.atan(height / (threads * groove.pitch)));
  const force = 1600 * Math.max(chip, 0.01) ** -0.25;
  let torque = 0;
  for (let y = 0; y < height - 1e-12; y += step) {
    const top = Math.min(height, y + step);
    const r = groove.hole / 2;
    const corners: [number, number][] = [
      [r + y, -half(y)],
      [r + top, -half(top)],
      [r + top, half(top)],
      [r + y, half(y)],
    ];
    torque += (force * polygon(corners).moment) / 1000;
  }
  return torque;
}

const GROOVES: [string, typeof m10][] = [
  ['M3×0.5', { major: 3, pitch: 0.5, hole: 2.5 }],
  ['M10×1.5', m10],
  ['M30×3.5', { major: 30, pitch: 3.5, hole: 26.5 }],
  ['M8×1', { major: 8, pitch: 1, hole: 7.1 }],
  ['#6-32', { major: 3.505, pitch: 25.4 / 32, hole: 2.8 }],
];

describe('closed form against the same chamfer tooth by tooth, within 0.5 %', () => {
  for (const [name, groove] of GROOVES) {
    it.each([1.25, 2.5, 4, 5, 7.5, 9])(`${name}, chamfer %s`, (threads) => {
      const { area, centroidRadius } = grooveGeometry(groove);
      const kc = specificForce(steel, toothGeometry(groove, threads, 4).chip);
      const closed = (kc * area * centroidRadius) / 1000;
      expect(Math.abs(closed / summed(groove, threads, 4) - 1)).toBeLessThan(0.005);
      // The list of teeth takes each at its middle: still within 0.5 %.
      expect(Math.abs(teethOf(groove, threads, 4).torque / closed - 1)).toBeLessThan(0.005);
    });
  }
});

describe('M10×1.5, hole 8.5, four flutes, five threads [derived]', () => {
  it('20 teeth, the first is the heaviest, chip 0.037 mm', () => {
    const found = teethOf(m10, 5, 4);
    expect(found.teeth.map(({ number }) => number)).toEqual(
      Array.from({ length: 20 }, (_, index) => index + 1),
    );
    expect(found.heaviest.number).toBe(1);
    expect(found.heaviest.chip).toBeCloseTo(0.0373, 4);
    // 144 N is the first tooth at its widest edge; over its middle it is 2 % less.
    expect(found.heaviest.force).toBeLessThan(heaviestToothLoad(m10, 5, 4, steel));
    expect(found.heaviest.force).toBeGreaterThan(0.97 * 144);
  });

  it('a chamfer of 1.5 threads loads its first tooth about 2.4 times as much', () => {
    const ratio = teethOf(m10, 1.5, 4).heaviest.force / teethOf(m10, 5, 4).heaviest.force;
    expect(ratio).toBeGreaterThan(2.2);
    expect(ratio).toBeLessThan(2.5);
  });

  it('a chamfer that ends between two teeth has a last one that takes the rest', () => {
    const { teeth } = teethOf(m10, 1.3, 4);
    expect(teeth).toHaveLength(6);
    expect(teeth[5]!.to - teeth[5]!.from).toBeCloseTo(0.2 * (teeth[0]!.to - teeth[0]!.from), 9);
  });
});

describe('the nose as measured', () => {
  it('n_c (D − D0)/(D − d): M10, nose 8.0 in a hole of 8.5 leaves three quarters of the chamfer to cut', () => {
    expect(cuttingThreads(m10, { threads: 4, flutes: 4, nose: 8 })).toMatchObject({
      ok: true,
      value: 3,
    });
    expect(teethOf(m10, 4, 4, 8).threads).toBeCloseTo(3, 9);
    expect(teethOf(m10, 4, 4, 8).heaviest.force).toBeCloseTo(teethOf(m10, 3, 4).heaviest.force, 9);
  });

  it('a nose as large as the hole just enters, and all of the chamfer cuts', () => {
    expect(cuttingThreads(m10, { threads: 4, flutes: 4, nose: 8.5 })).toMatchObject({ value: 4 });
  });

  it.each([8.6, 8.501, 0, -1, Number.NaN])('a nose of %s does not go in', (nose) => {
    const problem = { code: 'nose-not-in-hole', field: 'nose', data: { typed: String(nose) } };
    const tap = { threads: 4, flutes: 4, nose };
    expect(cuttingThreads(m10, tap)).toEqual({ ok: false, problems: [problem] });
    expect(chamferTeeth(m10, tap, steel)).toEqual({ ok: false, problems: [problem] });
  });

  it.each([10, 10.5])('a hole of %d in a 10 mm thread is refused', (hole) => {
    expect(chamferTeeth({ ...m10, hole }, { threads: 4, flutes: 4 }, steel)).toEqual({
      ok: false,
      problems: [{ code: 'hole-over-thread', field: 'hole' }],
    });
  });
});

describe('rubbing', () => {
  it('below the edge radius of 0.010 mm a tooth rubs; in metal that hardens it is near at twice that', () => {
    expect(rubbingOf(0.009, steel)).toBe('rubs');
    expect(rubbingOf(0.015, steel)).toBe('cuts');
    expect(rubbingOf(0.015, stainless)).toBe('near');
    expect(rubbingOf(0.021, stainless)).toBe('cuts');
    expect([rubbingOf(0.01, steel), rubbingOf(0.01, stainless)]).toEqual(['cuts', 'near']);
    expect([rubbingOf(0.0199, stainless), rubbingOf(0.02, stainless)]).toEqual(['near', 'cuts']);
  });

  it('a long chamfer on a small thread rubs, as the trade finds in stainless (8 threads on M3)', () => {
    const m3 = { major: 3, pitch: 0.5, hole: 2.5 };
    const long = chamferTeeth(m3, { threads: 8, flutes: 3 }, stainless);
    const usual = chamferTeeth(m3, { threads: 2.5, flutes: 3 }, stainless);
    expect(long.ok && long.value.rubbing).toBe('near');
    expect(usual.ok && usual.value.rubbing).toBe('cuts');
  });

  // Trade rows: M10, hole 8.5, three flutes, chip h/(c·z)·cos κ for 8, 4.5, 2.5, 1.75, 1.25 threads.
  it.each([
    [8, 0.031],
    [4.5, 0.055],
    [2.5, 0.098],
    [1.75, 0.137],
    [1.25, 0.186],
  ])('chip of a chamfer of %s threads is %s mm', (threads, chip) => {
    expect(teethOf(m10, threads, 3).heaviest.chip).toBeCloseTo(chip, 3);
  });
});

describe('properties', () => {
  const threads = fc.double({ min: 1, max: 12, noNaN: true });
  const flutes = fc.integer({ min: 2, max: 6 });

  it('a longer chamfer never loads its heaviest tooth more, nor do more flutes', () => {
    fc.assert(
      fc.property(threads, threads, flutes, (a, b, z) => {
        const [short, long] = [Math.min(a, b), Math.max(a, b)];
        const load = (count: number, teeth: number) => teethOf(m10, count, teeth).heaviest.force;
        expect(load(long, z)).toBeLessThanOrEqual(load(short, z) * (1 + 1e-9));
        expect(load(short, z + 1)).toBeLessThanOrEqual(load(short, z) * (1 + 1e-9));
      }),
    );
  });

  it('the teeth share the groove without a gap, and none takes more than the one before', () => {
    fc.assert(
      fc.property(threads, flutes, (count, z) => {
        const { teeth } = teethOf(m10, count, z);
        teeth.forEach((tooth, index) => {
          expect(tooth.from).toBeCloseTo(teeth[index - 1]?.to ?? 0, 9);
          if (index > 0) expect(tooth.force).toBeLessThan(teeth[index - 1]!.force);
        });
        expect(teeth[teeth.length - 1]!.to).toBeCloseTo(0.75, 9);
      }),
    );
  });
});

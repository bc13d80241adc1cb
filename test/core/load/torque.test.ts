import { describe, expect, it } from 'vitest';
import {
  engagedShare,
  grooveGeometry,
  heaviestToothLoad,
  peakTorque,
  referenceFlutes,
  specificForce,
  toothGeometry,
} from '../../../core/load/torque';
import {
  chamferCurve,
  chamferPoint,
  publishedFactor,
  thinningFactor,
} from '../../../core/load/chamfer-curve';
import { findMaterial } from '../../../core/material/table';
import { STYLES } from '../../../core/tap/styles';

const groove = { major: 10, pitch: 1.5, hole: 8.5 };
const steel = { kc11: 1600, mc: 0.25, friction: 0 };

describe('test vector M10×1.5, hole 8.5, five-pitch chamfer, four flutes [derived]', () => {
  it('height 0.750, area 0.4654, centroid 4.538, volume 8.85', () => {
    const found = grooveGeometry(groove);
    expect(found.height).toBeCloseTo(0.75, 6);
    expect(found.area).toBeCloseTo(0.4654, 4);
    expect(found.centroidRadius).toBeCloseTo(4.538, 3);
    expect(found.volumePerDepth).toBeCloseTo(8.85, 2);
  });

  it('chip 0.0373, kc 3640, torque 7.69 N·m, first tooth 144 N', () => {
    const { chip } = toothGeometry(groove, 5, 4);
    expect(chip).toBeCloseTo(0.0373, 4);
    expect(specificForce(steel, chip)).toBeCloseTo(3640, -1);
    const torque = peakTorque({
      ...groove,
      material: steel,
      flutes: 4,
      threads: 5,
      fullThread: 20,
      thickness: Infinity,
    });
    expect(torque).toBeCloseTo(7.69, 2);
    expect(heaviestToothLoad(groove, 5, 4, steel)).toBeCloseTo(144, 0);
  });
});

// [chamfer, teeth, h mm, first-tooth N, relative torque at t ≥ 2D, 1D, 0.5D, 0.25D], Kienzle alone [derived].
const TABLE = [
  [1.5, 6, 0.119, 359, 0.75, 0.75, 0.75, 0.75],
  [2.5, 10, 0.074, 243, 0.84, 0.84, 0.84, 0.68],
  [4, 16, 0.047, 170, 0.95, 0.95, 0.87, 0.54],
  [5, 20, 0.037, 144, 1.0, 1.0, 0.81, 0.47],
  [7, 28, 0.027, 112, 1.09, 1.07, 0.69, 0.38],
  [9, 36, 0.021, 92, 1.16, 1.0, 0.6, 0.32],
] as const;

describe('chamfer table of the same case [derived]', () => {
  it.each(TABLE)('%s pitches', (threads, teeth, chip, load, thick, oneD, halfD, quarterD) => {
    const found = toothGeometry(groove, threads, 4);
    expect(found.teeth).toBe(teeth);
    expect(found.chip).toBeCloseTo(chip, 3);
    expect(Math.abs(heaviestToothLoad(groove, threads, 4, steel) - load)).toBeLessThanOrEqual(0.6);
    const relative = (thickness: number) =>
      thinningFactor(groove, threads, 4, steel) * engagedShare(groove, threads, thickness);
    // Printed to two digits; the worst rounding is half the last one.
    expect(Math.abs(relative(20) - thick)).toBeLessThanOrEqual(0.0075);
    expect(Math.abs(relative(10) - oneD)).toBeLessThanOrEqual(0.0125);
    expect(Math.abs(relative(5) - halfD)).toBeLessThanOrEqual(0.0125);
    expect(Math.abs(relative(2.5) - quarterD)).toBeLessThanOrEqual(0.0125);
  });
});

describe('published: M3×0.5 in 6061-T6, hole 2.5, oiled 0.11 N·m, dry 0.18 N·m', () => {
  it('a straight-flute tap in oil lies within the band', () => {
    const aluminium = findMaterial('al-wrought')!;
    const torque = peakTorque({
      major: 3,
      pitch: 0.5,
      hole: 2.5,
      material: aluminium,
      flutes: 3,
      threads: 4.5,
      fullThread: 6,
      thickness: Infinity,
    });
    expect(torque / 1.4).toBeLessThan(0.11);
    expect(torque * 1.4).toBeGreaterThan(0.11);
  });
});

describe('published: relative torque of spiral point and spiral flute, one maker’s test and table', () => {
  it('spiral point 0.60 to 0.76, spiral flute 0.70 to 1.0 of a straight-flute tap', () => {
    expect(STYLES['spiral-point'].torque).toEqual({ low: 0.6, middle: 0.68, high: 0.76 });
    const { low, middle, high } = STYLES['spiral-flute'].torque;
    expect(low).toBe(0.7);
    expect(high).toBe(1);
    expect(middle).toBeCloseTo((low + high) / 2, 6);
  });
});

describe('no thread left to cut', () => {
  it('a hole over the thread: no height, no metal, and nothing to share out', () => {
    expect(grooveGeometry({ ...groove, hole: 10.5 })).toEqual({
      height: 0,
      area: 0,
      centroidRadius: 5.25,
      volumePerDepth: 0,
    });
    expect(engagedShare({ ...groove, hole: 10.5 }, 5, 3)).toBe(1);
  });
});

describe('the straight-flute tap that factors are relative to (common practice)', () => {
  it.each([
    ['M3', 3, 3],
    ['#6', 3.505, 3],
    ['M4', 4, 3],
    ['#8', 4.166, 4],
    ['M10', 10, 4],
  ])('%s', (_, major, flutes) => expect(referenceFlutes(major)).toBe(flutes));
});

describe('published: a short chamfer over one of five pitches, one maker’s factors', () => {
  const fine = { major: 10, pitch: 1, hole: 9 };
  it.each([
    ['coarse', groove, 1.5, 1.04, 1.06],
    ['coarse, no more below', groove, 1, 1.04, 1.06],
    ['coarse, half of it half-way', groove, 3.25, 1.02, 1.03],
    ['coarse, none at five', groove, 5, 1, 1],
    ['coarse, none beyond', groove, 9, 1, 1],
    ['fine', fine, 1.5, 1.16, 1.3],
    ['fine, half of it half-way', fine, 3.25, 1.08, 1.15],
  ])('%s', (_, thread, threads, low, high) => {
    const found = publishedFactor(thread, threads);
    expect(found.low).toBeCloseTo(low, 12);
    expect(found.high).toBeCloseTo(high, 12);
  });
});

describe('the disputed part', () => {
  const job = {
    ...groove,
    material: findMaterial('steel-medium')!,
    flutes: 4,
    fullThread: 20,
    thickness: Infinity,
    styleFactor: 1,
  };

  it('the curve runs in even steps, both ends counted: 1 to 10 by quarters unless told', () => {
    const lengths = (points: readonly { threads: number }[]) =>
      points.map(({ threads }) => threads);
    expect(lengths(chamferCurve(job, 2, 4, 0.5))).toEqual([2, 2.5, 3, 3.5, 4]);
    expect(lengths(chamferCurve(job))).toEqual(
      Array.from({ length: 37 }, (_, index) => 1 + index / 4),
    );
  });

  it('the band spans the claim for less torque and the claim for more, on both sides of five pitches', () => {
    const material = findMaterial('steel-medium')!;
    const input = {
      ...groove,
      material,
      flutes: 4,
      fullThread: 20,
      thickness: Infinity,
      styleFactor: 1,
    };
    const short = chamferPoint(input, 1.5);
    expect(short.torque.low / short.torque.expected).toBeCloseTo(0.75, 2);
    expect(short.torque.high / short.torque.expected).toBeCloseTo(1.06, 2);
    const long = chamferPoint(input, 9);
    expect(long.torque.high / long.torque.expected).toBeCloseTo(1.16, 2);
  });
});

import { describe, expect, it } from 'vitest';
import type { HoleRequest } from '../../../core';
import {
  chamferStudy,
  type ChamferStudy,
  type CuttingStyle,
} from '../../../core/plan/chamfer-study';
import { tapLoads } from '../../../core/plan/tap-load';

function study(request: HoleRequest, threads: number, style: CuttingStyle = 'straight-flute') {
  const outcome = chamferStudy(request, style, threads);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

const thick: HoleRequest = {
  thread: 'M10x1.5',
  fullThread: 20,
  hole: { kind: 'blind' },
  material: 'steel-medium',
};
const plate = (thickness: number): HoleRequest => ({
  thread: 'M10x1.5',
  hole: { kind: 'through', thickness },
  material: 'steel-medium',
});

describe('M10×1.5 in 1045, hole 8.5, four flutes [derived, the same case as the table of the mechanics]', () => {
  it.each([
    [1.5, 359],
    [2.5, 243],
    [4, 170],
    [5, 144],
    [7, 112],
    [9, 92],
  ])('%s threads: %s N on the first tooth', (threads, load) => {
    const found = study(thick, threads);
    expect(found.hole).toBe(8.5);
    expect(Math.abs(found.here.toothLoad - load)).toBeLessThanOrEqual(0.6);
  });

  // Peak over the peak in thick work: the share of the chamfer that the plate can hold, from the table's
  // columns 0.5 D and 0.25 D over its first, which take chip thinning out.
  it.each([
    [5, 5, 0.81 / 1],
    [7, 5, 0.69 / 1.09],
    [9, 5, 0.6 / 1.16],
    [4, 2.5, 0.54 / 0.95],
    [5, 2.5, 0.47 / 1],
    [9, 2.5, 0.32 / 1.16],
  ])('%s threads in %s mm of plate', (threads, thickness, share) => {
    expect(Math.abs(study(plate(thickness), threads).here.engaged - share)).toBeLessThan(0.012);
  });
});

describe('the curve', () => {
  const falls = (values: number[]) => values.every((value, i) => i === 0 || value < values[i - 1]!);
  const cases: [string, ChamferStudy][] = [
    ['thick', study(thick, 2.5)],
    ['a 6 mm plate', study(plate(6), 4.5, 'spiral-point')],
  ];

  it.each(cases)('%s: tooth load falls with every thread of chamfer', (_, { curve }) => {
    expect(falls(curve.map(({ toothLoad }) => toothLoad))).toBe(true);
  });

  it.each(cases)('%s: the band holds the single figure', (_, { curve }) => {
    for (const { torque } of curve) {
      expect(torque.low).toBeLessThanOrEqual(torque.expected);
      expect(torque.high).toBeGreaterThanOrEqual(torque.expected);
    }
  });

  it('bends where the chamfer is as long as the plate is thick, and falls from there', () => {
    const { curve, thinFrom, thick: deep } = study(plate(6), 4.5, 'spiral-point');
    expect(thinFrom).toBe(4);
    const after = curve.filter(({ threads }) => threads >= 4).map(({ torque }) => torque.expected);
    expect(falls(after)).toBe(true);
    expect(curve.every(({ threads, engaged }) => (engaged === 1) === threads <= 4)).toBe(true);
    expect(deep.every(({ engaged }) => engaged === 1)).toBe(true);
  });

  it('has no bend in a blind hole, nor in work thicker than ten threads', () => {
    expect(study(thick, 2.5).thinFrom).toBeUndefined();
    expect(study(plate(16), 2.5).thinFrom).toBeUndefined();
    expect(study(plate(16), 2.5).thick).toEqual([]);
  });

  it('passes through the point asked about', () => {
    const { curve, here } = study(thick, 3.3);
    expect(curve).toContainEqual(here);
  });
});

describe('agrees with the plan', () => {
  it('at the middle of a class, torque and tooth load are those of the tap', () => {
    for (const [request, chamfer, threads] of [
      [thick, 'semi-bottoming', 2.5],
      [plate(6), 'plug', 4.5],
    ] as const) {
      const loads = tapLoads(request, chamfer);
      if (!loads.ok) throw new Error('no loads');
      for (const style of ['spiral-point', 'spiral-flute', 'straight-flute'] as const) {
        const tap = loads.value.find((each) => each.style === style)!;
        const { here } = study(request, threads, style);
        expect(here.torque.expected).toBeCloseTo(tap.torque.expected, 9);
        expect(here.toothLoad).toBeCloseTo(tap.toothLoad, 9);
        expect(here.engaged).toBeCloseTo(tap.engaged, 9);
      }
    }
  });
});

describe('refuses', () => {
  it('hardened steel, and what makes no sense', () => {
    const codes = (request: HoleRequest) => {
      const outcome = chamferStudy(request, 'straight-flute', 4);
      return outcome.ok ? [] : outcome.problems.map(({ code }) => code);
    };
    expect(codes({ ...thick, material: 'steel-hard' })).toEqual(['too-hard']);
    expect(codes(plate(-1))).toContain('thickness-not-positive');
  });
});

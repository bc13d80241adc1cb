/** Speeds: no slower than a work-hardening metal stands, depths compared with slack. Derived by hand: v = π D n / 1000. */
import { describe, expect, it } from 'vitest';
import { findMaterial, MATERIALS, type HoleRequest } from '../../../../core';
import { depthFactor, tappingSpeed } from '../../../../core/cycle/speed';
import { cycleStudy } from '../../../../core/plan/cycle-study';
import { plan } from './ordinary';

const surface = (rpm: number, diameter: number) => (Math.PI * diameter * rpm) / 1000;

describe('the floor of a work-hardening metal', () => {
  it('M8 × 24 in 316: no speed of the range lies under 3 m/min', () => {
    const request: HoleRequest = {
      thread: 'M8',
      material: 'stainless-austenitic',
      fullThread: 24,
      hole: { kind: 'blind' },
    };
    const cycle = plan(request).cycle!;
    expect(surface(cycle.rpmRange.min, 8)).toBeGreaterThanOrEqual(3 - 1e-9);
    expect(surface(cycle.rpm, 8)).toBeGreaterThanOrEqual(3 - 1e-9);
    expect(cycle.rpm).toBeLessThanOrEqual(cycle.rpmRange.max);
  });

  it('in every metal that hardens and at every depth, on planner and speed page alike', () => {
    for (const { id, workHardens, speed } of MATERIALS) {
      if (!workHardens || !speed) continue;
      for (const depth of [8, 16, 17, 24, 25, 40]) {
        const found = tappingSpeed(findMaterial(id)!, 8, depth)!;
        expect(surface(found.range.min, 8)).toBeGreaterThanOrEqual(speed.min - 1e-9);
        expect(found.range.max).toBeGreaterThanOrEqual(found.range.min);
        expect(surface(found.rpm, 8)).toBeGreaterThanOrEqual(speed.min - 1e-9);
        const study = cycleStudy({
          thread: 'M8',
          fullThread: depth,
          material: id,
          substrate: 'hss',
          coating: 'plain',
          fluid: 'oil',
          drive: 'synchronous',
          unit: 'mm',
          mode: 'per-minute',
        });
        if (!study.ok) throw new Error('refused');
        expect(study.value.surface.min).toBeGreaterThanOrEqual(speed.min - 1e-9);
      }
    }
  });

  it('other metals are slowed as before', () => {
    const { range } = tappingSpeed(findMaterial('steel-low')!, 8, 25)!;
    expect(surface(range.min, 8)).toBeCloseTo(6, 9);
  });
});

describe('depth with slack', () => {
  it('19.05 mm of 1/4-20 is 3 D, not beyond it', () => {
    expect(depthFactor(19.05, 6.35)).toBe(0.7);
    expect(depthFactor(12.7, 0.25 * 25.4)).toBe(1);
    expect(depthFactor(0.75 * 25.4, 25.4 / 4)).toBe(0.7);
    expect(depthFactor(19.2, 6.35)).toBe(0.5);
  });
});

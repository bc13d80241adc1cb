/** Drills against a class, at its very limits; what is taken among those that pass. Expected: by hand from the rule. */
import { describe, expect, it } from 'vitest';
import type { DrillChoice, DrillSeries } from '../../../core/drill/drill';
import {
  bestDrill,
  judgeDrill,
  judgeDrills,
  type DrillPreference,
} from '../../../core/drill/judge';
import { oversizeShare } from '../../../core/drill/oversize';
import { drillsBetween } from '../../../core/drill/sizes';
import { findMaterial } from '../../../core/material/table';

// M8x1.25-6H
const M8 = { min: 6.647, max: 6.912, major: 8, pitch: 1.25, oversizeShare: 0 };
const drill = (diameter: number) =>
  ({ name: String(diameter), series: 'metric', diameter }) as const;

describe('a drill at the limit', () => {
  it.each([
    ['at the least hole', 6.647, undefined, 'inside'],
    ['a thousandth under it', 6.646, undefined, 'outside'],
    ['at the largest hole', 6.912, undefined, 'inside'],
    ['a thousandth over it', 6.913, undefined, 'outside'],
    ['whose cut ends at the largest', 6.8, 0.112, 'inside'],
    ['whose cut ends a thousandth over it', 6.8, 0.113, 'risk'],
    ['that cuts small never passes by that', 6.95, -0.1, 'outside'],
  ])('%s: %d cutting %s over is %s', (_, diameter, oversize, verdict) => {
    expect(judgeDrill(drill(diameter), { ...M8, oversize }).verdict).toBe(verdict);
  });

  it('a measured oversize stands in for the likely one', () => {
    const window = { ...M8, oversizeShare: 1 };
    expect(judgeDrill(drill(6.8), { ...window, oversize: 0.02 }).likely).toBeCloseTo(6.82, 9);
    expect(judgeDrill(drill(6.8), { ...window, oversize: 0 }).likely).toBe(6.8);
    expect(judgeDrill(drill(6.8), window).likely).toBeGreaterThan(6.82);
  });
});

describe('drills near a window', () => {
  it('a window to either side, when it is wider than a quarter pitch', () => {
    const near = judgeDrills({ ...M8, min: 6.6, max: 7 }, ['metric']);
    expect(near[0]!.diameter).toBe(6.2);
    expect(near.at(-1)!.diameter).toBe(7.4);
  });

  it('a quarter pitch to either side of a narrow one', () => {
    const sizes = judgeDrills({ ...M8, min: 6.8, max: 6.8, pitch: 1.2 }, ['metric']);
    expect([sizes[0]!.diameter, sizes.at(-1)!.diameter]).toEqual([6.5, 7.1]);
  });
});

const choice = (
  diameter: number,
  verdict: DrillChoice['verdict'] = 'inside',
  series: DrillSeries = 'metric',
): DrillChoice => ({
  name: String(diameter),
  series,
  diameter,
  percent: { shop: 75, iso: 90 },
  likely: diameter,
  verdict,
});
const wish: DrillPreference = { target: 6.75, largest: false, system: 'metric' };
const best = (drills: DrillChoice[], change: Partial<DrillPreference> = {}) =>
  bestDrill(drills, { ...wish, ...change })?.diameter ?? null;

describe('the drill to use', () => {
  const three = [choice(6.6), choice(6.7), choice(6.9)];

  it('is the nearest to the target', () => expect(best(three)).toBe(6.7));
  it('of two equally near the smaller', () => {
    expect(best([choice(6.5), choice(7)])).toBe(6.5);
    expect(best([choice(6.5), choice(7)], { target: 6.76 })).toBe(7);
  });
  it('or the listed one', () => expect(best(three, { listed: '6.9' })).toBe(6.9));
  it('or, in hard material, the largest', () => {
    expect(best(three, { largest: true, listed: '6.7' })).toBe(6.9);
  });
  it('of the shop’s own system, though another is nearer', () => {
    const mixed = [choice(6.6), choice(6.75, 'inside', 'letter'), choice(6.9, 'inside', 'number')];
    expect(best(mixed)).toBe(6.6);
    expect(best(mixed, { system: 'inch' })).toBe(6.75);
    expect(best([choice(6.6)], { system: 'inch' })).toBe(6.6);
  });
  it('one surely inside before any at risk, and at risk the smallest', () => {
    expect(best([choice(6.6), choice(6.75, 'risk')])).toBe(6.6);
    expect(best([choice(6.75, 'risk'), choice(6.8, 'risk')], { target: 6.8, largest: true })).toBe(
      6.75,
    );
  });
  it('none where all lie outside', () => expect(best([choice(6.75, 'outside')])).toBeNull());
});

describe('drills between two sizes', () => {
  it('both ends counted, smallest first', () => {
    const names = (from: number, to: number) =>
      drillsBetween(from, to, ['metric']).map(({ name }) => name);
    expect(names(5, 5.3)).toEqual(['5.0', '5.1', '5.2', '5.25', '5.3']);
    expect(names(5.01, 5.09)).toEqual([]);
  });

  it('every series unless told', () => {
    expect(drillsBetween(6.34, 6.36).map(({ name }) => name)).toEqual(['1/4', 'E']);
  });
});

describe('how much of a drill’s oversize stays (common practice)', () => {
  it.each([
    ['steel-medium', 1],
    ['al-wrought', 1],
    ['titanium', 0.5],
    ['plastic', 0],
  ] as const)('%s: %d', (id, share) => expect(oversizeShare(findMaterial(id)!)).toBe(share));
});

/**
 * The section factor of the breaking torque (1.2 at least, 1.5 expected, 2.1 at most) against torsion of
 * idealised flute sections, solved by finite differences. Round-bottomed flutes down to the web; the lands
 * count out to the thread's root, since the crests between notches carry next to nothing.
 */
import { describe, expect, it } from 'vitest';
import { SECTION_FACTOR } from '../../../core/tap/strength';
import { SECTION_SPREAD } from '../../../core/tap/twist';
import { webSpread } from '../../../core/tap/web';
import { edgeStress, torsionOf, webFactor } from './torsion';

describe('the solver, against closed forms (Saint-Venant, Prandtl)', () => {
  it('a round bar: J = πr⁴/2, stress = r', () => {
    const torsion = torsionOf({ reach: 1.05, inside: (x, y) => x * x + y * y < 1 });
    expect(torsion.constant / (Math.PI / 2)).toBeCloseTo(1, 3);
    expect(edgeStress(torsion, 1, 0, -1, 0)).toBeCloseTo(1, 2);
  });

  it('an ellipse a × b: J = πa³b³/(a² + b²), most stress at the end of the short axis, 2a²b/(a² + b²)', () => {
    const [a, b] = [1, 0.6];
    const torsion = torsionOf({ reach: 1.05, inside: (x, y) => (x / a) ** 2 + (y / b) ** 2 < 1 });
    expect(torsion.constant / ((Math.PI * a ** 3 * b ** 3) / (a * a + b * b))).toBeCloseTo(1, 2);
    const stress = edgeStress(torsion, 0, b, 0, -1);
    expect(stress / ((2 * a * a * b) / (a * a + b * b))).toBeCloseTo(1, 2);
  });

  it('does not move when the grid is made finer', () => {
    const coarse = webFactor(8.38, 4.85, 4, 1.8, 120).factor;
    const fine = webFactor(8.38, 4.85, 4, 1.8, 200).factor;
    expect(Math.abs(coarse / fine - 1)).toBeLessThan(0.01);
  });
});

/** M10: lands to the root (minor diameter 8.38 mm). Flutes, web as usual for them, radius of the flute. */
const MINOR = 8.38;
const FOUR: [web: number, radius: number][] = [
  [4.5, 2],
  [4.85, 1.5],
  [4.85, 2.2],
  [5.2, 2],
];
const THREE: [web: number, radius: number][] = [
  [4, 2.8],
  [4.25, 2.4],
  [4.5, 3.2],
  [5.25, 2.4],
];

describe('idealised flute sections over the web circle', () => {
  const four = FOUR.map(([web, radius]) => webFactor(MINOR, web, 4, radius, 120));
  const three = THREE.map(([web, radius]) => webFactor(MINOR, web, 3, radius, 120));

  it('stress is highest at the bottom of the flute: the web decides', () => {
    for (const { atBottom } of [...four, ...three]) expect(atBottom).toBe(true);
  });

  it('every one lies within the idealised range 1.15 to 2.1', () => {
    for (const { factor } of [...four, ...three]) {
      expect(factor).toBeGreaterThan(1.15);
      expect(factor).toBeLessThan(SECTION_SPREAD.high);
    }
  });

  it('the lower bound 1.2 is that of four flutes, within 5 %', () => {
    const least = Math.min(...four.map(({ factor }) => factor));
    expect(Math.abs(least / SECTION_FACTOR.low - 1)).toBeLessThan(0.05);
  });

  it('the expected 1.5 lies between four flutes and three', () => {
    const middle = (all: { factor: number }[]) =>
      all.reduce((sum, { factor }) => sum + factor, 0) / all.length;
    expect(middle(four)).toBeLessThan(SECTION_FACTOR.expected);
    expect(middle(three)).toBeGreaterThan(SECTION_FACTOR.expected);
  });

  it('the webs tried are those that the handbook takes for these taps', () => {
    const four4 = webSpread('straight-flute', 10, MINOR, 4);
    expect([four4.low, four4.high]).toEqual([4.5, 5.2]);
    const three3 = webSpread('straight-flute', 10, MINOR, 3);
    expect([three3.low, three3.high]).toEqual([4, 4.5]);
    expect(webSpread('spiral-point', 10, MINOR, 3).likely).toBeCloseTo(5.25, 9);
  });
});

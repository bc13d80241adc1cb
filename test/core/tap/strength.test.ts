/** Web, breaking torque, danger, clutch: shop figures, hand-worked rows, properties. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clutchSetting } from '../../../core/tap/clutch';
import { dangerIndex, dangerOverM10, spindleIndex } from '../../../core/tap/danger';
import { breakingTorque } from '../../../core/tap/strength';
import { typicalWeb } from '../../../core/tap/styles';
import { breakingBand, judgeShare, twistOff } from '../../../core/tap/twist';
import { measuredWeb, webSpread, type TwistedStyle } from '../../../core/tap/web';
import { roundDecimals } from '../../../core/units';

const STYLES: TwistedStyle[] = ['spiral-point', 'spiral-flute', 'straight-flute', 'form'];

describe('web of a tap', () => {
  // Share of D (form: of the minor diameter), least and most; common practice.
  it.each([
    ['spiral-point', 3, 0.45, 0.6],
    ['straight-flute', 3, 0.4, 0.45],
    ['straight-flute', 4, 0.45, 0.52],
    ['spiral-flute', 3, 0.38, 0.45],
  ] as const)('%s, %s flutes: %s to %s of D', (style, flutes, low, high) => {
    const web = webSpread(style, 10, 8.376, flutes);
    expect(web.low).toBeCloseTo(10 * low, 9);
    expect(web.high).toBeCloseTo(10 * high, 9);
  });

  it('form: 0.85 to 0.90 of the minor diameter', () => {
    expect(webSpread('form', 10, 8, 0)).toMatchObject({ low: 6.8, high: 7.2 });
  });

  it('the middle is what the plan reckons with', () => {
    for (const style of STYLES) {
      expect(typicalWeb(style, 10, 8.376, 4)).toBe(webSpread(style, 10, 8.376, 4).likely);
    }
  });

  it('as measured it stands alone; one as thick as the tap, or as thin as a needle, is refused', () => {
    expect(measuredWeb(4.9, 10)).toEqual({ low: 4.9, likely: 4.9, high: 4.9 });
    expect(measuredWeb(9.8, 10)).toBeNull();
    expect(measuredWeb(1.5, 10)).toBeNull();
    expect(measuredWeb(Number.NaN, 10)).toBeNull();
  });
});

describe('breaking torque', () => {
  it('1.5 · 1500 · π d³/16: a web of 4.85 mm twists off at 50 N·m', () => {
    expect(twistOff(4.85, 1.5, 1)).toBeCloseTo(50.4, 1);
    expect(twistOff(4.85, 1.5, 1)).toBeCloseTo(breakingTorque(4.85).expected, 9);
  });

  // Quick rule of the trade, N·m over D³ (mm): straight 0.050, spiral point 0.060, spiral flute 0.031; with
  // the web circle × 1.2. Estimates, right to about 30 to 40 %.
  it.each([
    ['straight-flute', 0.05],
    ['spiral-point', 0.06],
    ['spiral-flute', 0.031],
    ['form', 0.17],
  ] as const)('%s: the D³ rule lies inside the band for M6, M10 and M20', (style, perCube) => {
    for (const [major, minor] of [
      [6, 4.917],
      [10, 8.376],
      [20, 17.294],
    ] as const) {
      const band = breakingBand(webSpread(style, major, minor, 4));
      const rule = perCube * major ** 3;
      expect(rule).toBeGreaterThan(band.low);
      expect(rule).toBeLessThan(band.high);
    }
  });

  // Hand-tapping rows of the trade: half of M_break lets M3 take 0.68, M6 5.4, M10 25 N·m.
  it.each([
    [3, 1.35],
    [6, 10.8],
    [10, 50],
  ])('straight-flute M%s: trade figure %s N·m lies inside the band', (major, figure) => {
    const band = breakingBand(webSpread('straight-flute', major, 0, major <= 4 ? 3 : 4));
    expect(figure).toBeGreaterThan(band.low);
    expect(figure).toBeLessThan(band.high);
  });

  it('the band holds the expected value, and a thicker web is never weaker', () => {
    const size = fc.double({ min: 0.5, max: 40, noNaN: true });
    fc.assert(
      fc.property(size, size, fc.constantFrom(...STYLES), (a, b, style) => {
        const at = (major: number) => breakingBand(webSpread(style, major, 0.85 * major, 4));
        const [small, large] = [at(Math.min(a, b)), at(Math.max(a, b))];
        expect(small.low).toBeLessThan(small.expected);
        expect(small.expected).toBeLessThan(small.high);
        expect(large.expected).toBeGreaterThanOrEqual(small.expected);
      }),
    );
  });

  it('shares: a quarter is easy, a third sharp or half worn is the limit, worn above one breaks', () => {
    expect(judgeShare({ sharp: 0.1, worn: 0.17 })).toBe('easy');
    expect(judgeShare({ sharp: 0.28, worn: 0.46 })).toBe('good');
    expect(judgeShare({ sharp: 0.34, worn: 0.49 })).toBe('high');
    expect(judgeShare({ sharp: 0.32, worn: 0.53 })).toBe('high');
    expect(judgeShare({ sharp: 0.7, worn: 1.16 })).toBe('breaks');
  });
});

describe('danger by shape alone [derived]', () => {
  // (P/D)², printed to three decimals.
  it.each([
    ['M10', 1.5, 10, 0.023],
    ['M6', 1, 6, 0.028],
    ['M3', 0.5, 3, 0.028],
    ['M30', 3.5, 30, 0.014],
    ['#4-40', 25.4 / 40, 2.845, 0.05],
    ['#6-32', 25.4 / 32, 3.505, 0.051],
    ['#10-24', 25.4 / 24, 4.826, 0.048],
    ['1/4-28', 25.4 / 28, 6.35, 0.02],
    ['M1.6', 0.35, 1.6, 0.048],
  ])('%s', (_, pitch, major, index) => {
    expect(roundDecimals(dangerIndex(pitch, major), 3)).toBe(index);
  });

  it('#6-32 is more than twice as dangerous as M10', () => {
    expect(dangerOverM10(25.4 / 32, 3.505)).toBeCloseTo(2.28, 2);
  });

  it.each([
    [1, 6, 6],
    [1.25, 8, 12.5],
    [1.5, 10, 22.5],
    [1.75, 12, 36.8],
    [3.5, 30, 368],
  ])('spindle index of pitch %s on %s is %s', (pitch, major, index) => {
    expect(Math.abs(spindleIndex(pitch, major) / index - 1)).toBeLessThan(0.002);
  });
});

describe('clutch', () => {
  it('M6 in 6061, measured 0.6 N·m: set 0.9 to 1.2 (trade figure)', () => {
    const set = clutchSetting(0.6, 10.8);
    expect(set?.low).toBeCloseTo(0.9, 9);
    expect(set?.high).toBeCloseTo(1.2, 9);
    expect(set?.held).toBe(false);
  });

  it('never more than half of what breaks the tap, and no setting where the sharp tap is there already', () => {
    expect(clutchSetting(4, 14)).toEqual({ low: 6, high: 7, held: true });
    expect(clutchSetting(7, 14)).toBeNull();
    expect(clutchSetting(0, 14)).toBeNull();
    const torque = fc.double({ min: 0.01, max: 200, noNaN: true });
    fc.assert(
      fc.property(torque, torque, (sharp, breaks) => {
        const set = clutchSetting(sharp, breaks);
        if (!set) return;
        expect(set.high).toBeLessThanOrEqual(breaks / 2 + 1e-9);
        expect(set.low).toBeLessThanOrEqual(set.high);
        expect(set.low).toBeGreaterThanOrEqual(Math.min(1.5 * sharp, breaks / 2) - 1e-9);
      }),
    );
  });
});

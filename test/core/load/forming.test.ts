/** Form taps: the section pushed aside, by hand and by slices; how the hole moves it. Derived from ISO 68-1. */
import { describe, expect, it } from 'vitest';
import { fluidFactor } from '../../../core/load/fluid';
import {
  formedHeight,
  formedMoment,
  formedShare,
  formHoleFactor,
} from '../../../core/load/forming';
import { findMaterial } from '../../../core/material/table';

const m6 = { major: 6, pitch: 1, hole: 5.55 };

describe('section pushed aside, M6×1 in a hole of 5.55', () => {
  it('height 0.225; moment as the trapezoid’s area × its centroid', () => {
    const height = 0.225;
    expect(formedHeight(m6)).toBeCloseTo(height, 9);
    const tan = Math.tan(Math.PI / 6);
    const area = height / 8 + tan * height ** 2;
    const centroid = 2.775 + (height ** 2 / 16 + (2 * tan * height ** 3) / 3) / area;
    expect(formedMoment(m6, 0, height)).toBeCloseTo(area * centroid, 9);
  });

  it('a smaller hole costs torque: 0.05 mm less on M6 is about a sixth more to push aside', () => {
    const factor = formHoleFactor({ ...m6, hole: 5.5 }, 5.55);
    // Area by hand: 0.0673 against 0.0574 mm².
    expect(factor).toBeCloseTo(0.0673 / 0.0574, 2);
    expect(formHoleFactor(m6, 5.55)).toBeCloseTo(1, 9);
    expect(formHoleFactor({ ...m6, hole: 5.6 }, 5.55)).toBeLessThan(1);
  });

  it('thin work meets the heavy end of the lead: more than half of it in half its length', () => {
    expect(formedShare(m6, 2.5, 1.25)).toBeGreaterThan(0.5);
    expect(formedShare(m6, 2.5, 3)).toBe(1);
    expect(formedShare(m6, 2.5, 0)).toBe(0);
  });
});

describe('at the ends', () => {
  it('a hole as large as the thread leaves nothing to push, and changes nothing', () => {
    expect(formHoleFactor({ ...m6, hole: 5.5 }, 6)).toBe(1);
    expect(formedShare({ ...m6, hole: 6 }, 2.5, 1)).toBe(1);
    expect(formedHeight({ ...m6, hole: 6.1 })).toBe(0);
  });

  // M10×1.5: the lead of 2.5 threads is 3.75 mm long.
  it('the lead is its threads times the pitch', () => {
    const m10 = { major: 10, pitch: 1.5, hole: 9.35 };
    expect(formedShare(m10, 2.5, 3.75)).toBe(1);
    expect(formedShare(m10, 2.5, 3.7)).toBeLessThan(1);
  });
});

describe('fluid', () => {
  const factor = (id: string) => fluidFactor('dry', findMaterial(id)!);

  it('dry in aluminium 1.6 times, measured there; elsewhere borrowed; iron and brass not at all', () => {
    expect(factor('al-wrought')).toMatchObject({ factor: 1.6, measured: true });
    expect(factor('steel-low')).toMatchObject({ factor: 1.6, measured: false });
    expect(factor('iron-grey')).toMatchObject({ factor: 1, source: 'common-practice' });
    expect(factor('brass-free').factor).toBe(1);
    expect(fluidFactor('oil', findMaterial('al-wrought')!).factor).toBe(1);
  });

  it('what is common practice is never called measured; oil is what the model is measured by', () => {
    const common = { factor: 1, measured: false, source: 'common-practice' };
    for (const id of ['iron-grey', 'iron-ductile', 'plastic', 'brass-free']) {
      expect(factor(id)).toEqual(common);
    }
    expect(factor('copper')).toEqual({ factor: 1.6, measured: false, source: 'measured-m3' });
    expect(factor('al-cast')).toEqual({ factor: 1.6, measured: true, source: 'measured-m3' });
    const oil = { factor: 1, measured: true, source: 'tap-chip-model' };
    expect(fluidFactor('oil', findMaterial('iron-grey')!)).toEqual(oil);
  });
});

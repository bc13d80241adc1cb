import { describe, expect, it } from 'vitest';
import { formTapHole, standardThreads } from '../../../core';
import { balancedFormHole } from '../../../core/drill/form-hole';
import { formPercent } from '../../../core/drill/percent';

const metric = (major: number, pitch: number) =>
  formTapHole({ major, pitch }, { system: 'metric' });

describe('the hole before a form tap', () => {
  it('M6: 5.55 mm, about 66 % on the form-tap scale (common practice)', () => {
    const { drill, usual } = metric(6, 1);
    expect(drill?.diameter).toBe(5.55);
    expect(drill?.percent).toBeCloseTo(66, 0);
    expect(usual).toBeCloseTo(5.558, 3);
  });

  it('M6: 0.05 mm either way is 7 %', () => {
    expect(metric(6, 1).percentPerMm * 0.05).toBeCloseTo(7.35, 2);
  });

  it('M4: 0.02 mm either way is 4 %', () => {
    const { percentPerMm, usual } = metric(4, 0.7);
    expect(percentPerMm * 0.02).toBeCloseTo(4.2, 1);
    const lost = formPercent(4, 0.7, usual) - formPercent(4, 0.7, usual + 0.02);
    expect(lost).toBeCloseTo(4.2, 1);
  });

  it('a drill that cuts as drills usually do takes the thread below 60 %: at risk, not inside', () => {
    const { drill } = metric(6, 1);
    expect(drill?.verdict).toBe('risk');
    expect(drill!.likelyPercent).toBeLessThan(60);
    expect(formTapHole({ major: 6, pitch: 1 }, { oversizeShare: 0 }).drill?.verdict).toBe('inside');
  });

  it('the balance of volume asks for a smaller hole: D − 0.53 P against D − 0.44 P at 65 %', () => {
    const { balance, usual } = metric(10, 1.5);
    expect((10 - balance) / 1.5).toBeCloseTo(0.53, 2);
    expect((10 - usual) / 1.5).toBeCloseTo(0.44, 2);
  });

  it('the balance against the areas summed slice by slice', () => {
    const [major, pitch, percent] = [8, 1.25, 70];
    const height = (percent / 200) * 1.29903811 * pitch;
    let metal = 0;
    const slices = 20_000;
    for (let index = 0; index < slices; index += 1) {
      const depth = ((index + 0.5) / slices) * height;
      metal += (pitch - (pitch / 8 + 2 * depth * Math.tan(Math.PI / 6))) * (height / slices);
    }
    expect(balancedFormHole(major, pitch, percent)).toBeCloseTo(major - (2 * metal) / pitch, 6);
  });

  it('keeps to the series in stock', () => {
    const { drills } = formTapHole({ major: 6.35, pitch: 1.27 }, { series: ['number', 'letter'] });
    expect(drills.length).toBeGreaterThan(0);
    expect(drills.every(({ series }) => series === 'number' || series === 'letter')).toBe(true);
  });

  it('over the whole series: window in order, usual inside it, drills sorted', () => {
    for (const { diameter, pitch } of standardThreads()) {
      const { window, usual, drills } = metric(diameter, pitch);
      expect(window.min).toBeLessThan(usual);
      expect(usual).toBeLessThan(window.max);
      const sizes = drills.map((drill) => drill.diameter);
      expect([...sizes].sort((a, b) => a - b)).toEqual(sizes);
      for (const drill of drills.filter(({ verdict }) => verdict !== 'outside')) {
        expect(drill.percent).toBeGreaterThanOrEqual(60 - 1e-6);
        expect(drill.percent).toBeLessThanOrEqual(75 + 1e-6);
      }
    }
  });
});

import { describe, expect, it } from 'vitest';
import { formTapHole, standardThreads } from '../../../core';
import type { DrillSeries } from '../../../core/drill/drill';
import { balancedFormHole, percentLost, type FormHoleOptions } from '../../../core/drill/form-hole';
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

  const names = (major: number, pitch: number, series: DrillSeries[]) =>
    formTapHole({ major, pitch }, { series }).drills.map(({ name }) => name);

  // The window and half of it to either side, by hand from D - 0.0068 % P; each drill once.
  it.each<[string, number, number, DrillSeries[], string[]]>([
    ['M6: 5.44 to 5.64 in steps of 0.05', 6, 1, ['metric'], ['5.45', '5.5', '5.55', '5.6']],
    ['9.94 to 10.14', 10.5, 1, ['metric'], ['9.95', '10.0', '10.05', '10.1']],
    [
      'below 1 mm in hundredths: M1',
      1,
      0.25,
      ['metric'],
      ['0.86', '0.87', '0.88', '0.89', '0.9', '0.91'],
    ],
    ['no metric steps where metric is not in stock', 6, 1, ['fraction'], ['7/32']],
  ])('%s', (_, major, pitch, series, expected) => {
    expect(names(major, pitch, series)).toEqual(expected);
  });

  it.each<[string, [number, number], FormHoleOptions, string | undefined]>([
    // 7/32 (5.556) lies nearer to 5.558 than 5.55 does.
    ['the nearest of all, unless a system is wished', [6, 1], {}, '7/32'],
    ['the nearest of all, metric', [4, 0.7], {}, '3.7'],
    ['of the wished system: metric', [6, 1], { system: 'metric' }, '5.55'],
    ['of the wished system: inch', [4, 0.7], { system: 'inch' }, '#27'],
    [
      'of the other where the wished has none',
      [6, 1],
      { system: 'inch', series: ['metric'] },
      '5.55',
    ],
    // 18.725 to 18.98, usual 18.895: two usable drills are larger.
    ['not merely the largest', [20, 2.5], { series: ['metric'] }, '18.9'],
    ['of two equally near the smaller: 5.575', [6.017, 1], { series: ['metric'] }, '5.55'],
    // 19/64 (7.541) is near enough to be seen, and past 60 % (7.49).
    ['none where all lie outside', [8, 1.25], { series: ['fraction'] }, undefined],
  ])('picks %s', (_, [major, pitch], options, name) => {
    const found = formTapHole({ major, pitch }, options);
    expect(found.drill?.name).toBe(name);
    expect(found.drills.length).toBeGreaterThan(0);
  });

  it('what a step larger costs: M6 by 0.05 mm 7 %, nothing by nothing', () => {
    expect(percentLost(metric(6, 1), 0.05)).toBeCloseTo(7.35, 2);
    expect(percentLost(metric(6, 1), 0)).toBe(0);
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

/** The lesson on the tap drill: every number it draws or says is the core's, and the failures it tells of are real. */

import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { holeForPercent, percentThread } from '../../core/drill/percent';
import { diameterLessShareOfPitch } from '../../core/drill/rules';
import { drillFacts } from '../../components/lesson/tap-drill-and-percent/facts';
import { drawerBar, type DrawerCase } from '../../components/lesson/tap-drill-and-percent/drawer';
import { HoleExplorer } from '../../components/lesson/tap-drill-and-percent/HoleExplorer';
import {
  BASE_THREADS,
  DRILL_JOBS,
  TRY_THREADS,
} from '../../components/lesson/tap-drill-and-percent/jobs';
import { tried } from '../../components/lesson/tap-drill-and-percent/percent';
import { holeCase, study } from '../../components/lesson/tap-drill-and-percent/read';
import { waysOf } from '../../components/lesson/tap-drill-and-percent/ways';

afterEach(cleanup);

describe('percent of thread', () => {
  // Geometry of the 60° profile: one pitch is 1/(1.5 cos 30°) of 3H/4 on both sides, and 1/(1.25 cos 30°) of 5H/8.
  test.each(BASE_THREADS)('diameter less pitch is never 75 %%: %s', (text) => {
    const { major, pitch } = holeCase(text);
    const { shop, iso } = percentThread(major, pitch, major - pitch);
    expect(shop).toBeCloseTo(100 / (1.5 * Math.cos(Math.PI / 6)), 3);
    expect(iso).toBeCloseTo(100 / (1.25 * Math.cos(Math.PI / 6)), 3);
    expect(iso / shop).toBeCloseTo(1.2, 6);
  });

  // Worked by hand: 10 − 0.75 × 1.299 × 1.5 = 8.539; 10 − 0.75 × 1.5 = 8.875, which leaves 57.7 %. Derived.
  test('four ways to 75 %', () => {
    const ways = waysOf(holeCase(DRILL_JOBS.plate.thread));
    const of = (name: string) => ways.find(({ way }) => way === name)!;
    expect(of('percent').hole).toBeCloseTo(8.539, 3);
    expect(of('percent').verdict).toBe('inside');
    expect(of('pitch').verdict).toBe('inside');
    expect(of('share').percent.shop).toBeCloseTo(57.7, 1);
    expect(of('share').verdict).toBe('large');
    expect(of('ratio').verdict).toBe('small');
  });

  test('a hole and its percentage turn into each other, on both bases', () => {
    for (const base of ['shop', 'iso'] as const)
      for (const percent of [55, 70, 83.3]) {
        const hole = holeForPercent(12, 1.75, percent, base);
        expect(percentThread(12, 1.75, hole)[base]).toBeCloseTo(percent, 9);
      }
    expect(diameterLessShareOfPitch(10, 1.5, 75)).toBeCloseTo(8.875, 9);
  });

  // Minor-diameter limits as printed: M10x1.5-6H 8.376 to 8.676 (ISO 965); 1/2-13 UNC .417 to .434 (2B), to .4284 (3B).
  test('the chart’s class is the standard’s', () => {
    const [plate, , twoB, threeB] = TRY_THREADS.map(holeCase);
    expect([plate!.min, plate!.max]).toEqual([8.376, 8.676]);
    expect(twoB!.max / 25.4).toBeCloseTo(0.434, 4);
    expect(threeB!.max / 25.4).toBeCloseTo(0.4284, 4);
    expect(tried(plate!, 8.676, null, 'mm').passes).toBe(true);
    expect(tried(plate!, 8.69, null, 'mm').sentence).toMatch(/too large by 0\.014 mm/);
    expect(tried(plate!, 8.3, null, 'mm').sentence).toMatch(/too small by 0\.076 mm/);
    expect(tried(twoB!, 10.95, null, 'in').passes).toBe(true);
    expect(tried(threeB!, 10.95, null, 'in').passes).toBe(false);
  });

  test('a guess opens the control, and is answered on both bases', () => {
    const threads = [holeCase(DRILL_JOBS.plate.thread)];
    render(<HoleExplorer name="h" threads={threads} question="How much?" />);
    expect(screen.queryByLabelText(/^Hole/)).toBeNull();
    const field = screen.getByLabelText(/your guess/);
    fireEvent.input(field, { target: { value: '75 %' } });
    fireEvent.submit(field.closest('form')!);
    expect(screen.getByRole('status').textContent).toMatch(
      /You guessed 75 %. It is 77 % on the US shop base and 92 % on the ISO base/,
    );
    const hole = screen.getByLabelText(/^Hole/, { selector: 'input' });
    fireEvent.input(hole, { target: { value: '8,83' } });
    expect(screen.getByRole('status').textContent).toMatch(/every part fails/);
    fireEvent.input(hole, { target: { value: '80' } });
    expect(screen.getByText(/Enter a number between/)).toBeTruthy();
  });
});

describe('the drawer', () => {
  const drawer: DrawerCase = {
    major: 10,
    pitch: 1.5,
    classes: [{ name: '6H', min: 8.376, max: 8.676 }],
    drills: [8.4, 8.5, 8.6, 8.7].map((diameter) => ({
      name: diameter.toFixed(1),
      series: 'metric' as const,
      diameter,
    })),
    listed: '8.5',
    oversize: 0.1,
  };

  test('drills leave the class one after another as they cut larger', () => {
    const inside = (oversize: number) =>
      drawerBar(drawer, { class: '6H', oversize }, 'mm').drills.filter(
        ({ verdict }) => verdict === 'inside',
      ).length;
    expect([0, 0.1, 0.2, 0.25].map(inside)).toEqual([3, 2, 1, 1]);
    const none = drawerBar(drawer, { class: '6H', oversize: 0.3 }, 'mm');
    expect(none.sentence).toMatch(/no drill here surely meets/);
  });
});

describe('what the lesson says', () => {
  // 3/4-10: chart drill 21/32 = 0.6563; largest minor diameter of 3B 0.6545, of 2B 0.663. ASME B1.1, as printed in tables.
  test('the bonnet’s list drill is a trap in 3B and right in 2B', () => {
    const listed = study(DRILL_JOBS.bonnet.thread).drills.find((drill) => drill.listed)!;
    expect(listed.name).toBe('21/32');
    expect(listed.classes).toEqual([
      { class: '3B', verdict: 'outside' },
      { class: '2B', verdict: 'inside' },
    ]);
    expect(drillFacts.bonnet.listedSize).toMatch(/^0\.6563/);
    expect(drillFacts.bonnet.max).toMatch(/^0\.6545/);
  });

  // 1/2-13: 7/16 = 0.4375 against 0.434. M10: screw shear area 17.07 at 8.5 mm, 17 % less at 60 %. Derived.
  test('plenty is not in the class', () => {
    expect(drillFacts.flange.trap).toBe('7/16\u00a0in');
    expect(drillFacts.flange.percent).toMatch(/^6[23]/);
    expect(drillFacts.plate.strength).toMatch(/^1[67]\s%$/);
    expect(drillFacts.plate).toMatchObject({ shop: '77\u00a0%', iso: '92\u00a0%' });
  });

  // 12 − 0.70 × 1.299 × 1.75 = 10.409. Derived.
  test('the reader’s hole', () => {
    expect(drillFacts.cover.hole).toBeCloseTo(10.409, 3);
    const { share, iso, pitch, ratio, hole } = drillFacts.cover;
    const values = [hole, share, iso, pitch, ratio];
    for (const [index, value] of values.entries())
      for (const other of values.slice(index + 1))
        expect(Math.abs(value - other)).toBeGreaterThan(0.06);
  });
});

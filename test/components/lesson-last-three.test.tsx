/** The lessons on form taps, on depth and on special threads: what they say is the core's, or worked by hand. */

import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { neededEngagement, readThread, threadLimits } from '../../core';
import { findMaterial } from '../../core/material/table';
import { formFacts, holePicks, verdictOf } from '../../components/lesson/form-taps/facts';
import { deepFacts, metalBars, metalPicks } from '../../components/lesson/how-deep-is-enough/facts';
import { CHART_METALS } from '../../components/lesson/how-deep-is-enough/jobs';
import { PickOne } from '../../components/lesson/PickOne';
import {
  insertRows,
  specialFacts,
  specialPicks,
} from '../../components/lesson/special-threads/facts';

afterEach(cleanup);

describe('form taps', () => {
  // Handbook scale, from memory: hole = D − 0.0068 × % × P, so M6 at 65 % is 6 − 0.442 = 5.558 mm.
  test('the hole is the handbook’s, and each step costs what its formula says', () => {
    expect(formFacts.cover.hole).toMatch(/^5\.558 mm/);
    // 0.05 / 0.0068 = 7.35 % for a pitch of 1 mm. Derived.
    expect(formFacts.lost).toBe('7 %');
    expect(formFacts.cover.from).toBe('5.490 mm');
  });

  // 0.25 − 0.0068 × 65 × 0.05 = 0.2279 in; #1 is 0.2280 in. Handbook scale and drill table, from memory.
  test('the inch bracket has a drill of an inch drawer, as near as any', () => {
    expect(formFacts.bracket.hole).toMatch(/^0\.2279 in/);
    expect(formFacts.bracket.inchDrill).toBe('#1');
    expect(formFacts.bracket.less).toBeCloseTo(5.08, 9);
  });

  test('every hole to try is told, and both ends of the window are met', () => {
    const verdicts = holePicks.map(({ said }) => /too little|inside|too full/.exec(said.mm)?.[0]);
    expect(verdicts).toContain('too little');
    expect(verdicts).toContain('inside');
    expect(verdicts).toContain('too full');
    expect([59.9, 60, 75, 75.1].map(verdictOf)).toEqual(['thin', 'inside', 'inside', 'full']);
  });

  // Common practice: two to three times the torque of a cutting tap, in a tap that is far stronger.
  test('takes two to three times the torque and is the stronger tap', () => {
    expect(Number(formFacts.cover.times)).toBeGreaterThanOrEqual(2);
    expect(Number(formFacts.cover.times)).toBeLessThanOrEqual(3);
    expect(parseFloat(formFacts.cover.formShare)).toBeLessThan(
      parseFloat(formFacts.cover.cutShare),
    );
    expect(formFacts.cover.depth).toBe(formFacts.cover.cutDepth);
  });
});

describe('how deep is enough', () => {
  // M10 8.8 in 6061: 46.4 kN over 21.5 mm²/mm × 207 N/mm² = 10.4 mm (FED-STD-H28 formula, worked by hand).
  test('the bracket matches at the length worked by hand', () => {
    expect(deepFacts.bracket.matching).toMatch(/^10\.4\d mm/);
    expect(deepFacts.bracket.ask).toMatch(/^13\.0\d mm to 15\.6\d mm/);
  });

  test('what is drawn past the margin is told, and what two diameters come to', () => {
    // 40 − 1.5 × 10.44 = 24.35 mm; 20 / 10.44 = 1.9. Derived.
    expect(deepFacts.bracket.past).toMatch(/^24\.3\d mm/);
    expect(deepFacts.bracket.ruleTimes).toBe('1.9');
  });

  test('the bars are the core’s own lengths in diameters', () => {
    const thread = readThread('M10x1.5-6H');
    if (!thread.ok) throw new Error('M10');
    const limits = threadLimits(thread.value);
    if (!limits.ok) throw new Error('M10');
    metalBars().rows.forEach((row, index) => {
      const material = findMaterial(CHART_METALS[index]!)!;
      const needed = neededEngagement({
        thread: thread.value,
        limits: limits.value,
        screw: '8.8',
        material,
      });
      if (!needed.ok) throw new Error(material.id);
      expect(row.low).toBeCloseTo(needed.value.matching / 10, 9);
      expect(row.mid).toBeCloseTo(needed.value.inDiameters.specify.min, 9);
      expect(row.high).toBeCloseTo(needed.value.inDiameters.specify.max, 9);
    });
    const lows = metalBars().rows.map(({ low }) => low);
    expect([...lows].sort((a, b) => a - b)).toEqual(lows);
  });

  test('the worked question is the matching length and a quarter', () => {
    expect(deepFacts.soft.least).toBeCloseTo(deepFacts.soft.matching * 1.25, 9);
    expect(deepFacts.soft.most).toBeCloseTo(deepFacts.soft.matching * 1.5, 9);
  });

  test('choosing a metal says its own length', () => {
    render(<PickOne name="metal" label="The tapped metal" picks={metalPicks} />);
    fireEvent.click(screen.getByRole('radio', { name: 'plastic' }));
    expect(screen.getByRole('status').textContent).toMatch(/In plastic .* 43\.2 mm/);
  });
});

describe('special threads', () => {
  // Insert holes from memory of the standard: tapped minor 8.27–8.48 (M8), 6.22–6.41 (M6), drills 8.4 and 6.3.
  test('insert holes begin where the trade’s do, a fifth of a pitch over the screw', () => {
    const [six, eight] = insertRows;
    expect(six?.insert).toMatch(/^6\.217–/);
    expect(eight?.insert).toMatch(/^8\.271–/);
    expect(six?.drill).toBe('6.3 mm');
    expect(eight?.drill).toBe('8.4 mm');
    // Basic major of the insert hole: D + 1.299 P, rounded to shop depth. Derived.
    expect(eight?.major).toMatch(/^9\.62 mm/);
  });

  test('each callout says what it changes', () => {
    const said = Object.fromEntries(specialPicks.map(({ label, said: { mm } }) => [label, mm]));
    expect(said['M12x1.75-6H-LH']).toMatch(/left-hand gauge/i);
    expect(said['G1/4']).toMatch(/11\.445 mm to 11\.890 mm/);
    expect(said['1/4-18 NPT']).toMatch(/within 1 turn/);
    expect(said['EG M8x1.25-6H']).toMatch(/own tap and its own gauge/);
    // 6G lies above 6H by the fundamental deviation of its pitch, 0.028 mm (ISO 965-1).
    expect(said['M8x1.25-6G']).toMatch(/7\.216 mm to 7\.376 mm/);
  });

  test('a closer hole for an insert is told', () => {
    // Grade 5 of pitch 1.25 is 0.212 mm (ISO 965-1): 8.271 + 0.212.
    expect(specialFacts.cover.closer).toBe('8.483 mm');
  });

  test('plating counts four times', () => {
    expect(specialFacts.plating.shrink).toBeCloseTo(0.032, 9);
    expect(specialFacts.link.tap).toMatch(/^left-hand spiral point/);
  });
});

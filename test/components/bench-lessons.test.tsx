/** Every number that the lessons on gauging, broken taps and hand tapping say is the core's. */

import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { facts as gaugeFacts } from '../../components/lesson/gauging/facts';
import { TurnsExplorer, turnsSaid } from '../../components/lesson/gauging/TurnsExplorer';
import { facts as handFacts, picks as armPicks } from '../../components/lesson/hand-tapping/facts';
import { PickOne } from '../../components/lesson/PickOne';
import {
  facts as breakFacts,
  picks as wearPicks,
  tried,
} from '../../components/lesson/why-taps-break/facts';

afterEach(cleanup);

describe('gauging', () => {
  test('two rules, and a half turn between them', () => {
    expect(gaugeFacts).toMatchObject({ b12: '3', iso: '2', between: '2.5' });
    expect(turnsSaid(2).differ).toBe(false);
    expect(turnsSaid(2.5).differ).toBe(true);
    expect(turnsSaid(3.5).differ).toBe(false);
  });

  // 9.5 turns less one and less half a turn, times 1.25. Derived.
  test('depth by turns', () => {
    expect(gaugeFacts.housing.least).toBeCloseTo(10.625, 9);
    expect(gaugeFacts.housing.most).toBeCloseTo(11.25, 9);
    expect(gaugeFacts.housing.bare).toBeCloseTo(11.875, 9);
  });

  test('the control says when the rules disagree', () => {
    render(<TurnsExplorer />);
    expect(screen.queryByText(/rules disagree/)).toBeNull();
    const more = screen.getByRole('button', { name: /^More/ });
    for (let press = 0; press < 3; press++) fireEvent.click(more);
    expect(screen.getByText(/rules disagree/)).toBeTruthy();
  });
});

describe('why taps break', () => {
  test('the nose would be 3 mm below the floor', () => {
    // 15 + 3 × 1.5 − 16.5. Derived.
    expect(breakFacts.cover.beyond).toBeCloseTo(3, 9);
    expect(breakFacts.cover).toMatchObject({ room: '1', wants: '4' });
  });

  test('the coarse thread on the small tap is the nearest to breaking', () => {
    const most = [...tried].sort((a, b) => b.worn - a.worn)[0];
    expect(most?.designation).toMatch(/^#6-32/);
    for (const { sharp, worn } of tried) expect(worn).toBeGreaterThan(sharp);
  });

  test('a short chamfer loads a tooth more than a long one', () => {
    expect(Number(breakFacts.flange.times)).toBeGreaterThan(1.3);
  });
});

describe('tapping by hand', () => {
  test('the arm of the M6: 54 mm, half the strength over two hands of 50 N', () => {
    // 10.8 N·m: shop figure, common practice; within its last digit.
    expect(Math.abs(handFacts.m6.armMm - 54)).toBeLessThan(2);
    expect(handFacts.m6.once * 2).toBeCloseTo(handFacts.m6.armMm, 9);
  });

  test('the bracket needs the whole set of one diameter', () => {
    expect(handFacts.bracket).toMatchObject({ taps: '3', taper: '8.0 mm', second: '10.5 mm' });
  });
});

describe('one choice', () => {
  test.each([
    ['wear', wearPicks],
    ['arm', armPicks],
  ])('%s: every choice has its own sentence', (name, picks) => {
    render(<PickOne name={name} label="Thread" picks={picks} />);
    for (const { label, said } of picks) {
      fireEvent.click(screen.getByLabelText(label));
      expect(screen.getByRole('status').textContent).toContain(said.mm);
      expect(said.mm).not.toMatch(/[{}]|NaN/);
    }
    expect(new Set(picks.map(({ said }) => said.mm)).size).toBe(picks.length);
  });
});

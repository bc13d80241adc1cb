/** What the shop has is preferred, never at the price of one more tool or of a hole that does not work. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { planDrawing } from '../../../core';
import { readDrawer } from '../../../core/drawing/drawer';

const LINES = ['4X M8-6H ↧16', '2X M8-6H ↧12', 'M6-6H THRU'];
const SHOP = { material: 'al-wrought', thickness: 10 } as const;

describe('tools of the drawer', () => {
  const plain = planDrawing(LINES, SHOP);

  test('without a drawer nothing is said of one', () => {
    for (const each of [...plain.taps, ...plain.drills]) expect(each).not.toHaveProperty('owned');
  });

  test('a tap that works and is there takes the place of the best one that is not', () => {
    const taps = [{ thread: 'M8', style: 'spiral-flute', chamfer: 'bottoming' }];
    const ours = planDrawing(LINES, { ...SHOP, drawer: { taps, drills: [] } });
    const eight = ours.taps.filter(({ holes }) => holes.includes(0));
    expect(eight).toHaveLength(1);
    expect(eight[0]).toMatchObject({ owned: true, holes: [0, 1] });
    expect(eight[0]?.choice.chamfer.class).toBe('bottoming');
    expect(ours.taps).toHaveLength(plain.taps.length);
  });

  test('a tap that would not do is left where it is', () => {
    const taps = [{ thread: 'M8', style: 'spiral-point', chamfer: 'plug' }];
    const ours = planDrawing(LINES, { ...SHOP, drawer: { taps, drills: [] } });
    expect(ours.taps.map(({ choice }) => choice.style)).toEqual(
      plain.taps.map(({ choice }) => choice.style),
    );
    expect(ours.taps.every(({ owned }) => owned === false)).toBe(true);
  });

  test('a drill of the drawer is taken where it is surely inside', () => {
    const ours = planDrawing(LINES, { ...SHOP, drawer: { taps: [], drills: [{ name: '6.75' }] } });
    const eight = ours.drills.find(({ holes }) => holes.includes(0));
    expect(eight).toMatchObject({ owned: true });
    expect(eight?.drill).toMatchObject({ name: '6.75', verdict: 'inside' });
  });
});

test('whatever was kept as a drawer, a part is planned and nothing is lost', () => {
  fc.assert(
    fc.property(fc.anything(), (drawer) => {
      expect(readDrawer(drawer).taps).toBeInstanceOf(Set);
      expect(planDrawing(LINES, { ...SHOP, drawer }).holes).toHaveLength(LINES.length);
    }),
    { numRuns: 60 },
  );
});

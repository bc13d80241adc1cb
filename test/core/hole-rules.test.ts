import { expect, test } from 'vitest';
import { holeForPercent, percentThread } from '../../core/drill/percent';
import { countersinkTakes, quarterRuleDepth, roomInPitches } from '../../core/hole/rules';

// Geometry, derived by hand: pitches of room that a quarter of the thread depth leaves.
test.each([
  ['M6x1, 12 deep', 12, 1, 3],
  ['M16x2, 16 deep', 16, 2, 2],
  ['M20x2.5, 20 deep', 20, 2.5, 2],
  ['M20x2.5, 40 deep', 40, 2.5, 4],
])('%s', (_, fullThread, pitch, pitches) => {
  const room = roomInPitches(quarterRuleDepth(fullThread), fullThread, pitch);
  expect(room).toBeCloseTo(pitches, 12);
});

// Derived by hand: a 90° cone is half as deep as its diameters differ.
test('a countersink takes half of what its diameter is over the hole', () => {
  expect(countersinkTakes(11, 8.376)).toBeCloseTo(1.312, 9);
  expect(countersinkTakes(8, 8.376)).toBe(0);
});

// M10x1.5 at 75 % on the shop base: 10 - 0.75 x 1.299 x 1.5, by hand.
test('the hole for a percentage gives that percentage back, on either base', () => {
  expect(holeForPercent(10, 1.5, 75)).toBeCloseTo(8.5386, 4);
  for (const base of ['shop', 'iso'] as const) {
    expect(percentThread(10, 1.5, holeForPercent(10, 1.5, 68, base))[base]).toBeCloseTo(68, 9);
  }
});

import { expect, test } from 'vitest';
import { quarterRuleDepth, roomInPitches } from '../../core/hole/rules';

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

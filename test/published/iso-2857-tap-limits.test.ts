/**
 * Grade 5 of the internal pitch diameter against printed tap limits: a class 2 tap of ISO 2857 (DIN EN 22857)
 * lies from 0.3 to 0.5 of that tolerance above basic. Limits from a tap maker's catalogue, micrometres.
 */

import { expect, test } from 'vitest';
import { limitsOf } from '../core/thread/read-or-throw';

test.each([
  ['M3', 24, 40],
  ['M6', 35, 59],
  ['M8', 38, 63],
  ['M10', 42, 70],
  ['M12', 48, 80],
  ['M16', 51, 85],
])('%s: class 2 tap limits of ISO 2857 in a catalogue, +%d to +%d', (size, lower, upper) => {
  const { pitch } = limitsOf(`${size}-5H`);
  const tolerance = Math.round((pitch.max - pitch.min) * 1000);
  expect(Math.round(0.3 * tolerance + 1e-9)).toBe(lower);
  expect(Math.round(0.5 * tolerance + 1e-9)).toBe(upper);
});

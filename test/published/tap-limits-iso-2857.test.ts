/**
 * ISO 2857 class 2 ("ISO 2", for 6H): pitch diameters of taps to the micrometre.
 * M1.6 to M18 as a tool catalogue prints them beside the 6H limits; the deviations in brackets also stand in a
 * second catalogue's table. The shares 0.1, 0.3, 0.5, 0.7 come from the diagram of DIN EN 22857.
 */
import { describe, expect, it } from 'vitest';
import { readThread, tapLimit } from '../../core';

function iso(text: string, number: number) {
  const thread = readThread(text);
  if (!thread.ok) throw new Error(text);
  const limit = tapLimit(thread.value, 'ISO', number);
  if (!limit.ok) throw new Error(text);
  return limit.value.pitch;
}

// prettier-ignore
const CATALOGUE: [string, number, number][] = [
  ['M1.6', 1.393, 1.407], ['M1.8', 1.593, 1.607], ['M2', 1.761, 1.776], ['M2.2', 1.931, 1.946],
  ['M2.5', 2.231, 2.246], ['M3', 2.699, 2.715], ['M3.5', 3.137, 3.155], ['M4', 3.574, 3.593],
  ['M4.5', 4.042, 4.061], ['M5', 4.51, 4.53], ['M6', 5.385, 5.409], ['M7', 6.385, 6.409],
  ['M8', 7.226, 7.251], ['M9', 8.226, 8.251], ['M10', 9.068, 9.096], ['M11', 10.068, 10.096],
  ['M12', 10.911, 10.943], ['M14', 12.752, 12.786], ['M16', 14.752, 14.786], ['M18', 16.43, 16.466],
];

describe('class 2 as printed', () => {
  it.each(CATALOGUE)('%s: %d to %d mm', (thread, min, max) => {
    expect(iso(thread, 2)).toEqual({ min, max });
  });
});

// [thread, lower and upper deviation above the basic pitch diameter, micrometres].
const DEVIATIONS: [string, number, number, number][] = [
  ['M3', 2.675, 24, 40],
  ['M5', 4.48, 30, 50],
  ['M6', 5.35, 35, 59],
  ['M6x0.75', 5.513, 32, 53],
  ['M8', 7.188, 38, 63],
  ['M8x1', 7.35, 35, 59],
  ['M10', 9.026, 42, 70],
  ['M10x1.25', 9.188, 38, 63],
  ['M12', 10.863, 48, 80],
  ['M16', 14.701, 51, 85],
];

describe('class 2 as deviations', () => {
  it.each(DEVIATIONS)('%s: +%d/+%d above %d', (thread, basic, lower, upper) => {
    const { min, max } = iso(thread, 2);
    expect(Math.round((min - basic) * 1000)).toBe(lower);
    expect(Math.round((max - basic) * 1000)).toBe(upper);
  });
});

it('the three classes meet end to end, so a tap never belongs to two', () => {
  for (const [thread] of CATALOGUE) {
    expect(iso(thread, 1).max).toBeCloseTo(iso(thread, 2).min, 9);
    expect(iso(thread, 2).max).toBeCloseTo(iso(thread, 3).min, 9);
  }
});

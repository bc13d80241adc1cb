/**
 * ISO 2857 class 2 ("ISO 2", for 6H): pitch diameters of taps to the micrometre.
 * M1.6 to M18 as a tool catalogue prints them beside the 6H limits; the deviations in brackets also stand in a
 * second catalogue's table. The shares 0.1, 0.3, 0.5, 0.7 come from the diagram of DIN EN 22857.
 */
import { describe, expect, it } from 'vitest';
import { readThread, tapLimit } from '../../core';
import { CATALOGUE, DEVIATIONS } from './tables/taps';

function iso(text: string, number: number) {
  const thread = readThread(text);
  if (!thread.ok) throw new Error(text);
  const limit = tapLimit(thread.value, 'ISO', number);
  if (!limit.ok) throw new Error(text);
  return limit.value.pitch;
}

describe('class 2 as printed', () => {
  it.each(CATALOGUE)('%s: %d to %d mm', (thread, min, max) => {
    expect(iso(thread, 2)).toEqual({ min, max });
  });
});

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

/**
 * Tap limits in Machinery's Handbook, 31st edition: the worked examples of page 972, rows of tables 20 and 21
 * (ground thread, plain), table 25 (page 1006, wire inserts, inch) and table 26a (page 1007, wire inserts, metric).
 */
import { describe, expect, it } from 'vitest';
import { readThread, tapLimit, type TapLimitSystem } from '../../core';
import { PLAIN, LARGE, INSERTS, METRIC } from './tables/taps';

function limit(text: string, system: TapLimitSystem, number: number) {
  const thread = readThread(text);
  if (!thread.ok) throw new Error(text);
  const found = tapLimit(thread.value, system, number);
  if (!found.ok) throw new Error(`${text} ${system}${number}`);
  return found.value.pitch;
}

describe('page 972', () => {
  it('3/8-16 H1: .3344 to .3349', () => {
    expect(limit('3/8-16 UNC', 'H', 1)).toEqual({ min: 0.3344, max: 0.3349 });
  });
  it('3/8-16 L2: .3334 to .3339', () => {
    expect(limit('3/8-16 UNC', 'L', 2)).toEqual({ min: 0.3334, max: 0.3339 });
  });
});

describe('tables 20 and 21', () => {
  it.each(PLAIN)('%s H%i: %d to %d', (thread, number, min, max) => {
    expect(limit(thread, 'H', number)).toEqual({ min, max });
  });
  it.each(LARGE)('%s H4: %d to %d', (thread, min, max) => {
    expect(limit(thread, 'H', 4)).toEqual({ min, max });
  });
});

describe('table 25: wire inserts, inch', () => {
  it.each(INSERTS)('STI %s', (thread, forTwo, twoMin, twoMax, forThree, threeMin, threeMax) => {
    expect(limit(`STI ${thread}`, 'H', forTwo)).toEqual({ min: twoMin, max: twoMax });
    expect(limit(`STI ${thread}`, 'H', forThree)).toEqual({ min: threeMin, max: threeMax });
  });
});

describe('table 26a: wire inserts, metric, in inches', () => {
  it.each(METRIC)('%s, class 4H, H%i: %d to %d', (thread, number, min, max) => {
    expect(limit(`EG ${thread}`, 'H', number)).toEqual({ min, max });
  });
  it('M3, classes 5H and 6H, H2: .1314 to .1319', () => {
    expect(limit('EG M3', 'H', 2)).toEqual({ min: 0.1314, max: 0.1319 });
  });
  // The table's own rounding is not one rule: these rows stand .0001 beside it, and ours stay.
  it.each([
    ['M6', 2, 0.2624, 0.2629],
    ['M12x1.25', 3, 0.5054, 0.5059],
    ['M18x2', 3, 0.7608, 0.7613],
  ])('%s is printed .0001 in beside our rule', (thread, number, min, max) => {
    const ours = limit(`EG ${thread}`, 'H', number);
    expect(ours).not.toEqual({ min, max });
    expect(Math.abs(ours.min - min)).toBeLessThan(0.00011);
    expect(Math.abs(ours.max - max)).toBeLessThan(0.00011);
  });
});

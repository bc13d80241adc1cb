/** Least sizes of the screw: ISO 965-2 6g and ASME B1.1 2A as most charts print them (from memory). */

import { describe, expect, test } from 'vitest';
import { externalMajorMin, externalPitchMin } from '../../../core/limits/external';
import { read } from '../thread/read-or-throw';

describe('6g, mm (from memory)', () => {
  test.each([
    ['M6', 5.794, 5.212],
    ['M8', 7.76, 7.042],
    ['M10', 9.732, 8.862],
    ['M12', 11.701, 10.679],
    ['M3', 2.874, 2.58],
  ])('%s: major from %d, pitch from %d', (size, major, pitch) => {
    expect(externalMajorMin(read(size))).toBe(major);
    expect(externalPitchMin(read(size))).toBe(pitch);
  });

  test('a pair outside the tables by formula', () => {
    expect(externalMajorMin(read('M8x1.3'))).toBeCloseTo(8 - 0.03 - 0.212, 9);
    expect(externalMajorMin(read('M2x0.22'))).toBeCloseTo(2 - 0.017 - 0.06, 9);
    expect(externalPitchMin(read('M12x0.75'))).toBeCloseTo(11.513 - 0.022 - 0.106, 9);
  });
});

describe('2A, inches (from memory)', () => {
  test.each([
    ['1/4-20', 0.2408, 0.2127],
    ['3/8-16', 0.3643, 0.3287],
    ['1/2-13', 0.4876, 0.4435],
    ['#10-32', 0.1831, 0.1658],
  ])('%s: major from %d, pitch from %d', (size, major, pitch) => {
    expect(externalMajorMin(read(size)) / 25.4).toBeCloseTo(major, 8);
    expect(externalPitchMin(read(size)) / 25.4).toBeCloseTo(pitch, 8);
  });

  test('whatever the class of the hole', () => {
    expect(externalMajorMin(read('1/4-20 UNC-3B'))).toBe(externalMajorMin(read('1/4-20 UNC-1B')));
  });
});

test('a pipe thread has no such screw: its basic sizes', () => {
  // 20.955 - 0.649519 x 25.4 / 14
  expect(externalPitchMin(read('G1/2'))).toBe(19.777);
  expect(externalMajorMin(read('G1/2'))).toBe(20.955);
  expect(externalPitchMin(read('1/4 NPT'))).toBeLessThan(read('1/4 NPT').diameter);
});

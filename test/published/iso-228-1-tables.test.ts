/**
 * G threads against ISO 228-1 sizes as threadlib (BSD 3-Clause) and a handbook page agree on them, and minor
 * diameters against a cutting-tool maker's wall chart.
 */

import { describe, expect, test } from 'vitest';
import { basicDiameters } from '../../core/thread/profile';
import { limitsOf, read } from '../core/thread/read-or-throw';
import { G_MINOR, G_TOLERANCE } from './tables/pipe';

describe('ISO 228-1 sizes in threadlib and a handbook, mm', () => {
  test.each([
    ['1/16', 7.723, 7.142, 6.561],
    ['1/8', 9.728, 9.147, 8.566],
    ['1/4', 13.157, 12.301, 11.445],
    ['3/8', 16.662, 15.806, 14.95],
    ['1/2', 20.955, 19.793, 18.631],
    ['5/8', 22.911, 21.749, 20.587],
    ['3/4', 26.441, 25.279, 24.117],
    ['7/8', 30.201, 29.039, 27.877],
    ['1', 33.249, 31.77, 30.291],
    ['1-1/4', 41.91, 40.431, 38.952],
    ['1-1/2', 47.803, 46.324, 44.845],
    ['2', 59.614, 58.135, 56.656],
  ])('G%s: %d, %d, %d', (size, major, pitch, minor) => {
    expect(basicDiameters(read(`G${size}`))).toEqual({ major, pitch, minor });
  });

  test('Rp and Rc have the sizes of G in the gauge plane', () => {
    const { major, pitch, minor } = basicDiameters(read('G1/2'));
    expect(basicDiameters(read('Rp1/2'))).toEqual({ major, pitch, minor });
    expect(basicDiameters(read('Rc1/2'))).toEqual({ major, pitch, minor });
  });
});

describe("ISO 228-1 minor diameters on a tool maker's wall chart, mm", () => {
  test.each(G_MINOR)('G%s: %d to %d', (size, min, max) => {
    expect(limitsOf(`G${size}`).minor).toEqual({ min, max });
  });
});

describe('ISO 228-1 pitch-diameter tolerances in threadlib, mm', () => {
  test.each(G_TOLERANCE)('G%s: %d', (size, tolerance) => {
    const { pitch, basis } = limitsOf(`G${size}`);
    expect(pitch.max - pitch.min).toBeCloseTo(tolerance, 9);
    expect(basis).toBe('tabulated');
  });
});

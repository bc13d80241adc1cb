import { describe, expect, test } from 'vitest';
import {
  J_MINOR_DROP,
  MINOR_DROP,
  PITCH_DROP,
  SHARP_HEIGHT,
  basicDiameters,
} from '../../../core/thread/profile';
import { read } from './read-or-throw';

describe('the 60 degree profile (derived from its angle)', () => {
  test('its ratios are those of the sharp triangle', () => {
    expect(PITCH_DROP).toBeCloseTo((2 * 3 * SHARP_HEIGHT) / 8, 9);
    expect(MINOR_DROP).toBeCloseTo((2 * 5 * SHARP_HEIGHT) / 8, 9);
    expect(J_MINOR_DROP).toBeCloseTo((2 * 9 * SHARP_HEIGHT) / 16, 9);
  });
});

describe('basic diameters, mm', () => {
  test('metric are rounded to the micrometre', () => {
    expect(basicDiameters(read('M8'))).toEqual({ major: 8, pitch: 7.188, minor: 6.647 });
    expect(basicDiameters(read('MJ6'))).toEqual({ major: 6, pitch: 5.35, minor: 5.026 });
  });

  test('inch are exact', () => {
    const { major, pitch, minor } = basicDiameters(read('1/2-13'));
    expect(major).toBe(12.7);
    expect(pitch / 25.4).toBeCloseTo(0.450037, 7);
    expect(minor / 25.4).toBeCloseTo(0.41672833, 7);
    expect(basicDiameters(read('1/4-28 UNJF')).minor / 25.4).toBeCloseTo(0.2152044, 6);
  });

  test('an American pipe thread at the outside of the pipe', () => {
    const { major, pitch } = basicDiameters(read('1/4 NPT'));
    expect(major).toBe(13.716);
    expect(pitch).toBeCloseTo(13.716 - (0.649519 * 25.4) / 18, 5);
  });
});

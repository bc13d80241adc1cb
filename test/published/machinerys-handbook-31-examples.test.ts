/**
 * Worked examples of Machinery's Handbook, 31st edition: tables 3 to 6 of the Unified thread calculations
 * (viewer pages 624 to 637), tap limits of wire inserts (p. 1006), metric tolerances above 90 mm (p. 2025).
 */

import { describe, expect, test } from 'vitest';
import { externalMajorMin, externalPitchMin } from '../../core/limits/external';
import {
  minorTolerance,
  pitchMultiple,
  pitchToleranceTwoA,
} from '../../core/limits/unified-tolerances';
import { limitsOf, read } from '../core/thread/read-or-throw';
import { ABOVE_90 } from './tables/threads';

describe("Machinery's Handbook 31, 1/2-28 UNEF worked through", () => {
  test('2B: doubled thread height .038662, minor diameter from .461', () => {
    expect(pitchMultiple(1.08253175, 28)).toBe(38662);
    expect(limitsOf('1/2-28 UNEF-2B').minor.min).toBe(0.461);
  });

  test('2A: pitch-diameter tolerance .003668', () => {
    expect(pitchToleranceTwoA(0.5, 28)).toBe(0.003668);
  });

  test('2A: major diameter down to .4924, pitch diameter down to .4720', () => {
    const thread = read('1/2-28 UNEF');
    expect(externalMajorMin(thread) / 25.4).toBeCloseTo(0.4924, 8);
    expect(externalPitchMin(thread) / 25.4).toBeCloseTo(0.472, 8);
  });
});

describe("Machinery's Handbook 31, 19/64-36 UNS-2B worked through", () => {
  const { minor, pitch, majorMin } = limitsOf('19/64-36 UNS-2B');

  test('basic major diameter .296875 is taken as .2969', () => {
    expect(majorMin).toBe(0.2969);
  });

  test('doubled heights .030070 and .018042', () => {
    expect(pitchMultiple(1.08253175, 36)).toBe(30070);
    expect(pitchMultiple(0.64951905, 36)).toBe(18042);
  });

  test('minor diameter .267 to .273 with tolerance .0066', () => {
    expect(minorTolerance(0.2969, 36, '2B')).toBe(0.0066);
    expect(minor).toEqual({ min: 0.267, max: 0.273 });
  });

  test('pitch diameter from .2789', () => {
    expect(pitch.min).toBe(0.2789);
  });
});

describe("Machinery's Handbook 31, p. 1006, taps for wire inserts", () => {
  test('1/4-20 STI: basic pitch diameter .2825, and tap limits H2 and H3 fall inside 3B and 2B', () => {
    const closer = limitsOf('STI 1/4-20 UNC-3B').pitch;
    const usual = limitsOf('STI 1/4-20 UNC-2B').pitch;
    expect(closer.min).toBe(0.2825);
    expect(usual.min).toBe(0.2825);
    expect(closer.max).toBeGreaterThan(0.2835);
    expect(usual.max).toBeGreaterThan(0.284);
  });
});

describe("Machinery's Handbook 31, p. 2025, metric tolerances above 90 mm", () => {
  test.each(ABOVE_90)('%s has %d mm on the pitch diameter', (name, tolerance) => {
    const { pitch, basis } = limitsOf(name);
    expect(pitch.max - pitch.min).toBeCloseTo(tolerance, 9);
    expect(basis).toBe('tabulated');
  });
});

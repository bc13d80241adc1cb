import { describe, expect, test } from 'vitest';
import { threadLimits } from '../../../core/limits/thread-limits';
import { limitsOf, read } from '../thread/read-or-throw';

describe('taper pipe threads have no limits of size: the gauge decides', () => {
  test.each(['1/4 NPT', '1/8-27 NPTF', 'Rc1/2'])('%s', (name) => {
    expect(threadLimits(read(name))).toEqual({
      ok: false,
      problems: [
        { code: 'taper-pipe', field: 'thread', data: { designation: read(name).designation } },
      ],
    });
  });

  test.each(['1/4 NPSM', '1/8 NPSF'])('%s is parallel, but its rules are not held', (name) => {
    expect(threadLimits(read(name))).toMatchObject({
      ok: false,
      problems: [{ code: 'no-limits-held' }],
    });
  });
});

describe('Rp (ISO 7-1, derived from its gauge-plane tolerance)', () => {
  test.each([
    ['Rp1/8', 0.071],
    ['Rp1/4', 0.104],
    ['Rp1/2', 0.142],
    ['Rp1', 0.18],
    ['Rp2', 0.18],
    ['Rp3', 0.216],
  ])('%s: %d mm to either side (as remembered from the standard)', (name, half) => {
    const { pitch, minor, majorMin, basis } = limitsOf(name);
    const basic = limitsOf(name.replace('Rp', 'G'));
    expect(pitch.max - basic.pitch.min).toBeCloseTo(half, 9);
    expect(basic.pitch.min - pitch.min).toBeCloseTo(half, 9);
    expect(minor.max! - minor.min).toBeCloseTo(2 * half, 9);
    expect(basic.majorMin - majorMin).toBeCloseTo(half, 9);
    expect(basis).toBe('computed');
  });

  test('the usual drills fall inside (common practice)', () => {
    const drills = { '1/8': 8.6, '1/4': 11.5, '3/8': 15, '1/2': 18.5, '3/4': 24, '1': 30.25 };
    for (const [size, drill] of Object.entries(drills)) {
      const { minor } = limitsOf(`Rp${size}`);
      expect(drill, size).toBeGreaterThanOrEqual(minor.min);
      expect(drill, size).toBeLessThanOrEqual(minor.max!);
    }
  });

  test('says where it comes from', () => {
    const outcome = threadLimits(read('Rp1/2'));
    expect(outcome.ok && outcome.notes[0]).toMatchObject({
      code: 'parallel-pipe-from-memory',
      source: 'from-memory',
    });
  });
});

test('a G thread of a pitch that its standard lacks is refused, not guessed', () => {
  const half = read('G1/2');
  const { inch, ...bare } = half;
  for (const thread of [bare, { ...half, inch: { ...inch!, tpi: 16 } }]) {
    expect(threadLimits(thread)).toMatchObject({ problems: [{ code: 'no-limits-held' }] });
  }
});

test('G has one class and the drills in use fall inside (FreeCAD)', () => {
  const drills = { '1/8': 8.8, '1/4': 11.8, '3/8': 15.25, '1/2': 19, '3/4': 24.5, '1': 30.75 };
  for (const [size, drill] of Object.entries(drills)) {
    const { minor } = limitsOf(`G${size}`);
    expect(drill, size).toBeGreaterThanOrEqual(minor.min);
    expect(drill, size).toBeLessThanOrEqual(minor.max!);
  }
});

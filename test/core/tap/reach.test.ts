/**
 * Whether a stock tap reaches. Lengths from DIN 371, 374 and 376 and ASME B94.9 as the data say; the sums by
 * hand: a full-size shank stops at thread and neck, a reduced one at overall length less three shanks.
 */
import { describe, expect, it } from 'vitest';
import { readThread } from '../../../core';
import { stockTap, tapReach } from '../../../core/tap/reach';

function stock(name: string) {
  const thread = readThread(name);
  if (!thread.ok) throw new Error(name);
  return stockTap(thread.value);
}
const asked = (
  tip: number,
  diameter: number,
  counterbore?: { diameter: number; depth: number },
) => ({
  tip,
  diameter,
  counterbore,
});

describe('what a stock tap has', () => {
  it.each([
    // DIN 371: thread and neck; 90 - 3 x 8 = 66 and 90 - 3 x 6 = 72.
    ['M8', { reach: 35, free: 66, shank: 8 }, { reach: 72 }],
    ['M3', { reach: 18, free: 56 - 10.5, shank: 3.5 }, undefined],
    ['M2', { reach: 8, free: 45 - 8.4, shank: 2.8 }, undefined],
    ['M4', { reach: 21, free: 63 - 13.5, shank: 4.5 }, { reach: 63 - 8.4 }],
    // DIN 376 and 374: reduced shank alone.
    ['M12', { reach: 83, free: 83, shank: 9 }, undefined],
    ['M12x1.5', { reach: 73, free: 73, shank: 9 }, undefined],
    ['M30', { reach: 114, free: 114, shank: 22 }, undefined],
    // ASME B94.9, inches: 1.00 of thread; 2.50 - 3 x .255 = 1.735; 3.38 - 3 x .367 = 2.279.
    ['1/4-20', { reach: 25.4, free: 1.735 * 25.4, shank: 0.255 * 25.4 }, undefined],
    ['1/4-28', { reach: 25.4, free: 1.735 * 25.4, shank: 0.255 * 25.4 }, undefined],
    ['1/2-13', { reach: 2.279 * 25.4, free: 2.279 * 25.4, shank: 0.367 * 25.4 }, undefined],
  ])('%s', (name, usual, reduced) => {
    const found = stock(name)!;
    for (const [key, value] of Object.entries(usual))
      expect(found.usual[key as 'reach'], key).toBeCloseTo(value, 9);
    if (reduced) expect(found.reduced?.reach).toBeCloseTo(reduced.reach, 9);
    else expect(found.reduced).toBeUndefined();
  });

  it.each(['M8x0.75', 'M64x6', '2-4.5', 'G1/4', '1/4 NPT', 'STI M8'])(
    'nothing is held for %s',
    (name) => expect(stock(name)).toBeNull(),
  );
});

describe('M8, full-size shank', () => {
  const tap = stock('M8');
  it('reaches to 35 mm, beyond that with a reduced shank', () => {
    expect(tapReach(tap, asked(35, 8))).toMatchObject({ verdict: 'reaches', needed: 35, have: 35 });
    expect(tapReach(tap, asked(35.01, 8))).toMatchObject({
      verdict: 'long',
      needed: 35.01,
      reduced: 72,
    });
  });
  it('eight diameters of tip depth are the end of it', () => {
    expect(tapReach(tap, asked(64, 8)).verdict).toBe('long');
    expect(tapReach(tap, asked(64.01, 8))).toMatchObject({ verdict: 'none', have: 64 });
  });
  it('a narrow counterbore is added to the tip', () => {
    const narrow = { diameter: 8.9, depth: 18 };
    expect(tapReach(tap, asked(17, 8, narrow)).verdict).toBe('reaches');
    expect(tapReach(tap, asked(17.1, 8, narrow))).toMatchObject({ verdict: 'long', needed: 35.1 });
  });
  it('one a millimetre wider than the shank lets it in, down to the holder', () => {
    const wide = { diameter: 9, depth: 18 };
    expect(tapReach(tap, asked(35, 8, wide))).toMatchObject({ verdict: 'reaches', needed: 35 });
    // 66 mm stick out of the holder: 20 + 46. A reduced shank gives 72.
    expect(tapReach(tap, asked(20, 8, { diameter: 9, depth: 46 })).verdict).toBe('reaches');
    expect(tapReach(tap, asked(20, 8, { diameter: 9, depth: 47 }))).toMatchObject({
      verdict: 'long',
      needed: 67,
      have: 66,
      reduced: 72,
    });
    expect(tapReach(tap, asked(20, 8, { diameter: 9, depth: 52.1 }))).toMatchObject({
      verdict: 'none',
      needed: 72.1,
      have: 72,
    });
  });
});

it('a size without lengths is judged by eight diameters alone', () => {
  expect(tapReach(null, asked(100, 64))).toEqual({
    verdict: 'unknown',
    needed: 100,
    source: 'from-memory',
  });
  expect(tapReach(null, asked(513, 64)).verdict).toBe('none');
});

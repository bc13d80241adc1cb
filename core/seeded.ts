/**
 * Numbers that look random and are not: the same seed gives the same row for ever, so that a spread, an
 * exercise or a worksheet can be made again.
 */

/** Gives the next number of a row, from 0 up to but not including 1. */
export type Draw = () => number;

/**
 * A row of numbers from a seed (any whole number). No unit. A 32-bit mixing generator with a period of
 * 2³², good enough for spreads and worksheets, not for secrets. Source: derived (multiply, shift, mix).
 */
export function seeded(seed: number): Draw {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x9e3779b9) >>> 0;
    let mixed = state ^ (state >>> 16);
    mixed = Math.imul(mixed, 0x21f0aaad);
    mixed ^= mixed >>> 15;
    mixed = Math.imul(mixed, 0x735a2d97);
    mixed ^= mixed >>> 15;
    return (mixed >>> 0) / 4294967296;
  };
}

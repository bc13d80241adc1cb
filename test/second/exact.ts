/**
 * Numbers of sixty places kept as whole numbers, for a reckoning in which no half is decided by how a
 * computer keeps a decimal. Nothing here comes from the core.
 */

const PLACES = 60n;
export const ONE = 10n ** PLACES;

/** A value, in units of 10⁻⁶⁰. */
export type Exact = bigint;

/** A decimal as it is written: `0.64951905`. */
export function exact(decimal: string): Exact {
  const [whole = '0', part = ''] = decimal.replace('-', '').split('.');
  const size = BigInt(whole) * ONE + BigInt(part.padEnd(Number(PLACES), '0').slice(0, 60) || '0');
  return decimal.startsWith('-') ? -size : size;
}

export const ratio = (over: bigint, under: bigint): Exact => (over * ONE) / under;
export const times = (a: Exact, b: Exact): Exact => (a * b) / ONE;
export const over = (a: Exact, b: Exact): Exact => (a * ONE) / b;

/** Largest whole number whose `power`-th power is no more than `value`, by halving the gap. */
function wholeRoot(value: bigint, power: bigint): bigint {
  let low = 0n;
  let high = 1n;
  while (high ** power <= value) high *= 2n;
  while (high - low > 1n) {
    const middle = (low + high) / 2n;
    if (middle ** power <= value) low = middle;
    else high = middle;
  }
  return low;
}

export const squareRoot = (value: Exact): Exact => wholeRoot(value * ONE, 2n);
export const cubeRoot = (value: Exact): Exact => wholeRoot(value * ONE * ONE, 3n);

/** What sums and roots may have lost, far below the last place and far above none. */
const SLACK = 10n ** 10n;

/** Half up to so many places, as a whole number of that place. A true half goes up although roots are cut off. */
export function rounded(value: Exact, places: number): bigint {
  const step = 10n ** (PLACES - BigInt(places));
  return (value + step / 2n + SLACK) / step;
}

export const roundedTo = (value: Exact, places: number): Exact =>
  rounded(value, places) * 10n ** (PLACES - BigInt(places));

/**
 * Which sizes of the Unified inch threads take which threads per inch.
 * Source: ASME B1.1 (2003), tables of the coarse, fine, extra-fine and constant-pitch series.
 * UNC, UNF and UNEF pairs read in FreeCAD's tables; the extent of the constant-pitch series from memory.
 * Diameters in ten-thousandths of an inch, as B1.1 rounds them (1/4 in is 2500).
 */

/** Number sizes that exist. A number size n is 0.060 + 0.013 n inch. */
export const NUMBER_SIZES = [0, 1, 2, 3, 4, 5, 6, 8, 10, 12] as const;

const number = (size: number) => 600 + 130 * size;
const inches = (size: number) => Math.round(size * 10000);

type Pairs = ReadonlyMap<number, number>;

const numbers = (...pairs: [size: number, tpi: number][]): [number, number][] =>
  pairs.map(([size, tpi]) => [number(size), tpi]);
const sizes = (...pairs: [size: number, tpi: number][]): [number, number][] =>
  pairs.map(([size, tpi]) => [inches(size), tpi]);

/** Coarse: one pitch a size. */
// prettier-ignore
export const UNC: Pairs = new Map([
  ...numbers([1, 64], [2, 56], [3, 48], [4, 40], [5, 40], [6, 32], [8, 32], [10, 24], [12, 24]),
  ...sizes([1/4, 20], [5/16, 18], [3/8, 16], [7/16, 14], [1/2, 13], [9/16, 12], [5/8, 11], [3/4, 10],
    [7/8, 9], [1, 8], [1.125, 7], [1.25, 7], [1.375, 6], [1.5, 6], [1.75, 5], [2, 4.5], [2.25, 4.5],
    [2.5, 4], [2.75, 4], [3, 4], [3.25, 4], [3.5, 4], [3.75, 4], [4, 4]),
]);

/** Fine. 1 inch has 12: 1-14 is a special that many lists call fine. */
// prettier-ignore
export const UNF: Pairs = new Map([
  ...numbers([0, 80], [1, 72], [2, 64], [3, 56], [4, 48], [5, 44], [6, 40], [8, 36], [10, 32], [12, 28]),
  ...sizes([1/4, 28], [5/16, 24], [3/8, 24], [7/16, 20], [1/2, 20], [9/16, 18], [5/8, 18], [3/4, 16],
    [7/8, 14], [1, 12], [1.125, 12], [1.25, 12], [1.375, 12], [1.5, 12]),
]);

/** Extra fine. */
// prettier-ignore
export const UNEF: Pairs = new Map([
  ...numbers([12, 32]),
  ...sizes([1/4, 32], [5/16, 32], [3/8, 32], [7/16, 28], [1/2, 28], [9/16, 24], [5/8, 24], [11/16, 24],
    [3/4, 20], [13/16, 20], [7/8, 20], [15/16, 20], [1, 20], [1.0625, 18], [1.125, 18], [1.1875, 18],
    [1.25, 18], [1.3125, 18], [1.375, 18], [1.4375, 18], [1.5, 18], [1.5625, 18], [1.625, 18],
    [1.6875, 18]),
]);

/** Constant-pitch series: threads per inch, smallest and largest size. Upper ends from memory. */
export const CONSTANT_PITCH: readonly { tpi: number; from: number; to: number }[] = [
  { tpi: 4, from: inches(2.5), to: inches(6) },
  { tpi: 6, from: inches(1.375), to: inches(6) },
  { tpi: 8, from: inches(1), to: inches(6) },
  { tpi: 12, from: inches(9 / 16), to: inches(6) },
  { tpi: 16, from: inches(3 / 8), to: inches(6) },
  { tpi: 20, from: inches(1 / 4), to: inches(3) },
  { tpi: 28, from: number(12), to: inches(1.5) },
  { tpi: 32, from: number(6), to: inches(1) },
];

/** True for sizes that the constant-pitch series list: numbers, sixteenths to 2, eighths to 4, quarters to 6. */
export function isListedSize(diameter: number): boolean {
  if (NUMBER_SIZES.some((size) => number(size) === diameter)) return true;
  if (diameter <= 20000) return diameter >= 2500 && diameter % 625 === 0;
  if (diameter <= 40000) return diameter % 1250 === 0;
  return diameter <= 60000 && diameter % 2500 === 0;
}

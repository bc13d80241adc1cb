/**
 * Sizes of pipe threads.
 * - 55 degrees: ISO 228-1 and ISO 7-1, mm: major diameter in the gauge plane and threads per inch.
 *   Read in threadlib, which agrees with a handbook page to size 2.
 *   FreeCAD gives 53.743 for 1-3/4; 53.746 is threadlib's and ISO's.
 * - 60 degrees: ASME B1.20.1, inch: outside diameter of the pipe and threads per inch.
 *   To size 2 read in FreeCAD; larger ones from memory.
 */

export interface PipeSize {
  size: string;
  diameter: number;
  tpi: number;
}

const entry = (size: string, diameter: number, tpi: number): PipeSize => ({ size, diameter, tpi });

/** G, Rp and Rc. Diameter in mm. */
// prettier-ignore
export const WHITWORTH_PIPE: readonly PipeSize[] = [
  entry('1/16', 7.723, 28), entry('1/8', 9.728, 28), entry('1/4', 13.157, 19), entry('3/8', 16.662, 19),
  entry('1/2', 20.955, 14), entry('5/8', 22.911, 14), entry('3/4', 26.441, 14), entry('7/8', 30.201, 14),
  entry('1', 33.249, 11), entry('1-1/8', 37.897, 11), entry('1-1/4', 41.91, 11), entry('1-1/2', 47.803, 11),
  entry('1-3/4', 53.746, 11), entry('2', 59.614, 11), entry('2-1/4', 65.71, 11), entry('2-1/2', 75.184, 11),
  entry('2-3/4', 81.534, 11), entry('3', 87.884, 11), entry('3-1/2', 100.33, 11), entry('4', 113.03, 11),
  entry('4-1/2', 125.73, 11), entry('5', 138.43, 11), entry('5-1/2', 151.13, 11), entry('6', 163.83, 11),
];

/** Sizes that ISO 228-1 (G) has and ISO 7-1 (Rp, Rc) has not. */
export const PARALLEL_ONLY: readonly string[] = [
  '5/8', '7/8', '1-1/8', '1-3/4', '2-1/4', '2-3/4', '3-1/2', '4-1/2', '5-1/2',
]; // prettier-ignore

/** NPT, NPTF, NPSM and NPSF. Diameter in inches. */
// prettier-ignore
export const AMERICAN_PIPE: readonly PipeSize[] = [
  entry('1/16', 0.3125, 27), entry('1/8', 0.405, 27), entry('1/4', 0.54, 18), entry('3/8', 0.675, 18),
  entry('1/2', 0.84, 14), entry('3/4', 1.05, 14), entry('1', 1.315, 11.5), entry('1-1/4', 1.66, 11.5),
  entry('1-1/2', 1.9, 11.5), entry('2', 2.375, 11.5), entry('2-1/2', 2.875, 8), entry('3', 3.5, 8),
  entry('3-1/2', 4, 8), entry('4', 4.5, 8), entry('5', 5.563, 8), entry('6', 6.625, 8),
];

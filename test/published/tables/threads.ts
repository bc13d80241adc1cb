/** Printed tolerances of threads. */

/** Pitch-diameter tolerances above 90 mm, mm */
export const ABOVE_90: [thread: string, tolerance: number][] = [
  ['M100x2-6H', 0.25],
  ['M100x3-6H', 0.3],
  ['M100x4-6H', 0.335],
  ['M100x6-6H', 0.4],
  ['M200x3-6H', 0.335],
  ['M200x6-6H', 0.425],
  ['M200x8-6H', 0.475],
];

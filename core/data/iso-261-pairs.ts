/**
 * Diameters and pitches of ISO metric threads, mm.
 * Source: ISO 261, general plan, table 2 (1998). Half of the pairs from M1 to M64 stand in threadlib
 * and are checked against it; the rest, and all above M64, are from memory.
 * The standard brackets M14x1.25 (spark plugs), M35x1.5 (bearing nuts) and M30x3, M33x3: kept here.
 */

export interface MetricPitches {
  /** mm; missing where the size has no coarse pitch. */
  coarse?: number;
  fine: readonly number[];
}

const pitches = (coarse: number | undefined, ...fine: number[]): MetricPitches => ({
  ...(coarse === undefined ? {} : { coarse }),
  fine,
});

/** Keyed by basic major diameter, mm. Fine pitches from coarse to fine. */
// prettier-ignore
export const ISO_261_PAIRS: ReadonlyMap<number, MetricPitches> = new Map([
  [1, pitches(0.25, 0.2)], [1.1, pitches(0.25, 0.2)], [1.2, pitches(0.25, 0.2)],
  [1.4, pitches(0.3, 0.2)], [1.6, pitches(0.35, 0.2)], [1.8, pitches(0.35, 0.2)],
  [2, pitches(0.4, 0.25)], [2.2, pitches(0.45, 0.25)], [2.5, pitches(0.45, 0.35)],
  [3, pitches(0.5, 0.35)], [3.5, pitches(0.6, 0.35)], [4, pitches(0.7, 0.5)],
  [4.5, pitches(0.75, 0.5)], [5, pitches(0.8, 0.5)], [5.5, pitches(undefined, 0.5)],
  [6, pitches(1, 0.75)], [7, pitches(1, 0.75)], [8, pitches(1.25, 1, 0.75)],
  [9, pitches(1.25, 1, 0.75)], [10, pitches(1.5, 1.25, 1, 0.75)], [11, pitches(1.5, 1, 0.75)],
  [12, pitches(1.75, 1.5, 1.25, 1)], [14, pitches(2, 1.5, 1.25, 1)], [15, pitches(undefined, 1.5, 1)],
  [16, pitches(2, 1.5, 1)], [17, pitches(undefined, 1.5, 1)], [18, pitches(2.5, 2, 1.5, 1)],
  [20, pitches(2.5, 2, 1.5, 1)], [22, pitches(2.5, 2, 1.5, 1)], [24, pitches(3, 2, 1.5, 1)],
  [25, pitches(undefined, 2, 1.5, 1)], [26, pitches(undefined, 1.5)], [27, pitches(3, 2, 1.5, 1)],
  [28, pitches(undefined, 2, 1.5, 1)], [30, pitches(3.5, 3, 2, 1.5, 1)], [32, pitches(undefined, 2, 1.5)],
  [33, pitches(3.5, 3, 2, 1.5)], [35, pitches(undefined, 1.5)], [36, pitches(4, 3, 2, 1.5)],
  [38, pitches(undefined, 1.5)], [39, pitches(4, 3, 2, 1.5)], [40, pitches(undefined, 3, 2, 1.5)],
  [42, pitches(4.5, 4, 3, 2, 1.5)], [45, pitches(4.5, 4, 3, 2, 1.5)], [48, pitches(5, 4, 3, 2, 1.5)],
  [50, pitches(undefined, 3, 2, 1.5)], [52, pitches(5, 4, 3, 2, 1.5)], [55, pitches(undefined, 4, 3, 2, 1.5)],
  [56, pitches(5.5, 4, 3, 2, 1.5)], [58, pitches(undefined, 4, 3, 2, 1.5)], [60, pitches(5.5, 4, 3, 2, 1.5)],
  [62, pitches(undefined, 4, 3, 2, 1.5)], [64, pitches(6, 4, 3, 2, 1.5)], [65, pitches(undefined, 4, 3, 2, 1.5)],
  [68, pitches(6, 4, 3, 2, 1.5)], [70, pitches(undefined, 6, 4, 3, 2, 1.5)], [72, pitches(undefined, 6, 4, 3, 2, 1.5)],
  [75, pitches(undefined, 4, 3, 2, 1.5)], [76, pitches(undefined, 6, 4, 3, 2, 1.5)], [78, pitches(undefined, 2)],
  [80, pitches(undefined, 6, 4, 3, 2, 1.5)], [82, pitches(undefined, 2)], [85, pitches(undefined, 6, 4, 3, 2)],
  [90, pitches(undefined, 6, 4, 3, 2)], [95, pitches(undefined, 6, 4, 3, 2)], [100, pitches(undefined, 6, 4, 3, 2)],
]);

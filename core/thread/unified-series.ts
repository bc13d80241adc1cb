/** Series of the Unified inch threads: what a pair of size and pitch is called, and what a size comes in. */

import { CONSTANT_PITCH, NUMBER_SIZES, UNC, UNEF, UNF, isListedSize } from '../data/unified-series';
import { roundHalfUp } from '../units';

/** `UNC`, `UNF`, `UNEF`, `12-UN` and the like, or `UNS`. */
export type UnifiedSeries = string;

/** The one special that its standard lists by name and treats like a fine thread: 1-14. */
const LISTED_SPECIAL = { diameter: 10000, tpi: 14 };

/** A diameter as B1.1 rounds it: whole ten-thousandths of an inch. */
export function tenThousandths(inches: number): number {
  return Math.round(roundHalfUp(inches, 0.0001) * 10000);
}

/** The series of a pair. `diameter` in inches. A pair of UNC, UNF or UNEF is never called N-UN. */
export function unifiedSeries(diameter: number, tpi: number): UnifiedSeries {
  const size = tenThousandths(diameter);
  if (UNC.get(size) === tpi) return 'UNC';
  if (UNF.get(size) === tpi) return 'UNF';
  if (UNEF.get(size) === tpi) return 'UNEF';
  const constant = CONSTANT_PITCH.find((series) => series.tpi === tpi);
  if (constant && size >= constant.from && size <= constant.to && isListedSize(size)) {
    return `${tpi}-UN`;
  }
  return 'UNS';
}

/** True when the pair stands in a list of B1.1: any series, or 1-14 UNS. `diameter` in inches. */
export function isListedPair(diameter: number, tpi: number): boolean {
  const { diameter: listed, tpi: listedTpi } = LISTED_SPECIAL;
  if (tenThousandths(diameter) === listed && tpi === listedTpi) return true;
  return unifiedSeries(diameter, tpi) !== 'UNS';
}

/** Threads per inch of a size in UNC, UNF or UNEF; null where the series lacks the size. */
export function seriesTpi(diameter: number, series: 'UNC' | 'UNF' | 'UNEF'): number | null {
  const table = { UNC, UNF, UNEF }[series];
  return table.get(tenThousandths(diameter)) ?? null;
}

/** Basic major diameter of a number size, inches; null where there is no such size. */
export function numberSize(size: number): number | null {
  const exists = (NUMBER_SIZES as readonly number[]).includes(size);
  return exists ? (60 + 13 * size) / 1000 : null;
}

/** The old 4-36: in no list of today, but always a number size. */
const OLD_NUMBER_PAIRS = ['4-36'];

/** True when a bare `size-tpi` is always the number size: 10-32, 4-40, 12-32. */
export function isNumberPair(size: number, tpi: number): boolean {
  const diameter = numberSize(size);
  if (diameter === null) return false;
  if (OLD_NUMBER_PAIRS.includes(`${size}-${tpi}`)) return true;
  return ['UNC', 'UNF', 'UNEF'].includes(unifiedSeries(diameter, tpi));
}

/** True when a bare `size-tpi`, its size a whole number, may be whole inches: 1-8, 2-4.5, 6-12. */
export function isInchPair(size: number, tpi: number): boolean {
  return isListedPair(size, tpi);
}

/** Which metric pairs are coarse, fine or in no list, and which class is usual. */

import { ISO_261_PAIRS } from '../data/iso-261-pairs';
import { DIAMETER_STEPS, MINOR_TOLERANCE } from '../data/iso-965-tolerances';

export type MetricSeries = 'coarse' | 'fine' | 'non-standard';

/** The coarse pitch of a size, mm; null where ISO 261 has none. */
export function coarsePitch(diameter: number): number | null {
  return ISO_261_PAIRS.get(diameter)?.coarse ?? null;
}

/** Every pitch ISO 261 lists for a size, mm, coarse first. */
export function listedPitches(diameter: number): number[] {
  const listed = ISO_261_PAIRS.get(diameter);
  if (!listed) return [];
  return listed.coarse === undefined ? [...listed.fine] : [listed.coarse, ...listed.fine];
}

/** The series of a pair, mm. Source: ISO 261. */
export function metricSeries(diameter: number, pitch: number): MetricSeries {
  const listed = ISO_261_PAIRS.get(diameter);
  if (listed?.coarse === pitch) return 'coarse';
  return listed?.fine.includes(pitch) ? 'fine' : 'non-standard';
}

/** Index of the ISO 965-1 diameter step, or -1 outside 0.99 to 355 mm. */
export function diameterStep(diameter: number): number {
  return DIAMETER_STEPS.findIndex(([over, to]) => diameter > over && diameter <= to);
}

/**
 * The usual class where the drawing gives none: 6H; 5H to 1.4 mm or with 0.25 pitch, 4H with 0.2 pitch,
 * since finer threads have no wider cell. MJ: 4H6H to 0.8 mm pitch, 4H5H from 1 mm. From memory.
 */
export function usualMetricClass(form: 'M' | 'MJ', diameter: number, pitch: number): string {
  if (form === 'MJ') return pitch < 1 ? '4H6H' : '4H5H';
  if (pitch === 0.2) return '4H';
  return diameter <= 1.4 || pitch === 0.25 ? '5H' : '6H';
}

/** True where ISO 965-1 has a row for the pitch but no grade 6 in it (0.2 and 0.25): 6H is extrapolated. */
export function lacksGradeSix(pitch: number): boolean {
  return MINOR_TOLERANCE[pitch]?.[2] === null;
}

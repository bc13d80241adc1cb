/** Percent of thread. There are two bases; a percentage without its base means nothing. */

/** Height of thread on both sides at 100 %, in pitches, on each base. Derived from ISO 68-1. */
export const PERCENT_BASE = { shop: 1.29903811, iso: 1.08253175 } as const;

/**
 * Percent of thread that a hole leaves for a cutting tap, on the US shop base (3H/4 a side) and on the
 * ISO profile base (5H/8 a side; 1.2 times the first). All lengths mm, above 0; a hole wider than the thread gives
 * a negative percent. Never refuses. Source: derived, `iso-68-1`.
 *
 * @example
 * percentThread(10, 1.5, 8.5).shop.toFixed(1) // '77.0'
 */
export function percentThread(
  major: number,
  pitch: number,
  hole: number,
): { shop: number; iso: number } {
  const height = (100 * (major - hole)) / pitch;
  return { shop: height / PERCENT_BASE.shop, iso: height / PERCENT_BASE.iso };
}

/** Slope of a form tap's hole: hole = D − 0.0068 · % · P, mm. From memory of the handbook. */
export const FORM_SLOPE = 0.0068;

/** Percent of thread on the form-tap scale that a hole gives, a third base. Lengths mm. Source: `from-memory`. */
export function formPercent(major: number, pitch: number, hole: number): number {
  return (major - hole) / (FORM_SLOPE * pitch);
}

/** Hole before forming for a percentage on the form-tap scale, mm. Source: `from-memory`. */
export function formHole(major: number, pitch: number, percent: number): number {
  return major - FORM_SLOPE * percent * pitch;
}

/** Form-tap percentages that a hole may lie between, and the usual one. Common practice. */
export const FORM_WINDOW = { min: 60, usual: 65, max: 75 } as const;

/** Hole for a percentage of thread on one of the two bases for a cutting tap, mm. Source: derived, `iso-68-1`. */
export function holeForPercent(
  major: number,
  pitch: number,
  percent: number,
  base: keyof typeof PERCENT_BASE = 'shop',
): number {
  return major - (PERCENT_BASE[base] * pitch * percent) / 100;
}

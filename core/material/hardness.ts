/**
 * Hardness on the three scales a certificate may carry, as Brinell.
 * Steel, after the usual conversion tables (ASTM E140, from memory): good to about 5 %.
 */

export const HARDNESS_SCALES = ['HB', 'HRC', 'HV'] as const;

export type HardnessScale = (typeof HARDNESS_SCALES)[number];

export interface Hardness {
  value: number;
  scale: HardnessScale;
}

/** Rockwell C and Brinell. From memory. */
const ROCKWELL: [hrc: number, hb: number][] = [
  [20, 226],
  [25, 253],
  [30, 286],
  [35, 327],
  [40, 371],
  [45, 421],
  [50, 481],
  [55, 560],
  [60, 654],
];

/** Vickers over Brinell where both are used. From memory. */
const VICKERS = 1.05;

/**
 * Brinell hardness, or null where the number is outside its scale: HB 20 to 700, HV 20 to 750, HRC 20 to 60
 * (below 20 the scale is not used). Source: `from-memory`.
 */
export function brinell({ value, scale }: Hardness): number | null {
  if (scale === 'HB') return value >= 20 && value <= 700 ? value : null;
  if (scale === 'HV') return value >= 20 && value <= 750 ? value / VICKERS : null;
  const above = ROCKWELL.findIndex(([hrc]) => hrc >= value);
  const [low, high] = [ROCKWELL[Math.max(0, above - 1)], ROCKWELL[above]];
  if (!low || !high || value < 20) return null;
  const share = high[0] === low[0] ? 0 : (value - low[0]) / (high[0] - low[0]);
  return low[1] + share * (high[1] - low[1]);
}

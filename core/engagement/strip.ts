/**
 * Will the tapped thread strip before the screw breaks?
 * Areas after FED-STD-H28/2B and the ASME B1.1 appendix (from memory). Static stripping only:
 * nothing here speaks of fatigue, vibration, creep, heat, or of what a joint may carry.
 */

/**
 * Pitches from the major diameter down to the diameter of the stress area. ISO 898-1 takes the rounded root;
 * the inch standards take the sharp one, half way from pitch to minor diameter: 1 per cent less area.
 */
const STRESS_DROP = { metric: 0.9382, inch: 0.9743 } as const;

/**
 * Tensile stress area of a 60° screw, mm², from major diameter and pitch in mm.
 * Sources: `screw-grades` (ISO 898-1); `fed-std-h28` for inch threads.
 */
export function tensileArea(
  diameter: number,
  pitch: number,
  system: keyof typeof STRESS_DROP = 'metric',
): number {
  return (Math.PI / 4) * (diameter - STRESS_DROP[system] * pitch) ** 2;
}

export interface ShearSizes {
  pitch: number;
  /** Smallest major diameter of the screw, mm. */
  screwMajorMin: number;
  /** Largest pitch diameter of the hole, mm. */
  holePitchMax: number;
}

/** Shear area of the internal thread per mm of engagement, mm²/mm (at the screw's major diameter). Source: `fed-std-h28`. */
export function internalShearArea({ pitch, screwMajorMin, holePitchMax }: ShearSizes): number {
  const bite = pitch / 2 + (screwMajorMin - holePitchMax) / Math.sqrt(3);
  return (Math.PI / pitch) * screwMajorMin * bite;
}

/** Margin on engagement for uneven load among the threads: at least, and at most. Common practice. */
export const ENGAGEMENT_MARGIN = { least: 1.25, most: 1.5 } as const;

/** Tensile strengths of the screws reckoned with, N/mm². Source: `screw-grades`. */
export const SCREW_TENSILE = { metric: 800, stainless: 700, inch: 827 } as const;

export interface StripInput extends ShearSizes {
  /** Basic major diameter of the screw, mm, and whose stress area it has; default metric. */
  diameter: number;
  system?: keyof typeof STRESS_DROP;
  /** Shear strength of the tapped metal and tensile strength of the screw, N/mm². */
  shear: number;
  tensile: number;
}

/**
 * Engagement at which stripping the hole and breaking the screw take the same pull, mm.
 * Source: `fed-std-h28`, `shear-strength`, `screw-grades`.
 */
export function matchingEngagement(input: StripInput): number {
  const pull = tensileArea(input.diameter, input.pitch, input.system) * input.tensile;
  return pull / (internalShearArea(input) * input.shear);
}

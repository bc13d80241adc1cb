/** How dangerous a thread is to its tap by its shape alone, and how heavy for a spindle. Derived. */

/**
 * Danger index (P/D)²: torque goes with P²D and the tap's strength with D³. No unit; `pitch` and `major`
 * in the same unit. M10×1.5 has 0.023, the worst common thread (#6-32) 0.051. Source: derived.
 */
export function dangerIndex(pitch: number, major: number): number {
  return (pitch / major) ** 2;
}

/** Spindle index D·P², mm³: the torque of threads in one material goes with it. `pitch`, `major` mm. Source: derived. */
export function spindleIndex(pitch: number, major: number): number {
  return major * pitch ** 2;
}

/** The thread that others are compared with: M10×1.5. */
const ORDINARY = { pitch: 1.5, major: 10 };

/** How many times as dangerous as M10×1.5 a thread is by its shape. `pitch`, `major` mm. Source: derived. */
export function dangerOverM10(pitch: number, major: number): number {
  return dangerIndex(pitch, major) / dangerIndex(ORDINARY.pitch, ORDINARY.major);
}

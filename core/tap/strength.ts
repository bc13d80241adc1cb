/** How much torque a tap stands before it breaks. */

/** Torsional strength of hardened HSS, N/mm², ± 25 %. An estimate; no published source found. From memory. */
export const HSS_SHEAR = 1500;

/** Stiffness of a fluted section over its web circle: expected, and the lower bound. Derived from idealised sections. */
export const SECTION_FACTOR = { expected: 1.5, low: 1.2 };

/**
 * Torque that breaks a tap, N·m, from its web diameter in mm (above 0): expected value and the
 * lower bound (weak section and soft steel together). Source: derived, `from-memory` for the steel.
 */
export function breakingTorque(web: number): { expected: number; low: number } {
  const circle = (Math.PI * web ** 3) / 16 / 1000;
  return {
    expected: HSS_SHEAR * SECTION_FACTOR.expected * circle,
    low: 0.75 * HSS_SHEAR * SECTION_FACTOR.low * circle,
  };
}

/**
 * A bore that crosses the tapped hole: metal is missing there, so fewer teeth are in the cut.
 * The mean torque falls; each tooth still meets its full load, and a knock besides, when it comes back
 * into metal. Derived from the geometry of two crossing cylinders.
 */

/** A round bore whose axis crosses that of the tapped hole at a right angle. */
export interface CrossHole {
  /** Depth of its centre below the face and its diameter, mm. */
  depth: number;
  diameter: number;
  /** True when it goes on through the far side of the hole too. */
  bothSides: boolean;
}

/**
 * Share of the hole's circumference that is metal at a depth, 0 to 1. `radius` of the wall, mm.
 * Bores that cross at the same depth are taken to lie apart. Source: derived.
 */
export function metalShare(
  depth: number,
  radius: number,
  crossHoles: readonly CrossHole[],
): number {
  let missing = 0;
  for (const { depth: centre, diameter, bothSides } of crossHoles) {
    const halfChord = Math.sqrt(Math.max(0, (diameter / 2) ** 2 - (depth - centre) ** 2));
    const half = Math.asin(Math.min(1, halfChord / radius));
    missing += ((bothSides ? 2 : 1) * half) / Math.PI;
  }
  return Math.max(0, 1 - missing);
}

/** Mean of the metal's share between two depths, mm; 1 where they do not differ. Source: derived. */
export function meanMetalShare(
  from: number,
  to: number,
  radius: number,
  crossHoles: readonly CrossHole[],
): number {
  if (crossHoles.length === 0 || to - from < 1e-12) return 1;
  const steps = 48;
  let sum = 0;
  for (let index = 0; index < steps; index += 1) {
    sum += metalShare(from + ((index + 0.5) * (to - from)) / steps, radius, crossHoles);
  }
  return sum / steps;
}

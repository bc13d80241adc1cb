/**
 * Torque of a chamfered tap from the metal each tooth removes.
 *
 * Groove geometry from ISO 68-1; specific force after Kienzle. Derived here, see
 * `tap-chip-model` in the source registry: within about 40 % of a sharp, oiled tap.
 */

import type { Material } from '../material/material';

const TAN30 = Math.tan(Math.PI / 6);

/** Chips thinner than this are pushed aside, not cut, mm: the edge radius of a sharp HSS tap. From memory. */
export const THINNEST_CHIP = 0.01;

/** The chamfer length, in pitches, at which the single-number torque takes its specific force. */
export const REFERENCE_CHAMFER = 5;

export interface Groove {
  /** Major diameter of the tap and pitch, mm. */
  major: number;
  pitch: number;
  /** Hole before tapping, mm. */
  hole: number;
}

export interface GrooveGeometry {
  /** Height of thread actually cut, mm. */
  height: number;
  /** Cross-section of one finished groove, mm². */
  area: number;
  /** Radius of that section's centroid, mm. */
  centroidRadius: number;
  /** Metal removed per mm of thread depth, mm³/mm. */
  volumePerDepth: number;
}

/**
 * The groove a tap leaves in a drilled hole. All lengths mm; the hole must be smaller than the
 * major diameter (a larger one gives zero height and zero area). Source: `iso-68-1`, derived.
 */
export function grooveGeometry({ major, pitch, hole }: Groove): GrooveGeometry {
  const height = Math.max(0, (major - hole) / 2);
  const area = (pitch * height) / 8 + TAN30 * height ** 2;
  const moment = (pitch * height ** 2) / 16 + (TAN30 * height ** 3) / 3;
  const centroidRadius = hole / 2 + (area > 0 ? moment / area : 0);
  return {
    height,
    area,
    centroidRadius,
    volumePerDepth: (2 * Math.PI * centroidRadius * area) / pitch,
  };
}

/** Flutes of the straight-flute tap that the style factors are relative to. Common practice. */
export function referenceFlutes(major: number): number {
  return major <= 4 ? 3 : 4;
}

export interface ToothGeometry {
  teeth: number;
  /** Radial step from one tooth to the next, mm. */
  step: number;
  /** Thickness of the chip a tooth takes, mm. */
  chip: number;
}

/**
 * How the chamfer shares the groove among its teeth. `threads` of chamfer above 0, `flutes` 2 or more;
 * returns mm. Source: derived from ISO 68-1 geometry.
 */
export function toothGeometry(groove: Groove, threads: number, flutes: number): ToothGeometry {
  const { height } = grooveGeometry(groove);
  const teeth = threads * flutes;
  const angle = Math.atan(height / (threads * groove.pitch));
  return { teeth, step: height / teeth, chip: (groove.pitch / flutes) * Math.sin(angle) };
}

/**
 * Specific cutting force, N/mm², at a chip thickness in mm (clamped to `THINNEST_CHIP`,
 * below which a tooth rubs). Source: `kienzle`.
 */
export function specificForce(material: Pick<Material, 'kc11' | 'mc'>, chip: number): number {
  return material.kc11 * Math.max(chip, THINNEST_CHIP) ** -material.mc;
}

/** Width of the groove at the hole's wall, where it is widest, mm. */
function grooveWidth(pitch: number, height: number): number {
  return pitch / 8 + 2 * height * TAN30;
}

/**
 * Force on the first tooth to bite, the heaviest, N, for a chamfer of `threads` threads.
 * Source: `tap-chip-model`.
 */
export function heaviestToothLoad(
  groove: Groove,
  threads: number,
  flutes: number,
  material: Pick<Material, 'kc11' | 'mc'>,
): number {
  const { height } = grooveGeometry(groove);
  const { step, chip } = toothGeometry(groove, threads, flutes);
  return specificForce(material, chip) * grooveWidth(groove.pitch, height) * step;
}

/** Integral of width × radius over the groove from height y1 to y2, mm³: the moment of the metal in reach. */
export function grooveMoment(groove: Groove, y1: number, y2: number): number {
  const { height } = grooveGeometry(groove);
  const full = grooveWidth(groove.pitch, height);
  const slope = 2 * TAN30;
  const radius = groove.hole / 2;
  const at = (y: number) =>
    full * radius * y + ((full - slope * radius) * y ** 2) / 2 - (slope * y ** 3) / 3;
  return at(y2) - at(y1);
}

/**
 * Share of the whole chamfer's moment that work of a given thickness can hold at once:
 * 1 where the work is thicker than the chamfer is long. The heaviest part is at the nose,
 * where the groove is widest. `thickness` mm. Source: `tap-chip-model`.
 */
export function engagedShare(groove: Groove, threads: number, thickness: number): number {
  const length = threads * groove.pitch;
  if (thickness >= length) return 1;
  const { height } = grooveGeometry(groove);
  const whole = grooveMoment(groove, 0, height);
  return whole > 0 ? grooveMoment(groove, 0, (height * thickness) / length) / whole : 1;
}

export interface CuttingTorqueInput extends Groove {
  material: Pick<Material, 'kc11' | 'mc' | 'friction'>;
  flutes: number;
  /** Middle of the chamfer class, threads. */
  threads: number;
  /** Full thread in metal and thickness of metal the chamfer meets, mm. */
  fullThread: number;
  thickness: number;
}

/**
 * Cutting torque of a sharp straight-flute tap with the whole chamfer in metal, N·m, and no rubbing
 * behind it; specific force at the reference chamfer. Lengths mm. Source: `tap-chip-model`.
 */
export function wholeTorque(
  input: Pick<CuttingTorqueInput, 'major' | 'pitch' | 'hole' | 'material' | 'flutes'>,
): number {
  const { area, centroidRadius } = grooveGeometry(input);
  const { chip } = toothGeometry(input, REFERENCE_CHAMFER, input.flutes);
  return (specificForce(input.material, chip) * area * centroidRadius) / 1000;
}

/**
 * Length of full thread that rubs at the peak, mm: all of it where the nose stops inside the metal (blind,
 * `thickness` Infinity, or a thread that ends inside); right through, the thickness less the chamfer.
 * Lengths mm. Source: derived.
 */
export function guidingLength(
  input: Pick<CuttingTorqueInput, 'fullThread' | 'thickness' | 'threads' | 'pitch'>,
): number {
  const { fullThread, thickness, threads, pitch } = input;
  const through = fullThread >= thickness - 1e-9;
  return through ? Math.max(0, thickness - threads * pitch) : fullThread;
}

/**
 * Peak torque of a sharp straight-flute tap, N·m: cutting plus friction of the guiding threads.
 * The specific force is taken at a five-pitch chamfer, because theory and published factors
 * disagree on how the chamfer's length moves it; the band covers both.
 * All lengths mm. Sources: `tap-chip-model`, `tapping-by-cutting` for the need of a friction term.
 */
export function peakTorque(input: CuttingTorqueInput): number {
  const whole = wholeTorque(input);
  const cutting = whole * engagedShare(input, input.threads, input.thickness);
  return cutting * (1 + (input.material.friction * guidingLength(input)) / input.major);
}

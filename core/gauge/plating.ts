/**
 * What a coating does to a tapped hole: how much larger to tap so that the coated thread passes.
 *
 * On 60 degree flanks a layer of thickness t moves the pitch diameter by 2t / sin 30° = 4t, and the minor and
 * major diameters by 2t. Worked out from the profile; agrees with the handbook's rule of four.
 */

import type { ThreadLimits } from '../limits/limits';
import { answer, refuse, type Outcome } from '../outcome';
import { mmToInch, type Range } from '../units';

/** How many times the thickness a diameter moves. Derived: 2 / sin 30° on the flanks, 2 on crest and root. */
export const PLATING_FACTOR = { pitch: 4, minor: 2, major: 2 } as const;

/**
 * When the class limits hold. `after`: on the coated thread, as ASME B1.1 has it for 2B and 3B unless the drawing
 * says otherwise. `before`: on the bare thread, as ISO 965-1 has it; coated it must still let a GO of the
 * H basic size in. Both from memory.
 */
export type PlatingRule = 'after' | 'before';

export const PLATING_PROBLEM_CODES = [
  /** Thickness below 0, or the least larger than the most. */
  'plating-thickness',
  /** The coating spreads more than the class: no bare thread passes both at its thinnest and its thickest. */
  'plating-no-room',
] as const;

export interface PlatedWindow {
  rule: PlatingRule;
  unit: 'mm' | 'in';
  /** Diameters of the bare thread, in `unit`. */
  pitch: Range;
  minor: { min: number; max?: number };
  majorMin: number;
  /** Half-thousandths of an inch (tap limit numbers) that the thickest layer costs, rounded up. */
  extraSteps: number;
}

/** Half a thousandth of an inch, mm: one tap limit number. */
const STEP_MM = 0.0127;

/** The rule a thread's own standard uses. From memory. Sources: ASME B1.1, ISO 965-1; no unit. */
export function usualPlatingRule(limits: Pick<ThreadLimits, 'unit'>): PlatingRule {
  return limits.unit === 'in' ? 'after' : 'before';
}

interface Layer {
  thin: number;
  thick: number;
}

/** Bare diameters that come right once coated. */
function windowAfter(limits: ThreadLimits, { thin, thick }: Layer) {
  const { pitch, minor } = PLATING_FACTOR;
  return {
    pitch: { min: limits.pitch.min + pitch * thick, max: limits.pitch.max + pitch * thin },
    minor: {
      min: limits.minor.min + minor * thick,
      ...(limits.minor.max === undefined ? {} : { max: limits.minor.max + minor * thin }),
    },
  };
}

/** Bare diameters in class that still clear the basic size once coated. */
function windowBefore(limits: ThreadLimits, basic: BasicSizes, { thick }: Layer) {
  const { pitch, minor } = PLATING_FACTOR;
  return {
    pitch: {
      min: Math.max(limits.pitch.min, basic.pitch + pitch * thick),
      max: limits.pitch.max,
    },
    minor: {
      ...limits.minor,
      min: Math.max(limits.minor.min, basic.minor + minor * thick),
    },
  };
}

export interface BasicSizes {
  major: number;
  pitch: number;
  minor: number;
}

/**
 * The window for the bare thread before coating.
 *
 * @param limits of the class; @param basic sizes of the H position in the unit of the limits (for 2B, 3B and H
 *   classes these are the least limits themselves);
 * @param thickness least and most growth of each surface, mm, 0 or more. Hard anodise grows about half its thickness.
 * @returns diameters in the unit of `limits`. Refuses `plating-thickness`, `plating-no-room`.
 *   Sources: derived; the rules from memory of ASME B1.1 and ISO 965-1.
 */
export function beforePlating(
  limits: ThreadLimits,
  thickness: readonly [min: number, max: number],
  rule: PlatingRule = usualPlatingRule(limits),
  basic: BasicSizes = {
    major: limits.majorMin,
    pitch: limits.pitch.min,
    minor: limits.minor.min,
  },
): Outcome<PlatedWindow> {
  const [thinMm, thickMm] = thickness;
  if (!(thinMm >= 0 && thickMm >= thinMm && Number.isFinite(thickMm))) {
    return refuse({ code: 'plating-thickness', field: 'thickness' });
  }
  const own = (mm: number) => (limits.unit === 'in' ? mmToInch(mm) : mm);
  const layer = { thin: own(thinMm), thick: own(thickMm) };
  const window = rule === 'after' ? windowAfter(limits, layer) : windowBefore(limits, basic, layer);
  const { pitch, minor } = window;
  if (pitch.min > pitch.max || minor.min > (minor.max ?? Infinity)) {
    return refuse({ code: 'plating-no-room', field: 'thickness' });
  }
  const grown = PLATING_FACTOR.major * layer.thick;
  return answer({
    rule,
    unit: limits.unit,
    pitch,
    minor,
    majorMin:
      rule === 'after' ? limits.majorMin + grown : Math.max(limits.majorMin, basic.major + grown),
    extraSteps: Math.max(0, Math.ceil((PLATING_FACTOR.pitch * thickMm) / STEP_MM - 1e-9)),
  });
}

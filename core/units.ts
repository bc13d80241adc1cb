/**
 * Exact conversion between inch and millimetre, shop rounding, and decimals as people type them.
 * Every rounding says its direction and its step; none of them can be flipped by a binary float.
 */

/** One inch is 25.4 mm, exactly (since 1959). */
export const MM_PER_INCH = 25.4;

/** Dust below this many steps cannot decide a rounding: far above float error, far below any real digit. */
const DUST = 1e-7;

/** How many of `step` make one, when the step is a decimal such as 0.001 (1000); otherwise 0. */
function stepsPerUnit(step: number): number {
  const inverse = Math.round(1 / step);
  return inverse > 0 && Math.abs(inverse * step - 1) < 1e-12 ? inverse : 0;
}

function toStep(value: number, step: number, direction: (steps: number) => number): number {
  const perUnit = stepsPerUnit(step);
  const steps = direction(perUnit > 0 ? value * perUnit : value / step);
  return perUnit > 0 ? steps / perUnit : steps * step;
}

/**
 * Rounds to the nearest multiple of `step`, halves away from zero, as standards and drawings do.
 * 1.0005 to 0.001 gives 1.001 although the nearest binary float lies just below the half.
 * `value` and `step` in the same unit, `step` > 0.
 */
export function roundHalfUp(value: number, step: number): number {
  const away = (steps: number) => Math.sign(steps) * Math.floor(Math.abs(steps) + 0.5 + DUST) || 0;
  return toStep(value, step, away);
}

/** Rounds up to a multiple of `step`; a value that is one already stays. Same unit, `step` > 0. */
export function roundUp(value: number, step: number): number {
  return toStep(value, step, (steps) => Math.ceil(steps - DUST) || 0);
}

/** Rounds down to a multiple of `step`; a value that is one already stays. Same unit, `step` > 0. */
export function roundDown(value: number, step: number): number {
  return toStep(value, step, (steps) => Math.floor(steps + DUST) || 0);
}

/** Rounds to a number of decimals, halves away from zero. */
export function roundDecimals(value: number, decimals: number): number {
  return roundHalfUp(value, 10 ** -decimals);
}

/** Millimetres of a length in inches. Decimal inches give decimal millimetres, free of float dust. */
export function inchToMm(inches: number): number {
  return roundHalfUp(inches * MM_PER_INCH, 1e-10);
}

/** Inches of a length in millimetres. */
export function mmToInch(millimetres: number): number {
  return millimetres / MM_PER_INCH;
}

/** Preferred numbers R40 over one decade (ISO 3, rounded as ISO 965-1 uses them). */
// prettier-ignore
export const R40 = [
  1, 1.06, 1.12, 1.18, 1.25, 1.32, 1.4, 1.5, 1.6, 1.7, 1.8, 1.9, 2, 2.12, 2.24, 2.36, 2.5, 2.65, 2.8,
  3, 3.15, 3.35, 3.55, 3.75, 4, 4.25, 4.5, 4.75, 5, 5.3, 5.6, 6, 6.3, 6.7, 7.1, 7.5, 8, 8.5, 9, 9.5,
] as const;

/**
 * The nearest preferred number of the R40 series; of two equally near the larger.
 * `value` > 0 in any unit.
 */
export function roundToR40(value: number): number {
  const decade = 10 ** Math.floor(Math.log10(value) + 1e-12);
  const scaled = value / decade;
  let nearest = 10;
  for (const candidate of [...R40].reverse()) {
    if (Math.abs(candidate - scaled) < Math.abs(nearest - scaled) - 1e-12) nearest = candidate;
  }
  return roundHalfUp(nearest * decade, decade / 100);
}

/**
 * Reads a decimal as typed, with point or comma: `8.5`, `8,5`, `.5`, `12`. No unit, sign or exponent.
 * Anything else gives null.
 */
export function parseDecimal(text: string): number | null {
  const typed = text.trim();
  if (!/^(\d+([.,]\d*)?|[.,]\d+)$/.test(typed)) return null;
  const value = Number(typed.replace(',', '.'));
  return Number.isFinite(value) ? value : null;
}

/** From one value to another, ends included; the unit is said where it is used. */
export interface Range {
  min: number;
  max: number;
}

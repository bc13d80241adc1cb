/**
 * What each style of tap does to torque, strength and chip.
 *
 * Torque factors: relative to a sharp straight-flute tap with a five-pitch chamfer in the same hole
 * (one tool maker's test and table, which disagree by 15 %). Web: common practice, measure yours.
 */

import type { Spread } from '../spread';
import type { TapProcess, TapStyle } from './tap';
import { webSpread } from './web';

export interface StyleFacts {
  process: TapProcess;
  /** Lean of the cutting face as seen on a right-hand tap, degrees; see `chips/direction`. */
  lean: number;
  /** Factor on torque: low, middle, high. */
  torque: { low: number; middle: number; high: number };
}

export const STYLES: Record<TapStyle, StyleFacts> = {
  'spiral-point': {
    process: 'cut',
    lean: -10,
    torque: { low: 0.6, middle: 0.68, high: 0.76 },
  },
  'spiral-flute': {
    process: 'cut',
    lean: 35,
    torque: { low: 0.7, middle: 0.85, high: 1 },
  },
  'straight-flute': { process: 'cut', lean: 0, torque: { low: 1, middle: 1, high: 1 } },
  form: { process: 'form', lean: 0, torque: { low: 1.5, middle: 2.5, high: 3 } },
  'thread-mill': { process: 'mill', lean: 0, torque: { low: 0, middle: 0, high: 0 } },
};

/** Torque of a worn tap over a sharp one, at the usual time to change it (1.3 to 2). Common practice. */
export const WORN = 1.65;

/** From least to most that wear makes of a sharp torque. Common practice. */
export const WEAR: Spread = { low: 1.3, likely: WORN, high: 2 };

/** Half-width of the band on every predicted cutting torque, as a factor. Source: `tap-chip-model`. */
export const TORQUE_BAND = 1.4;

/**
 * Typical web of a tap, as a share of its major diameter (form tap: of its minor diameter).
 * `flutes`: of the straight-flute tap. Source: common practice.
 */
export function typicalWeb(style: TapStyle, major: number, minor: number, flutes: number): number {
  const twisted = style === 'thread-mill' ? 'straight-flute' : style;
  return webSpread(twisted, major, minor, flutes).likely;
}

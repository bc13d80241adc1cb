/**
 * Lengths of stock taps, in the units of their standards: DIN 371, 374 and 376 in mm, ASME B94.9 in inches.
 * `mark` says how the row reached us: `catalogue`: printed in tool catalogues, `handbook`: Machinery's
 * Handbook 31st ed. table 6, p. 986, `memory`: recalled, not re-read. Where one figure of a row stands on weaker
 * ground than the others it has a mark of its own.
 */

export type LengthMark = 'catalogue' | 'handbook' | 'memory';

export interface FullShankRow {
  /** Overall length and diameter of the shank. */
  overall: number;
  shank: number;
  mark: LengthMark;
  /** Tip to the end of thread and neck, where the full-size shank begins. */
  toShank: number;
  toShankMark: LengthMark;
}

export interface ReducedShankRow {
  overall: number;
  shank: number;
  mark: LengthMark;
}

/** DIN 371, coarse threads, by size: full-size shank behind a neck (M2: no neck, its thread alone). mm. */
// prettier-ignore
export const DIN_371: Readonly<Record<string, FullShankRow>> = {
  '2': { overall: 45, shank: 2.8, mark: 'catalogue', toShank: 8, toShankMark: 'catalogue' },
  '2.5': { overall: 50, shank: 2.8, mark: 'memory', toShank: 15, toShankMark: 'catalogue' },
  '3': { overall: 56, shank: 3.5, mark: 'catalogue', toShank: 18, toShankMark: 'catalogue' },
  '3.5': { overall: 56, shank: 4, mark: 'memory', toShank: 20, toShankMark: 'memory' },
  '4': { overall: 63, shank: 4.5, mark: 'catalogue', toShank: 21, toShankMark: 'catalogue' },
  '5': { overall: 70, shank: 6, mark: 'catalogue', toShank: 25, toShankMark: 'catalogue' },
  '6': { overall: 80, shank: 6, mark: 'catalogue', toShank: 30, toShankMark: 'catalogue' },
  '7': { overall: 80, shank: 7, mark: 'memory', toShank: 30, toShankMark: 'memory' },
  '8': { overall: 90, shank: 8, mark: 'catalogue', toShank: 35, toShankMark: 'catalogue' },
  '10': { overall: 100, shank: 10, mark: 'catalogue', toShank: 39, toShankMark: 'catalogue' },
};

/** DIN 376, coarse threads, by size: reduced shank; M4 to M10 in the lengths of DIN 371. mm. */
// prettier-ignore
export const DIN_376: Readonly<Record<string, ReducedShankRow>> = {
  '4': { overall: 63, shank: 2.8, mark: 'memory' },
  '5': { overall: 70, shank: 3.5, mark: 'memory' },
  '6': { overall: 80, shank: 4.5, mark: 'memory' },
  '8': { overall: 90, shank: 6, mark: 'memory' },
  '10': { overall: 100, shank: 7, mark: 'memory' },
  '12': { overall: 110, shank: 9, mark: 'catalogue' },
  '14': { overall: 110, shank: 11, mark: 'catalogue' },
  '16': { overall: 110, shank: 12, mark: 'catalogue' },
  '18': { overall: 125, shank: 14, mark: 'catalogue' },
  '20': { overall: 140, shank: 16, mark: 'memory' },
  '22': { overall: 140, shank: 18, mark: 'memory' },
  '24': { overall: 160, shank: 18, mark: 'memory' },
  '27': { overall: 160, shank: 20, mark: 'memory' },
  '30': { overall: 180, shank: 22, mark: 'memory' },
  '36': { overall: 200, shank: 28, mark: 'memory' },
};

/** DIN 374, fine threads, by size and pitch: reduced shank. mm. */
export const DIN_374: Readonly<Record<string, ReducedShankRow>> = {
  '8x1': { overall: 90, shank: 6, mark: 'catalogue' },
  '10x1': { overall: 90, shank: 7, mark: 'catalogue' },
  '10x1.25': { overall: 100, shank: 7, mark: 'catalogue' },
  '12x1.5': { overall: 100, shank: 9, mark: 'catalogue' },
  '14x1.5': { overall: 100, shank: 11, mark: 'catalogue' },
  '16x1.5': { overall: 100, shank: 12, mark: 'catalogue' },
};

/**
 * ASME B94.9 to 3/8, by size: full-size shank; a neck is optional, so the thread alone is what reaches. Inches.
 * Lengths of thread are all from memory.
 */
// prettier-ignore
export const B94_9_FULL: Readonly<Record<string, FullShankRow>> = {
  '#0': { overall: 1.63, shank: 0.141, mark: 'memory', toShank: 0.31, toShankMark: 'memory' },
  '#1': { overall: 1.69, shank: 0.141, mark: 'memory', toShank: 0.38, toShankMark: 'memory' },
  '#2': { overall: 1.75, shank: 0.141, mark: 'memory', toShank: 0.44, toShankMark: 'memory' },
  '#3': { overall: 1.81, shank: 0.141, mark: 'memory', toShank: 0.5, toShankMark: 'memory' },
  '#4': { overall: 1.88, shank: 0.141, mark: 'handbook', toShank: 0.56, toShankMark: 'memory' },
  '#5': { overall: 1.94, shank: 0.141, mark: 'handbook', toShank: 0.63, toShankMark: 'memory' },
  '#6': { overall: 2, shank: 0.141, mark: 'handbook', toShank: 0.69, toShankMark: 'memory' },
  '#8': { overall: 2.13, shank: 0.168, mark: 'handbook', toShank: 0.75, toShankMark: 'memory' },
  '#10': { overall: 2.38, shank: 0.194, mark: 'handbook', toShank: 0.88, toShankMark: 'memory' },
  '#12': { overall: 2.38, shank: 0.22, mark: 'handbook', toShank: 0.94, toShankMark: 'memory' },
  '1/4': { overall: 2.5, shank: 0.255, mark: 'handbook', toShank: 1, toShankMark: 'memory' },
  '5/16': { overall: 2.72, shank: 0.318, mark: 'handbook', toShank: 1.13, toShankMark: 'memory' },
  '3/8': { overall: 2.94, shank: 0.381, mark: 'handbook', toShank: 1.25, toShankMark: 'memory' },
};

/** ASME B94.9 from 7/16, by size: reduced shank. Inches. */
export const B94_9_REDUCED: Readonly<Record<string, ReducedShankRow>> = {
  '7/16': { overall: 3.16, shank: 0.323, mark: 'handbook' },
  '1/2': { overall: 3.38, shank: 0.367, mark: 'handbook' },
  '9/16': { overall: 3.59, shank: 0.429, mark: 'handbook' },
  '5/8': { overall: 3.81, shank: 0.48, mark: 'handbook' },
  '11/16': { overall: 4.03, shank: 0.542, mark: 'handbook' },
  '3/4': { overall: 4.25, shank: 0.59, mark: 'handbook' },
  '13/16': { overall: 4.47, shank: 0.652, mark: 'handbook' },
  '7/8': { overall: 4.69, shank: 0.697, mark: 'handbook' },
  '15/16': { overall: 4.91, shank: 0.76, mark: 'handbook' },
  '1': { overall: 5.13, shank: 0.8, mark: 'handbook' },
  '1-1/8': { overall: 5.44, shank: 0.896, mark: 'memory' },
  '1-1/4': { overall: 5.75, shank: 1.021, mark: 'memory' },
  '1-3/8': { overall: 6.06, shank: 1.108, mark: 'memory' },
  '1-1/2': { overall: 6.38, shank: 1.233, mark: 'memory' },
};

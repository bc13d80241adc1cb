/** Chamfer (lead) classes of taps: ranges of thread counts, never one number. */

export const CHAMFER_CLASSES = ['taper', 'plug', 'semi-bottoming', 'bottoming'] as const;

export type ChamferClass = (typeof CHAMFER_CLASSES)[number];

export interface Chamfer {
  class: ChamferClass;
  /** ISO 8830 / DIN 2197 letter of the like form: A, B, C, D, E, F. */
  form: string;
  /** Length of the chamfer, in threads (pitches). */
  threads: { min: number; max: number };
}

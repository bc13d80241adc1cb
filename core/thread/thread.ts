/** What a thread is, once the drawing's words have been read. */

export type ThreadSystem = 'metric' | 'unified' | 'pipe';

/** Profile letters of the standards. */
export type ThreadForm =
  'M' | 'MJ' | 'UN' | 'UNJ' | 'G' | 'Rp' | 'Rc' | 'NPT' | 'NPTF' | 'NPSM' | 'NPSF';

export type Hand = 'right' | 'left';

export interface Thread {
  /** Canonical spelling, e.g. `M8x1.25-6H`, `1/4-20 UNC-2B`, `M10x1-6H-LH`. */
  designation: string;
  system: ThreadSystem;
  form: ThreadForm;
  /** Basic major diameter of the thread, mm. Of a wire-insert hole: of the screw that will go in. */
  diameter: number;
  /** Pitch, mm. */
  pitch: number;
  /** The inch sizes as the standard states them (exact; mm is computed from these). */
  inch?: { size: string; diameter: number; tpi: number };
  /** `coarse`, `fine`, `UNC`, `UNF`, `UNEF`, `12-UN`, `UNS`, `NPT`, `non-standard`, ... */
  series: string;
  /** True when the pair of size and pitch stands in its standard's list. */
  standard: boolean;
  /** Tolerance class as the drawing wrote it or the usual one: `6H`, `4H5H`, `2B`; empty for pipe. */
  class: string;
  /** False when the class was assumed rather than typed. */
  classGiven: boolean;
  hand: Hand;
  /** True for the hole of a wire thread insert (EG metric, STI unified). */
  insert: boolean;
  /** Length of engagement group as typed: S, N or L; or a length in mm. */
  engagement?: 'S' | 'N' | 'L' | number;
}

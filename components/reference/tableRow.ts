/** A thread as one row of a table. */
export interface TableRow {
  thread: string;
  class: string;
  unit: 'mm' | 'in';
  minorMin: number | null;
  minorMax: number | null;
  pitchMin: number | null;
  pitchMax: number | null;
  majorMin: number | null;
  basis: string;
  drill: string;
  drillMm: number | null;
  percentShop: number | null;
  percentIso: number | null;
  verdict: string;
  /** What the printed lists give, and how it stands in this class. */
  listed: string;
  listedVerdict: string;
  gaugeLengthMm: number | null;
}

/** The shape of a published table beside what the core gives. The tests hold it, the page shows it. */

import type { SourceId } from '../../../core/sources';

export interface Row {
  /** What the row is about, as the source names it. */
  of: string;
  /** Which of its numbers; empty where the table has one only. */
  what: string;
  printed: number;
  here: number;
  /** Largest difference that passes, in the same unit. 0: to the last printed digit. */
  within: number;
}

export interface PublishedTable {
  id: string;
  title: string;
  source: SourceId;
  /** Where the printed values were read, and which of them are recalled. */
  read: string;
  unit: 'mm' | 'in' | 'µm' | '%' | 'in²' | 'in²/in' | 'N·m';
  /** Digits after the point, as the source prints them. */
  places: number;
  /** What the tolerance stands for. */
  tolerance: string;
  rows: Row[];
}

export const INCH = 25.4;
export const EXACT = 'to the last printed digit';

export const round = (value: number, places: number): number => Number(value.toFixed(places));

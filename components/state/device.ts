/** The shelf that every page shares: the reader's unit of length, and the torques read on machines. */

import type { Shelf } from './shelf';
import { openVersioned } from './versioned';

const VERSION = 1;

export interface Kept {
  version: number;
  /** Unit of length the reader chose. */
  unit?: 'mm' | 'in';
  /** Torques read on machines; `readings.ts` knows their shape and leaves alone what it cannot read. */
  readings?: unknown[];
}

function isKept(data: object): data is Kept {
  const { unit, readings } = data as Record<string, unknown>;
  const unitKnown = unit === undefined || unit === 'mm' || unit === 'in';
  return unitKnown && (readings === undefined || Array.isArray(readings));
}

export const DEVICE: Shelf<Kept> = {
  key: 'tapped-hole-handbook',
  empty: { version: VERSION },
  read(text) {
    const opened = openVersioned(text, VERSION);
    if (opened.state !== 'read') return opened;
    return isKept(opened.data) ? { state: 'read', contents: opened.data } : { state: 'damaged' };
  },
  write: (kept) => JSON.stringify(kept),
};

/**
 * Settles which unit a calculator's page is in: the address first, for its bare numbers mean
 * nothing without it; then the reader's last choice; then millimetres.
 */

import { useEffect, useRef } from 'preact/hooks';
import type { Unit } from '../words';
import { onUnit, rememberedUnit, showUnit, useUnit } from './units';

export interface PageUnit {
  /** `units` of the address: `mm`, `in` or empty. */
  fromAddress: string;
  /** True when the address carries any input at all. */
  started: boolean;
  /** Counts the times the address was read. */
  arrivals: number;
  /** The reader turned the switch: restate what was typed. */
  onChosen: (unit: Unit) => void;
}

export function usePageUnit({ fromAddress, started, arrivals, onChosen }: PageUnit): Unit {
  const unit = useUnit();
  const chosen = useRef(onChosen);
  chosen.current = onChosen;

  useEffect(() => {
    if (arrivals === 0) return;
    if (fromAddress === 'in' || fromAddress === 'mm') showUnit(fromAddress);
    else showUnit(started ? 'mm' : (rememberedUnit() ?? 'mm'));
    // Only what arrives from the address may turn the page: later edits must not.
  }, [arrivals]);

  useEffect(() => onUnit((next, byReader) => byReader && chosen.current(next)), []);
  return unit;
}

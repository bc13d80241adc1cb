/**
 * Millimetres or inches, one choice for the whole page. The switch in the header and the
 * calculators are islands apart: they meet here.
 */

import { useEffect, useRef, useState } from 'preact/hooks';
import type { Unit } from '../words';
import { DEVICE } from './device';
import { browserStore, changeShelf, openShelf, type Outcome } from './shelf';

export const UNITS: readonly Unit[] = ['mm', 'in'];

type Listener = (unit: Unit, chosen: boolean) => void;

let current: Unit = 'mm';
const listeners = new Set<Listener>();

function change(unit: Unit, chosen: boolean): void {
  if (unit === current) return;
  current = unit;
  for (const listener of listeners) listener(unit, chosen);
}

/** Shows this page in a unit, because its address says so. Not remembered. */
function showUnit(unit: Unit): void {
  change(unit, false);
}

/** The reader chose a unit: shown, and remembered where the device takes it. */
export function chooseUnit(unit: Unit): Outcome {
  const outcome = changeShelf(browserStore(), DEVICE, (kept) => ({ ...kept, unit }));
  change(unit, true);
  return outcome;
}

function rememberedUnit(): Unit | undefined {
  return openShelf(browserStore(), DEVICE).contents.unit;
}

/**
 * Settles the unit of a page that was just opened: its address first, for its bare numbers mean
 * nothing without it, and without a word there they are millimetres; on a blank page the
 * reader's last choice.
 */
export function openInUnit(fromAddress: string, started: boolean): void {
  if (fromAddress === 'in' || fromAddress === 'mm') showUnit(fromAddress);
  else showUnit(started ? 'mm' : (rememberedUnit() ?? 'mm'));
}

/** Hears of changes; `chosen` tells a reader's choice from an address. Returns the way to stop. */
function onUnit(listener: Listener): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

/** The unit to show. The first render is always mm, as the server's was. */
export function useUnit(): Unit {
  const [unit, setUnit] = useState<Unit>('mm');
  useEffect(() => {
    setUnit(current);
    return onUnit(setUnit);
  }, []);
  return unit;
}

/** Calls back when the reader turns the switch, so that what was typed can be restated. */
export function useUnitChosen(onChosen: (unit: Unit) => void): void {
  const latest = useRef(onChosen);
  latest.current = onChosen;
  useEffect(() => onUnit((unit, chosen) => chosen && latest.current(unit)), []);
}

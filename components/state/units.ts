/**
 * Millimetres or inches, one choice for the whole page. The switch in the header and the
 * calculators are islands apart: they meet here.
 */

import { useEffect, useState } from 'preact/hooks';
import type { Unit } from '../words';
import { deviceStore, keep, readKept } from './device';

export const UNITS: readonly Unit[] = ['mm', 'in'];

type Listener = (unit: Unit, chosen: boolean) => void;

let current: Unit = 'mm';
const listeners = new Set<Listener>();

function change(unit: Unit, chosen: boolean): void {
  if (unit === current) return;
  current = unit;
  for (const listener of listeners) listener(unit, chosen);
}

export function currentUnit(): Unit {
  return current;
}

/** Shows this page in a unit, because its address says so. Not remembered. */
export function showUnit(unit: Unit): void {
  change(unit, false);
}

/** The reader chose a unit: shown and remembered. */
export function chooseUnit(unit: Unit): void {
  const store = deviceStore();
  if (store) keep(store, { unit });
  change(unit, true);
}

/** The unit chosen on an earlier visit, if any. */
export function rememberedUnit(): Unit | undefined {
  const store = deviceStore();
  return store ? readKept(store).unit : undefined;
}

/** Hears of changes; `chosen` tells a reader's choice from an address. Returns the way to stop. */
export function onUnit(listener: Listener): () => void {
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

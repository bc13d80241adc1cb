/** Limits as their standard writes them, and lengths in the unit a thread is drawn in. */

import type { ThreadLimits } from '../../core/limits/limits';
import type { Thread } from '../../core/thread/thread';
import { inchToMm, mmToInch, type Range } from '../../core/units';
import { decimals, lengthNumber, limitNumber, type Unit } from '../words';

const PLACES: Record<Unit, number> = { mm: 3, in: 4 };

/** The unit that a thread's drawing uses: inches for Unified and American pipe threads. */
export function ownUnit(thread: Pick<Thread, 'system' | 'form'>): Unit {
  return thread.system === 'unified' || thread.form.startsWith('NP') ? 'in' : 'mm';
}

/** A limit given in `from`, shown in `to` without its unit: mm to 3 decimals, inches to 4. */
export function limitIn(value: number, from: Unit, to: Unit = from): string {
  const shown = from === to ? value : to === 'in' ? mmToInch(value) : inchToMm(value);
  return decimals(shown, PLACES[to], PLACES[to]);
}

/** `0.1960–0.2070`, or from the least up where the largest is not known. */
export function limitPair(
  range: { min: number; max?: number },
  from: Unit,
  to: Unit,
  open: string,
): string {
  const min = limitIn(range.min, from, to);
  return range.max === undefined ? `${min}, ${open}` : `${min}–${limitIn(range.max, from, to)}`;
}

/** Limits of a diameter with their unit. */
export function limitsText(limits: ThreadLimits, which: 'pitch' | 'minor', unit: Unit): string {
  const range = limits[which];
  const max = range.max === undefined ? '' : `–${limitIn(range.max, limits.unit, unit)}`;
  return `${limitIn(range.min, limits.unit, unit)}${max} ${unit}`;
}

/** A window in mm as two limits with their unit. */
export function windowText({ min, max }: Range, unit: Unit): string {
  return `${limitNumber(min, unit)}–${limitNumber(max, unit)} ${unit}`;
}

/** Two depths with one unit: `13.0–15.7`. */
export function depthPair({ min, max }: Range, unit: Unit): string {
  return `${lengthNumber(min, unit)}–${lengthNumber(max, unit)}`;
}

/** Two lengths known only by estimate: mm to 1 decimal, inches to 2. */
export function estimatePair({ min, max }: Range, unit: Unit): string {
  const show = (mm: number) => (unit === 'mm' ? decimals(mm, 1, 1) : decimals(mmToInch(mm), 2, 2));
  return `${show(min)}–${show(max)}`;
}

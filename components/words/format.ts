/**
 * Numbers as the shop writes them. Lengths come in mm and are shown in the reader's unit;
 * every function but those named `…Number` puts the unit beside the number.
 */

import type { DrillChoice } from '../../core/drill/drill';
import { mmToInch, roundDecimals } from '../../core/units';
import { MEASURED } from './en/units';
import { say } from './say';

/** The unit the reader chose for lengths. */
export type Unit = 'mm' | 'in';

/** Foot-pounds in a newton metre, and pounds in a newton. */
const LBF_FT_PER_NM = 0.737562149;
const LBF_PER_NEWTON = 0.224808943;
const MINUS = '−';

/** A number with at most `most` decimals and at least `least`, true minus, never “-0”. */
export function decimals(value: number, most: number, least = 0): string {
  let text = roundDecimals(Math.abs(value), most).toFixed(most);
  while (text.includes('.') && text.endsWith('0') && text.length - text.indexOf('.') - 1 > least) {
    text = text.slice(0, -1);
  }
  if (text.endsWith('.')) text = text.slice(0, -1);
  return value < 0 && Number(text) !== 0 ? MINUS + text : text;
}

/** A number to so many significant figures, in plain digits: 0.11, 4.0, 144 → 140. */
export function significant(value: number, figures: number): string {
  if (value === 0) return '0';
  const exponent = Math.floor(Math.log10(Math.abs(Number(value.toPrecision(figures)))));
  const step = 10 ** (exponent - figures + 1);
  const places = Math.max(0, figures - 1 - exponent);
  return decimals(Math.round(value / step) * step, places, places);
}

/** A depth or length without its unit: mm to 2 decimals, inches to 3. */
export function lengthNumber(mm: number, unit: Unit): string {
  return unit === 'mm' ? decimals(mm, 2, 1) : decimals(mmToInch(mm), 3, 3);
}

/** A depth or length: `19.75 mm`, `0.778 in`. */
export function length(mm: number, unit: Unit): string {
  return `${lengthNumber(mm, unit)} ${unit}`;
}

/** A length known only roughly, to 2 figures: `41 mm`, `1.6 in`. Say “about” before it. */
export function roughLength(mm: number, unit: Unit): string {
  const value = unit === 'mm' ? mm : mmToInch(mm);
  return `${significant(value, 2)} ${unit}`;
}

/** A length in both units, for print and prose that cannot be switched: `21.0 mm (0.827 in)`. */
export function bothLengths(mm: number, first: Unit = 'mm'): string {
  return `${length(mm, first)} (${length(mm, first === 'mm' ? 'in' : 'mm')})`;
}

/** A limit of size without its unit: mm to 3 decimals, inches to 4. */
export function limitNumber(mm: number, unit: Unit): string {
  return unit === 'mm' ? decimals(mm, 3, 3) : decimals(mmToInch(mm), 4, 4);
}

/** A limit of size given in mm: `6.912 mm`, `0.2721 in`. */
export function limitLength(mm: number, unit: Unit): string {
  return `${limitNumber(mm, unit)} ${unit}`;
}

/** A limit in both units, for print and prose that cannot be switched: `5.558 mm (0.2188 in)`. */
export function bothLimits(mm: number, first: Unit = 'mm'): string {
  return `${limitLength(mm, first)} (${limitLength(mm, first === 'mm' ? 'in' : 'mm')})`;
}

/** Two limits or two lengths as a range: `6.647–6.912 mm`. */
export function limitRange(min: number, max: number, unit: Unit): string {
  return `${limitNumber(min, unit)}–${limitNumber(max, unit)} ${unit}`;
}

/** Torque given in N·m, to 2 figures. With inches the lbf·ft stand beside it. */
export function torque(newtonMetres: number, unit: Unit = 'mm'): string {
  const metric = `${significant(newtonMetres, 2)} N·m`;
  return unit === 'mm'
    ? metric
    : `${metric} (${significant(newtonMetres * LBF_FT_PER_NM, 2)} lbf·ft)`;
}

/** A band of torque, N·m: `2.9–5.6 N·m`. */
export function torqueBand(low: number, high: number, unit: Unit = 'mm'): string {
  const metric = `${significant(low, 2)}–${significant(high, 2)} N·m`;
  if (unit === 'mm') return metric;
  const [lowFt, highFt] = [low * LBF_FT_PER_NM, high * LBF_FT_PER_NM];
  return `${metric} (${significant(lowFt, 2)}–${significant(highFt, 2)} lbf·ft)`;
}

/** A force given in N, to 2 figures. With inches the lbf stand beside it. */
export function force(newtons: number, unit: Unit = 'mm'): string {
  const metric = `${significant(newtons, 2)} N`;
  return unit === 'mm' ? metric : `${metric} (${significant(newtons * LBF_PER_NEWTON, 2)} lbf)`;
}

/** A share given as a fraction: 0.25 reads `25 %`. */
export function percent(fraction: number): string {
  return `${decimals(fraction * 100, 0)} %`;
}

/** A percentage of thread, given in percent: 77.0 reads `77 %`. Always say its base beside it. */
export function threadPercent(value: number): string {
  return `${decimals(value, 0)} %`;
}

/** Spindle speed, rev/min. */
export function rpm(value: number): string {
  return `${decimals(value, 0)} rev/min`;
}

/** Feed given in mm per minute: `250.0 mm/min`, `9.843 in/min`. */
export function feed(mmPerMinute: number, unit: Unit): string {
  return unit === 'mm'
    ? `${decimals(mmPerMinute, 2, 1)} mm/min`
    : `${decimals(mmToInch(mmPerMinute), 3, 3)} in/min`;
}

/** Feed given in mm per revolution, with the digits a control needs. */
export function feedPerRev(mmPerRev: number, unit: Unit): string {
  return unit === 'mm'
    ? `${decimals(mmPerRev, 4)} mm/rev`
    : `${decimals(mmToInch(mmPerRev), 5, 4)} in/rev`;
}

/** Cutting time in seconds: `5.8 s`. */
export function seconds(value: number): string {
  return value < 10 ? `${decimals(value, 1, 1)} s` : `${decimals(value, 0)} s`;
}

/** A range of chamfer threads: `2–3`, `3.5–5.5`. */
export function threadRange(threads: { min: number; max: number }): string {
  return `${decimals(threads.min, 1)}–${decimals(threads.max, 1)}`;
}

const FRACTIONS: Record<number, string> = { 0.25: '¼', 0.5: '½', 0.75: '¾' };

/** Parts of a turn as hands know them: `½–1`, `¼–½`. */
export function turnRange({ min, max }: { min: number; max: number }): string {
  const part = (turns: number) => FRACTIONS[turns] ?? decimals(turns, 2);
  return `${part(min)}–${part(max)}`;
}

/** What stands on the drill: `6.8 mm`, `27/64 in`, `#7`, `letter F`. */
export function drillName(drill: Pick<DrillChoice, 'name' | 'series'>): string {
  if (drill.series === 'metric') return `${drill.name} mm`;
  if (drill.series === 'fraction') return `${drill.name} in`;
  return drill.series === 'letter' ? say(MEASURED.letter, { name: drill.name }) : drill.name;
}

/**
 * Fills a sentence of the words files with the core's numbers.
 *
 * A template names what it wants and how to show it: `needs {needed:length}`.
 * A part in square brackets is dropped whole when a number inside it is missing, so that
 * one sentence serves a plan that knows the number and one that does not.
 */

import { MEASURED } from './en/units';
import { show, type Kind } from './kinds';
import type { Unit } from './format';

/** Numbers by name (mm, N·m, N, shares as fractions), or text as it was typed. */
export type Values = Record<string, number | string>;

const SLOT = /\{(\w+)(?::(\w+))?\}/g;
const OPTIONAL = /\[([^[\]]*)\]/g;

/** Names of the values that a template cannot do without. */
export function required(template: string): string[] {
  return slots(template.replace(OPTIONAL, ''));
}

/** Names of every value a template can show. */
export function slots(template: string): string[] {
  return [...template.matchAll(SLOT)].map((match) => match[1] ?? '');
}

function fillSlots(template: string, values: Values, unit: Unit): string {
  return template.replace(SLOT, (_, name: string, kind: string | undefined) => {
    const value = values[name];
    if (value === undefined) return MEASURED.unknown;
    if (typeof value === 'string') return value;
    return show(value, (kind ?? 'number') as Kind, unit);
  });
}

/** The finished sentence. A value that is missing outside square brackets reads “(not known)”. */
export function fill(template: string, values: Values, unit: Unit): string {
  const known = template.replace(OPTIONAL, (_, part: string) =>
    slots(part).every((name) => values[name] !== undefined) ? part : '',
  );
  return fillSlots(known, values, unit);
}

/** A code nobody has written words for yet, made readable: `chips-stay` becomes “Chips stay”. */
export function readable(code: string): string {
  const words = code.replace(/[-_]+/g, ' ').trim();
  return words.charAt(0).toUpperCase() + words.slice(1) + '.';
}

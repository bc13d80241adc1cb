/** Reads a number typed as an answer: point or comma, with or without a unit. */

/** What the answer measures; a length may come in mm or in inches. */
export type Measure = 'length' | 'number';

const MM_PER_INCH = 25.4;
const TYPED = /^([+-−]?\d*[.,]?\d+|\d+[.,])\s*(mm|in|inch|inches|["”″])?$/i;

/**
 * The number meant, in mm where it is a length; null when the text is no number.
 * A bare length is taken as mm.
 */
export function readAnswer(text: string, measure: Measure): number | null {
  const [, digits, unit] = TYPED.exec(text.trim()) ?? [];
  if (digits === undefined || (unit && measure === 'number')) return null;
  const value = Number(digits.replace(',', '.').replace('−', '-'));
  if (!Number.isFinite(value)) return null;
  return unit && unit.toLowerCase() !== 'mm' ? value * MM_PER_INCH : value;
}

/** Reads a number typed as an answer: point or comma, with or without a unit. */

import { readLength } from '../fields/readLength';
import { readPlain } from '../fields/readNumber';
import { length, limitLength, type Unit } from '../words/format';

/** What the answer measures; a length may come in mm or in inches, whatever the page shows. */
export type Measure = 'length' | 'number';

/** The number meant, in mm where it is a length; null when the text is no such number. */
export function readAnswer(text: string, measure: Measure, unit: Unit): number | null {
  if (measure === 'number') return readPlain(text, []);
  return readLength(text, unit)?.mm ?? null;
}

/** Under this tolerance, mm, an answer is a size to be gauged and not a depth: it is written to the thousandth. */
const FINE = 0.01;

/** A length as precisely as its tolerance asks for. */
export function writeLength(mm: number, tolerance: number, unit: Unit): string {
  return tolerance < FINE ? limitLength(mm, unit) : length(mm, unit);
}

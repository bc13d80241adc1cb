/** Reads a number typed as an answer: point or comma, with or without a unit. */

import { readLength } from '../fields/readLength';
import { readPlain } from '../fields/readNumber';
import type { Unit } from '../words';

/** What the answer measures; a length may come in mm or in inches, whatever the page shows. */
export type Measure = 'length' | 'number';

/** The number meant, in mm where it is a length; null when the text is no such number. */
export function readAnswer(text: string, measure: Measure, unit: Unit): number | null {
  if (measure === 'number') return readPlain(text, []);
  return readLength(text, unit)?.mm ?? null;
}

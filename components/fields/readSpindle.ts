/** A torque curve as a person types it: `50 60; 1200 60; 8000 9`, speed before torque, pairs apart by semicolons. */

import type { SpindlePoint } from '../../core/cycle/spindle';
import { parseDecimal } from '../../core/units';

/** Units a person may leave in, and what may stand between the two numbers of a pair. */
const FILLING = /rev\/min|r\/min|rpm|n[·.* ]?m\b|@|at\b|[:=→]/gi;

/** Reads the pairs; the text of the first that is none where they cannot all be read. Null for no text. */
export function readSpindle(text: string): { points: SpindlePoint[] } | { bad: string } | null {
  const pairs = text
    .split(/[;\n]+/)
    .map((pair) => pair.trim())
    .filter((pair) => pair !== '');
  if (pairs.length === 0) return null;
  const points: SpindlePoint[] = [];
  for (const pair of pairs) {
    const numbers = pair.replace(FILLING, ' ').trim().split(/\s+/);
    const [rpm = null, torque = null] = numbers.map(parseDecimal);
    if (numbers.length !== 2 || rpm === null || torque === null) return { bad: pair };
    points.push({ rpm, torque });
  }
  return { points };
}

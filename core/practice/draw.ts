/** Choosing and mixing from a seeded row of numbers. */

import type { Draw } from '../seeded';

/** One of a list; the list must hold something. No unit. Source: derived. */
export function oneOf<T>(draw: Draw, list: readonly T[]): T {
  return list[Math.floor(draw() * list.length)]!;
}

/** The list in another order (Fisher and Yates). No unit. Source: derived. */
export function mixed<T>(draw: Draw, list: readonly T[]): T[] {
  const out = [...list];
  for (let at = out.length - 1; at > 0; at -= 1) {
    const other = Math.floor(draw() * (at + 1));
    [out[at], out[other]] = [out[other]!, out[at]!];
  }
  return out;
}

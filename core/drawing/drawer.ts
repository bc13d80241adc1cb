/** The taps and drills that a shop has, read from whatever was kept of them. */

import { readThread } from '../thread/read';
import type { TapChoice } from '../plan/types';

export interface OwnedTools {
  /** `designation style chamfer-class` of every tap that could be read. */
  taps: ReadonlySet<string>;
  /** Names as stocked drills are called: `6.8`, `27/64`, `#7`, `F`. */
  drills: ReadonlySet<string>;
}

function entries(drawer: unknown, name: string): unknown[] {
  const list =
    typeof drawer === 'object' && drawer !== null
      ? (drawer as Record<string, unknown>)[name]
      : undefined;
  return Array.isArray(list) ? (list as unknown[]) : [];
}

function textOf(entry: unknown, name: string): string {
  const value =
    typeof entry === 'object' && entry !== null
      ? (entry as Record<string, unknown>)[name]
      : undefined;
  return typeof value === 'string' ? value : '';
}

/** How a tap of a drawer is told from the others. Source: derived; no unit. */
export function ownedKey(designation: string, tap: Pick<TapChoice, 'style' | 'chamfer'>): string {
  return `${designation} ${tap.style} ${tap.chamfer.class}`;
}

/**
 * Reads a drawer: `{ taps: [{ thread, style, chamfer }], drills: [{ name }] }`. What is not of that shape is
 * passed over, so a drawer from a hostile or later file plans as an empty one. Source: derived; no unit.
 */
export function readDrawer(drawer: unknown): OwnedTools {
  const taps = entries(drawer, 'taps').flatMap((entry) => {
    const thread = readThread(textOf(entry, 'thread'));
    return thread.ok
      ? [`${thread.value.designation} ${textOf(entry, 'style')} ${textOf(entry, 'chamfer')}`]
      : [];
  });
  const drills = entries(drawer, 'drills').map((entry) =>
    typeof entry === 'string' ? entry : textOf(entry, 'name'),
  );
  return { taps: new Set(taps), drills: new Set(drills.filter((name) => name !== '')) };
}

/** The drill that published lists name for a thread, and the hole that a rule of thumb aims at. */

import { WHITWORTH_DRILLS } from '../data/pipe-gauging';
import type { Thread } from '../thread/thread';
import { HANDBOOK_INCH, ISO_2306_COARSE } from './listed';
import { PERCENT_BASE } from './percent';

/** As stocked metric drills are named: 6.8, 5.0, 10.25. */
function named(millimetres: number | undefined): string | undefined {
  return millimetres?.toFixed(2).replace(/0$/, '');
}

/**
 * Name of the drill that the published lists print for a thread, or undefined where they have none. A starting
 * point only: judge it against the class. No unit. Sources: `iso-2306`, `handbook-drills`,
 * pipe threads `iso-228-1` and memory.
 */
export function listedDrill(thread: Thread): string | undefined {
  if (thread.insert) return undefined;
  if (thread.system === 'unified' && thread.inch) {
    return HANDBOOK_INCH[`${thread.inch.size}-${thread.inch.tpi}`];
  }
  const { form, inch } = thread;
  if (inch && (form === 'G' || form === 'Rp')) return named(WHITWORTH_DRILLS[form][inch.size]);
  if (thread.series !== 'coarse') return undefined;
  return named(ISO_2306_COARSE[String(thread.diameter)]);
}

/** Percent of thread that inch lists aim at, shop base. Common practice. */
const INCH_AIM = 0.75;

/**
 * Hole that common practice aims at, mm: diameter less pitch, or 75 % on the shop base for inch threads.
 * `major` of the tap, mm. Source: `common-practice`.
 */
export function targetHole(thread: Thread, major: number): number {
  if (thread.system === 'metric') return major - thread.pitch;
  return major - INCH_AIM * PERCENT_BASE.shop * thread.pitch;
}

/** Holes that go by the same name and are drilled otherwise: for a wire insert, and the J profile. */

import type { DrillChoice } from '../drill/drill';
import { judgeDrills } from '../drill/judge';
import type { ThreadLimits } from '../limits/limits';
import { threadLimits } from '../limits/thread-limits';
import type { Note } from '../outcome';
import { judgeTapLimits, type TapLimitChoice } from '../tap/limits-judge';
import { readThread } from '../thread/read';
import type { Thread } from '../thread/thread';
import { usualDrill } from './reference-drills';
import { windowOf } from './reference-window';

export interface Relative {
  thread: Thread;
  limits: ThreadLimits;
  notes: readonly Note[];
  drill: DrillChoice | null;
  /** Tap limits that the printed lists name for it. */
  taps: readonly TapLimitChoice[];
}

export interface Relatives {
  /** The hole of a wire insert that takes this screw; null beyond the usual sizes. */
  insert: Relative | null;
  /** MJ or UNJ in its usual class: the raised minor diameter. */
  j: Relative | null;
}

/** Screw sizes that wire inserts usually come in, mm: M2 and #2 to M39 and 1-1/2. From memory. */
const INSERTS = { from: 2, to: 39 };

/** J threads are made from 1.6 mm up. From memory. */
const J_FROM = 1.6;

function relative(designation: string): Relative | null {
  const reading = readThread(designation);
  if (!reading.ok) return null;
  const limits = threadLimits(reading.value);
  if (!limits.ok) return null;
  const thread = reading.value;
  const window = windowOf(thread, limits.value);
  return {
    thread,
    limits: limits.value,
    notes: limits.notes,
    drill: usualDrill(thread, window, judgeDrills(window)),
    taps: judgeTapLimits(thread, limits.value).filter(({ listed }) => listed !== null),
  };
}

const UNIFIED_J = ['UNC', 'UNF', 'UNEF'];

function jName({ system, series, inch, diameter, pitch, hand }: Thread): string | null {
  if (diameter < J_FROM) return null;
  const tail = hand === 'left' ? '-LH' : '';
  if (system === 'metric') return `MJ${diameter}x${pitch}${tail}`;
  return inch && UNIFIED_J.includes(series)
    ? `${inch.size}-${inch.tpi} ${series.replace('UN', 'UNJ')}-3B${tail}`
    : null;
}

/**
 * The wire-insert hole and the J thread of the same size and pitch; lengths mm, limits in their standard's unit.
 * Null for pipe threads, inserts and J threads themselves. Sources: as `threadLimits`; the sizes from memory.
 */
export function relativesOf(thread: Thread): Relatives {
  if (thread.insert || (thread.form !== 'M' && thread.form !== 'UN'))
    return { insert: null, j: null };
  const { diameter, system, designation } = thread;
  const inserts = diameter >= INSERTS.from && diameter <= INSERTS.to;
  const usual = system === 'metric' || thread.series === 'UNC' || thread.series === 'UNF';
  const name = jName(thread);
  return {
    insert:
      inserts && usual ? relative(`${system === 'metric' ? 'EG' : 'STI'} ${designation}`) : null,
    j: name === null ? null : relative(name),
  };
}

/** Every code that asking for limits can give. */

import type { Note, Problem } from '../outcome';
import type { Thread } from '../thread/thread';

/** Why a thread has no limits of size. `data.designation` names the thread. */
export const LIMITS_PROBLEM_CODES = [
  /** NPT, NPTF, Rc: a gauge in the mouth of the hole decides, not diameters. */
  'taper-pipe',
  /** NPSM, NPSF: no rule held with confidence. */
  'no-limits-held',
  /** Beyond the sizes and pitches of the tolerance system. */
  'outside-tolerances',
  /** A class the tolerance system lacks. data: class. */
  'class-unknown',
] as const;

export type LimitsProblemCode = (typeof LIMITS_PROBLEM_CODES)[number];

/** What to know about limits that were given. */
export const LIMITS_NOTE_CODES = [
  /** Computed by the standard's formula; its tables lack this cell. */
  'not-tabulated',
  /** UNJ: no maximum of the minor diameter is held with confidence. */
  'minor-max-unknown',
  /** Wire insert, metric: the minor diameter is often held closer. numbers: minorMax, mm. */
  'insert-minor-closer',
  /** Long engagement: the pitch-diameter tolerance was widened. numbers: factor. */
  'long-engagement',
  /** Rp: the tolerance of the taper's gauge plane, turned into diameter; from memory. */
  'parallel-pipe-from-memory',
  /** One cell printed otherwise than its formula gives: the printed one stands. */
  'printed-cell',
] as const;

export type LimitsNoteCode = (typeof LIMITS_NOTE_CODES)[number];

/** A refusal of limits; what was asked for is named. */
export function limitsProblem(
  code: LimitsProblemCode,
  thread: Thread,
  data: Record<string, string> = {},
): Problem {
  return { code, field: 'thread', data: { designation: thread.designation, ...data } };
}

/** A note on limits. */
export function limitsNote(code: LimitsNoteCode, numbers: Record<string, number> = {}): Note {
  return { code, numbers };
}

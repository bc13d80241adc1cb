/**
 * The result type of every question that can be answered or refused.
 * The core never throws for what a person typed and never writes sentences:
 * it gives a code and the facts; the words live in `components/words/`.
 */

import type { SourceId } from './sources';

/** Something the reader should know about an answer that was given. */
export interface Note {
  code: string;
  numbers?: Record<string, number>;
  data?: Record<string, string>;
  source?: SourceId;
}

/** Why no answer was given, and about which input. What was typed is echoed as text in `data`. */
export interface Problem {
  code: string;
  field?: string;
  data?: Record<string, string>;
}

export type Outcome<T> = { ok: true; value: T; notes: Note[] } | { ok: false; problems: Problem[] };

/** An answer, with whatever should be said beside it. */
export function answer<T>(value: T, notes: Note[] = []): Outcome<T> {
  return { ok: true, value, notes };
}

/** A refusal. Give at least one problem: a refusal without a reason helps nobody. */
export function refuse(first: Problem, ...more: Problem[]): { ok: false; problems: Problem[] } {
  return { ok: false, problems: [first, ...more] };
}

/** A whole callout typed where the thread goes: what it says of the hole goes into the other fields. */

import { readCallout, readThread } from '../../core';
import { length, noteText, type Unit } from '../words';
import { calloutText } from '../words/drawing';
import type { Inputs } from './inputs';

export interface Filled {
  changes: Partial<Inputs>;
  thread: string;
  /** What was done, for under the field. */
  said: string;
}

/** `M12x16`: a pitch mistyped or a length. The thread reader asks; answering for the reader would hide it. */
const OPEN_QUESTION = /^\s*MJ?\s*\d+(?:[.,]\d+)?\s*[x×*]\s*[\d.,]+\s*$/i;

/** Notes whose matter the filled fields say themselves. */
const IN_THE_FIELDS: readonly string[] = ['class-assumed', 'coarse-assumed', 'through-assumed'];

/** Null where the text is a thread by itself, or no callout either. */
export function fromCallout(text: string, unit: Unit): Filled | null {
  const alone = readThread(text.trim());
  if (alone.ok || OPEN_QUESTION.test(text)) return null;
  const read = readCallout(text);
  if (!read.ok) return null;
  const { thread, fullThread, through, hole, count } = read.value;
  const typed = (mm: number | undefined) => (mm === undefined ? '' : length(mm, unit));
  const assumed = read.notes.some(({ code }) => /^(?:through-assumed|depth-unclear)$/.test(code));
  const kind: Partial<Inputs> = assumed
    ? {}
    : through
      ? { hole: 'through', partial: typed(fullThread) }
      : {
          hole: 'blind',
          depth: typed(fullThread),
          limit: typed(hole?.depth),
          at: hole?.at ?? 'shoulder',
        };
  const notes = read.notes
    .filter(({ code }) => !IN_THE_FIELDS.includes(code))
    .map((note) => noteText(note, unit));
  const said = calloutText({ line: text, callout: read, verdict: 'ready' }, unit);
  return {
    thread,
    changes: { ...kind, thread, ...(count > 1 ? { holes: String(count) } : {}) },
    said: [`Read as a callout: ${said}. The other fields were filled from it.`, ...notes].join(' '),
  };
}

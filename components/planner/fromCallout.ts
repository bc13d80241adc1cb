/** A whole callout typed where the thread goes: what it says of the hole goes into the other fields. */

import { readCallout, readThread } from '../../core';
import { exactLength } from '../address/exact';
import { noteText, type Unit } from '../words';
import { calloutText } from '../words/drawing';
import { TEXT } from '../words/en/planner';
import { say } from '../words/say';
import type { Inputs } from './inputs';

export interface Filled {
  changes: Partial<Inputs>;
  thread: string;
  /** What was done, for under the field. */
  said: string;
}

/**
 * What only a callout has: a count, a depth or hole sign, a word such as THRU. Without one, `M8x6H` or
 * `M8x1.25x30` is a thread mistyped: the thread reader asks, and answering for the reader would hide it.
 */
const CALLOUT_MARK =
  /[↧⌵⌴⌀Øø°▽]|^\s*\(?\d{1,3}\)?\s*[x×]\s|\b(?:thru|through|deep|depth|dp|csk|c'?sink|countersink|drill|dia|full|typ|places?|plcs?|holes?)\b/i;

/** Notes whose matter the filled fields say themselves. */
const IN_THE_FIELDS: readonly string[] = ['class-assumed', 'coarse-assumed', 'through-assumed'];

/** Null where the text is a thread by itself, or no callout either. */
export function fromCallout(text: string, unit: Unit): Filled | null {
  const alone = readThread(text.trim());
  if (alone.ok || !CALLOUT_MARK.test(text)) return null;
  const read = readCallout(text);
  if (!read.ok) return null;
  const { thread, fullThread, through, hole, count } = read.value;
  const typed = (mm: number | undefined) => (mm === undefined ? '' : exactLength(mm, unit));
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
  const said = calloutText({ callout: read }, unit);
  return {
    thread,
    changes: { ...kind, thread, ...(count > 1 ? { holes: String(count) } : {}) },
    said: [say(TEXT.readCallout, { callout: said }), ...notes].join(' '),
  };
}

/** A whole callout typed where only a thread is asked: read at each keystroke. */

import { readCallout, readThread } from '../../core';
import type { Note } from '../../core/outcome';
import type { Callout } from '../../core/drawing/types';

/**
 * What only a callout has: a count, a depth or hole sign, a word such as THRU. Without one, `M8x6H` or
 * `M8x1.25x30` is a thread mistyped: the thread reader asks, and answering for the reader would hide it.
 */
const CALLOUT_MARK =
  /[↧⌵⌴⌀Øø°▽]|^\s*\(?\d{1,3}\)?\s*[x×]\s|\b(?:thru|through|deep|depth|dp|csk|c'?sink|countersink|drill|dia|full|typ|places?|plcs?|holes?)\b/i;

export interface TypedCallout {
  callout: Callout;
  notes: Note[];
}

/** Null where the text is a thread by itself, or no callout either. */
export function calloutTyped(text: string): TypedCallout | null {
  const alone = readThread(text.trim());
  if (alone.ok) return null;
  const wordsOnly = alone.problems.every(({ code }) => code === 'extra-words');
  if (!wordsOnly && !CALLOUT_MARK.test(text)) return null;
  const read = readCallout(text);
  return read.ok ? { callout: read.value, notes: read.notes } : null;
}

/**
 * A whole callout typed where the thread goes: what it says of the hole counts at once, and goes into the other
 * fields when the thread's is left. Words that were not understood stay in the field until somebody deals with them.
 */

import { calloutTyped } from '../fields/calloutTyped';
import type { HoleRequest } from '../../core/plan/types';
import { exactLength } from '../address/exact';
import { requestInputs } from '../address/request';
import { noteText, type Unit } from '../words';
import { calloutText } from '../words/drawing';
import { TEXT } from '../words/en/planner';
import { say } from '../words/say';
import type { Inputs } from './inputs';

export interface Filled {
  /** The other fields as the callout has them, and what then stands in the thread's. */
  changes: Partial<Inputs>;
  /** The thread alone. */
  designation: string;
  /** What then stands in the thread's field: the thread, and words that were not understood. */
  thread: string;
  /** What was done, for under the field. */
  said: string;
  /** Words of the callout that were not understood. */
  notRead: string[];
}

/** Notes whose matter the filled fields, or the words beside the field, say themselves. */
const SAID_ELSEWHERE = ['class-assumed', 'coarse-assumed', 'through-assumed', 'not-read'];

/** What the callout says of the hole in its part, as the form has it: what those fields add to a bare hole's. */
function fieldsWritten(fields: Partial<HoleRequest>, unit: Unit): Partial<Inputs> {
  const bare: HoleRequest = { thread: '', material: 'steel-low', hole: { kind: 'blind' } };
  const without = requestInputs(bare, unit);
  const added = Object.entries(requestInputs({ ...bare, ...fields }, unit)).filter(
    ([name, value]) => value !== without[name as keyof Inputs],
  );
  return Object.fromEntries(added);
}

/** Null where the text is a thread by itself, or no callout either. */
export function fromCallout(text: string, unit: Unit): Filled | null {
  const typed = calloutTyped(text);
  if (!typed) return null;
  const { callout, notes } = typed;
  const { thread: designation, fullThread, through, hole, count, notRead, thickness } = callout;
  const written = (mm: number | undefined) => (mm === undefined ? '' : exactLength(mm, unit));
  const assumed = notes.some(({ code }) => /^(?:through-assumed|depth-unclear)$/.test(code));
  const kind: Partial<Inputs> = assumed
    ? {}
    : through
      ? {
          hole: 'through',
          partial: written(fullThread),
          ...(thickness === undefined ? {} : { thickness: written(thickness) }),
        }
      : {
          hole: 'blind',
          depth: written(fullThread),
          limit: written(hole?.depth),
          at: hole?.at ?? 'shoulder',
        };
  const more = notes
    .filter(({ code }) => !SAID_ELSEWHERE.includes(code))
    .map((note) => noteText(note, unit));
  const others = callout.fields ? fieldsWritten(callout.fields, unit) : {};
  const thread = [designation, ...notRead].join(' ');
  const bare = calloutText(callout, unit);
  const whole = say(TEXT.readCallout, { callout: bare });
  return {
    thread,
    designation,
    notRead,
    changes: { ...kind, ...others, thread, ...(count > 1 ? { holes: String(count) } : {}) },
    said: [
      bare === designation ? say(TEXT.readAs, { reading: designation }) : whole,
      ...(notRead.length > 0 ? [say(TEXT.notRead, { words: notRead.join(' ') })] : []),
      ...more,
    ].join(' '),
  };
}

/** The form's values with the callout's own in their places, and the callout itself where there is one. */
export function withCallout(
  values: Inputs,
  unit: Unit,
): { values: Inputs; callout: Filled | null } {
  const callout = fromCallout(values.thread, unit);
  if (!callout) return { values, callout };
  return { values: { ...values, ...callout.changes, thread: callout.designation }, callout };
}

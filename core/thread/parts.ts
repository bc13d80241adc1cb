/** The pieces that any designation may carry, whatever its system: hand, insert, what is left over. */

import type { Problem } from '../outcome';
import type { Normal } from './normalise';
import type { ThreadNoteCode, ThreadProblemCode } from './codes';
import type { Hand } from './thread';

/** A designation with its hand and insert letters taken off. */
export interface Parts {
  /** As typed, for the echo. */
  typed: string;
  /** Normalised, without hand and insert letters. */
  text: string;
  hand: Hand;
  insert: boolean;
  normal: Normal;
}

const LEFT = /[\s\-(]*(?:LEFT(?:[\s-]?HAND(?:ED)?)?|L\.?H\.?|LINKS)(?![A-Z0-9])\)?/;
const RIGHT = /[\s\-(]*(?:RIGHT(?:[\s-]?HAND(?:ED)?)?|R\.?H\.?)(?![A-Z0-9])\)?/;
const INSERT = /(?:^|[\s-])(?:EG|STI)(?=[\s\-M#.\d]|$)/;

/** Takes hand and insert letters off, wherever they stand. RH says what is usual and goes. */
export function splitParts(typed: string, normal: Normal): Parts {
  let { text } = normal;
  const take = (pattern: RegExp): boolean => {
    const found = pattern.test(text);
    if (found) text = text.replace(pattern, ' ').replace(/\s+/g, ' ').trim();
    return found;
  };
  const left = take(LEFT);
  take(RIGHT);
  const insert = take(INSERT);
  text = text.replace(/^[\s-]+|[\s-]+$/g, '').replace(/\s*-\s*/g, '-');
  return { typed, text, hand: left ? 'left' : 'right', insert, normal };
}

/** A problem of the thread field, with what was typed echoed. */
export function threadProblem(
  code: ThreadProblemCode,
  typed: string,
  data: Record<string, string> = {},
): Problem {
  return { code, field: 'thread', data: { typed, ...data } };
}

/** A note about how a thread was read. */
export function threadNote(
  code: ThreadNoteCode,
  data: Record<string, string> = {},
): { code: ThreadNoteCode; data: Record<string, string> } {
  return { code, data };
}

/** A number without useless zeros or float dust: 1.250 is 1.25, 4.0 is 4. */
export function plainNumber(value: number): string {
  return String(Number(value.toFixed(6)));
}

/** A cursor over what follows size and pitch: takes what fits at the front. */
export class Tail {
  constructor(public rest: string) {}

  /** Takes a pattern at the front, after spaces and dashes. Gives its groups, or null. */
  take(pattern: RegExp): string[] | null {
    const found = pattern.exec(this.rest);
    if (!found || found.index !== 0) return null;
    this.rest = this.rest.slice(found[0].length);
    return found.map((group) => group ?? '');
  }

  /** What no pattern took. */
  get left(): string {
    return this.rest.replace(/^[\s-]+|[\s-]+$/g, '');
  }
}

/** Which names a text holds: the longest that is known, from the left. */

import { GRADES, type Grade } from './designations';
import { COLLISIONS, KINDS, OPEN_NAMES, PLAIN_NAMES, type Kind } from './designations-words';
import type { StateRule } from './grade-group';
import type { MaterialId } from './material';
import { joinedKey, keyOf, unglue, type Token } from './read-tokens';

/** One meaning of a name. */
export interface Meaning {
  /** Said back, and readable by itself. */
  designation: string;
  row: MaterialId;
  rule: StateRule;
  plain: boolean;
  usual: boolean;
}

export interface Found {
  meanings: readonly Meaning[];
  /** What to type instead where the name is shared, or names a kind only. */
  offers: readonly string[];
  /** The kind of metal the name promises, of plain names. */
  kind?: Kind;
}

const LETTERS = /^(?:[^\p{L}]*\p{L}){3}/u;

function keysOf(name: string): string[] {
  const key = keyOf(name);
  // X5CrNi1810 is written too; a short name would turn into another one.
  return LETTERS.test(key) && key.includes('-') ? [key, key.replaceAll('-', '')] : [key];
}

function meaningOf(grade: Grade, name: string): Meaning {
  const { row, rule } = grade;
  return { designation: name, row, rule, plain: false, usual: false };
}

function build(): Map<string, Found> {
  const known = new Map<string, Found>();
  for (const grade of GRADES) {
    for (const name of grade.names) {
      for (const key of keysOf(name))
        known.set(key, { meanings: [meaningOf(grade, name)], offers: [] });
    }
  }
  for (const { words, kind, row, rule = 'fixed', usual = false } of PLAIN_NAMES) {
    for (const name of words.split('|')) {
      const meaning = { designation: name, row, rule, plain: true, usual };
      known.set(keyOf(name), { meanings: [meaning], offers: [], kind });
    }
  }
  for (const { words, kind, offers } of OPEN_NAMES) {
    for (const name of words.split('|')) known.set(keyOf(name), { meanings: [], offers, kind });
  }
  for (const { names, offers } of COLLISIONS) {
    const meanings = offers.flatMap((offer) => known.get(keyOf(offer))?.meanings ?? []);
    for (const name of names.split('|')) known.set(keyOf(name), { meanings, offers });
  }
  return known;
}

let names: Map<string, Found> | undefined;

/** What a name means, by its key. Source: on each grade. */
export function lookUp(key: string): Found | undefined {
  names ??= build();
  // 14301 is 1.4301 with its point left out.
  return (
    names.get(key) ?? (/^\d{5}$/.test(key) ? names.get(`${key[0]}.${key.slice(1)}`) : undefined)
  );
}

/** Every name that is read, for the count and the tests. Source: on each grade. */
export function knownNames(): readonly string[] {
  names ??= build();
  return [...names.keys()];
}

/** True where a row keeps what a word of this kind promises. Source: derived. */
export function keeps(row: MaterialId, kind: Kind): boolean {
  return KINDS[kind].some((start) => row.startsWith(start));
}

export interface Matched {
  found: Found[];
  left: Token[];
}

/** More pieces than this make no name. */
const LONGEST_NAME = 7;

function matchAt(tokens: readonly Token[], start: number): { found: Found; length: number } | null {
  for (let length = Math.min(LONGEST_NAME, tokens.length - start); length > 0; length -= 1) {
    const key = joinedKey(tokens.slice(start, start + length));
    const found = key === null ? undefined : lookUp(key);
    if (found) return { found, length };
  }
  return null;
}

/** The names in a text and the pieces that belong to none. Source: derived. */
export function matchNames(given: readonly Token[]): Matched {
  const found: Found[] = [];
  const left: Token[] = [];
  let tokens = [...given];
  let after = -1;
  for (let at = 0; at < tokens.length;) {
    const match = matchAt(tokens, at);
    if (match) {
      found.push(match.found);
      at += match.length;
      after = at;
      continue;
    }
    const parts = unglue(tokens[at]!);
    // Both halves are looked up again; neither can be parted once more.
    if (parts) tokens = [...tokens.slice(0, at), ...parts, ...tokens.slice(at + 1)];
    else {
      // A name between two pieces keeps them apart.
      const gap = at > 0 && at === after ? 'break' : tokens[at]!.gap;
      left.push({ ...tokens[at]!, gap });
      at += 1;
    }
  }
  return { found, left };
}

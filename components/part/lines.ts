/** What a person says of single lines: joined to the line above, parted from it, a threaded hole after all. */

import { allLines } from './inputs';

export type Said = 'joined' | 'parted' | 'tapped';

/** By the line's number as typed, counted from 1. */
export type SaidOfLines = Readonly<Record<number, readonly Said[]>>;

const LETTERS: Record<Said, string> = { joined: 'j', parted: 'p', tapped: 't' };

/** `4j;7t` as an object; what cannot be read is left out. */
export function readLines(text: string): SaidOfLines {
  const said: Record<number, Said[]> = {};
  for (const piece of text.split(';')) {
    const [, number, letter] = /^(\d{1,4})([jpt])$/.exec(piece.trim()) ?? [];
    const word = (Object.keys(LETTERS) as Said[]).find((each) => LETTERS[each] === letter);
    if (number && word) said[Number(number)] = [...(said[Number(number)] ?? []), word];
  }
  return said;
}

export function writeLines(said: SaidOfLines): string {
  return Object.entries(said)
    .flatMap(([number, words]) => words.map((word) => number + LETTERS[word]))
    .join(';');
}

/** One more word, or one taken back; joined and parted shut each other out. */
export function sayOf(said: SaidOfLines, line: number, word: Said, holds: boolean): SaidOfLines {
  const against: Partial<Record<Said, Said>> = { joined: 'parted', parted: 'joined' };
  const others = (said[line] ?? []).filter((each) => each !== word && each !== against[word]);
  return { ...said, [line]: holds ? [...others, word] : others };
}

/** As the core wants it. */
export function joinsOf(said: SaidOfLines): Record<number, boolean> {
  const joins: Record<number, boolean> = {};
  for (const [line, words] of Object.entries(said)) {
    if (words.includes('joined')) joins[Number(line)] = true;
    if (words.includes('parted')) joins[Number(line)] = false;
  }
  return joins;
}

export function tappedOf(said: SaidOfLines): number[] {
  return Object.entries(said).flatMap(([line, words]) =>
    words.includes('tapped') ? [Number(line)] : [],
  );
}

/** What was said of a line goes along with it when others are put in, taken out or moved. */
export function followSaid(said: SaidOfLines, before: string, after: string): SaidOfLines {
  const [old, now] = [allLines(before), allLines(after)];
  const moved: Record<number, readonly Said[]> = {};
  for (const [number, words] of Object.entries(said)) {
    const line = old[Number(number) - 1];
    if (line === undefined) continue;
    const nth = old.slice(0, Number(number) - 1).filter((other) => other === line).length;
    const places = now.flatMap((other, at) => (other === line ? [at + 1] : []));
    const edited = old.length === now.length ? Number(number) : undefined;
    const at = places[nth] ?? places.at(-1) ?? edited;
    if (at !== undefined) moved[at] = words;
  }
  return moved;
}

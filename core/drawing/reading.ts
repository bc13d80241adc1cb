/** What a line has given so far: its pieces, where each stands, and what becomes of its words. */

import type { Note, Problem } from '../outcome';
import type { HoleRequest } from '../plan/types';
import type { Thread } from '../thread/thread';
import type { RawLength } from './length';
import type { MarkedText, WordFate } from './marked';
import type { CalloutNoteCode } from './types';

/** From and until, in the text. */
export type Span = readonly [from: number, until: number];

/** A hole as drawn, before it is known whether it is this thread's. */
export interface RawHole {
  diameter?: RawLength;
  depth?: RawLength;
  at: 'shoulder' | 'point';
  through: boolean;
  /** The line calls it a drill: no need to guess. */
  said: boolean;
  spans: Span[];
}

/** Lengths of what was acted on wait until the thread has said which system it is. */
export interface RawFields {
  later: Set<NonNullable<HoleRequest['later']>[number]>;
  duty?: HoleRequest['duty'];
  entry?: { angle: number };
  crossing?: { kind: 'bore' | 'slot'; width: RawLength };
  interrupted?: boolean;
  cored?: boolean;
  drillPoint?: number;
  counterbore?: { diameter: RawLength; depth: RawLength };
}

/** The subject that a depth or a THRU belongs to; `other` is something that is no hole for this thread. */
export type Subject = 'none' | 'thread' | 'other' | RawHole;

export class Reading {
  readonly line: MarkedText;
  at = 0;
  /** Where the piece that was taken last begins. */
  takenAt = -1;
  private left = { at: -1, text: '' };
  count: number | undefined;
  /** Text of the thread as it stands, for reading again with what stands apart from it. */
  threadText: string | undefined;
  thread: Thread | undefined;
  threadNotes: Note[] = [];
  /** A thread that was recognised and refused: what then looks like another one is not tried. */
  refused: Problem[] | undefined;
  /** Another thread on the same line. */
  second: string | undefined;
  hand: 'left' | undefined;
  insert: 'wire' | 'solid' | undefined;
  loneClass: { text: string; span: Span } | undefined;
  seriesWord: { word: 'fine' | 'coarse'; span: Span } | undefined;
  threadDepth: { length: RawLength; how: 'said' | 'marked' | 'bare'; span: Span } | undefined;
  /** A depth before anything it could belong to. */
  early: { length: RawLength; span: Span } | undefined;
  threadThrough = false;
  blind = false;
  thickness: { length: RawLength; span: Span } | undefined;
  holes: RawHole[] = [];
  subject: Subject = 'none';
  /** Where a slash, a comma, a new line or the word hole ended: what follows right there may be another's. */
  partedAt = -1;
  sink: { diameter?: RawLength; angle: number | undefined } | undefined;
  chamfer: { width: RawLength; side: number } | undefined;
  fields: RawFields = { later: new Set() };
  chipsMayNotFall = false;
  /** It runs into another hole: through, where no depth says otherwise. */
  opens = false;
  /** TAP or THREAD stands on the line. */
  tapped = false;
  fasteners: string[] = [];
  notes: Note[] = [];
  /** Small words since the last piece that means something: quoted with an unknown word that follows. */
  small: Span[] = [];

  constructor(line: MarkedText) {
    this.line = line;
  }

  /** What is still to be read. */
  get rest(): string {
    if (this.left.at !== this.at) this.left = { at: this.at, text: this.line.text.slice(this.at) };
    return this.left.text;
  }

  get parted(): boolean {
    return this.partedAt === this.at || this.takenAt === this.partedAt;
  }

  note(code: CalloutNoteCode, data?: Record<string, string>): void {
    this.notes.push({ code, ...(data && { data }) });
  }

  /** Takes so many signs from here and the space after them. */
  advance(length: number, fate: WordFate): Span {
    const span: Span = [this.at, this.at + length];
    this.mark(span, fate);
    this.takenAt = this.at;
    this.at += length;
    while (this.line.text[this.at] === ' ') this.at += 1;
    return span;
  }

  mark(span: Span, fate: WordFate): void {
    this.line.mark(span[0], span[1], fate);
  }

  /** Takes what the pattern matches here, or nothing. */
  take(pattern: RegExp, fate: WordFate = 'read'): { found: RegExpExecArray; span: Span } | null {
    const found = pattern.exec(this.rest);
    if (!found || found[0].length === 0) return null;
    return { found, span: this.advance(found[0].length, fate) };
  }

  takeOne(list: readonly RegExp[], fate: WordFate = 'read') {
    for (const pattern of list) {
      const taken = this.take(pattern, fate);
      if (taken) return taken;
    }
    return null;
  }

  textOf(span: Span): string {
    return this.line.text.slice(...span).trim();
  }
}

/** A hole of its own, which the depths that follow belong to. Source: derived; no unit. */
export function newHole(reading: Reading, said: boolean, span: Span): RawHole {
  const hole: RawHole = { at: 'shoulder', through: false, said, spans: [span] };
  reading.holes.push(hole);
  reading.subject = hole;
  return hole;
}

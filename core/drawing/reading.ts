/** One line of a drawing taken apart, piece by piece, from left to right. */

import { STOCKED_DRILLS } from '../drill/sizes';
import type { Note, Problem } from '../outcome';
import { readThread } from '../thread/read';
import type { Thread } from '../thread/thread';
import * as patterns from './patterns';
import type { CalloutNoteCode } from './types';

export interface RawLength {
  text: string;
  unit: string | undefined;
}

export interface RawHole {
  diameter?: RawLength;
  depth?: RawLength;
  at: 'shoulder' | 'point';
  through: boolean;
}

/** What a line has given so far; lengths wait until the thread has said which system it is. */
export class Reading {
  rest: string;
  count: number | undefined;
  thread: Thread | undefined;
  /** A thread that was recognised and refused: what then looks like another one is not tried. */
  refused: Problem[] | undefined;
  /** Another thread on the same line. */
  second: string | undefined;
  threadNotes: Note[] = [];
  threadDepth: RawLength | undefined;
  threadThrough = false;
  hole: RawHole | undefined;
  /** The subject that a depth or a THRU belongs to. */
  subject: 'thread' | 'hole' | 'none' = 'none';
  sink: { diameter: RawLength; angle: number | undefined } | undefined;
  notes: Note[] = [];
  leftOver: string[] = [];

  constructor(text: string) {
    this.rest = text;
  }

  note(code: CalloutNoteCode, data?: Record<string, string>): void {
    this.notes.push({ code, ...(data && { data }) });
  }

  /** Takes what the pattern matches here, or nothing. */
  take(pattern: RegExp): RegExpExecArray | null {
    const found = pattern.exec(this.rest);
    if (!found || found[0].length === 0) return null;
    this.rest = this.rest.slice(found[0].length).trimStart();
    return found;
  }

  takeOne(list: readonly RegExp[]): RegExpExecArray | null {
    for (const pattern of list) {
      const found = this.take(pattern);
      if (found) return found;
    }
    return null;
  }
}

function takeCount(reading: Reading): boolean {
  if (reading.count !== undefined) return false;
  const found = reading.takeOne(patterns.COUNT);
  if (!found) return false;
  reading.count = Number(found[1]);
  return true;
}

/** Degrees of a countersink; what no cutter has is no angle. */
function sinkAngle(text: string | undefined): number | undefined {
  const angle = Number(text);
  return angle > 0 && angle < 180 ? angle : undefined;
}

function takeSink(reading: Reading): boolean {
  const [withAngle, angleFirst, bare] = patterns.COUNTERSINK;
  const first = reading.take(withAngle);
  if (first) {
    reading.sink = { diameter: { text: first[1]!, unit: first[2] }, angle: sinkAngle(first[3]) };
    return true;
  }
  const second = reading.take(angleFirst);
  if (second) {
    reading.sink = { diameter: { text: second[2]!, unit: second[3] }, angle: sinkAngle(second[1]) };
    return true;
  }
  const third = reading.take(bare);
  if (third) reading.sink = { diameter: { text: third[1]!, unit: third[2] }, angle: undefined };
  return third !== null;
}

function takeBore(reading: Reading): boolean {
  const found = reading.take(patterns.COUNTERBORE);
  if (found) reading.note('counterbore-not-planned', { text: found[0].trim() });
  return found !== null;
}

function takeCircle(reading: Reading): boolean {
  return reading.takeOne(patterns.CIRCLE) !== null;
}

function drillNamed(name: string): number | undefined {
  return STOCKED_DRILLS.find((drill) => drill.name === name)?.diameter;
}

/** `#7 DRILL`, `letter F drill`, `7/16 DRILL`: the hole by the name of its drill. */
function takeNamedDrill(reading: Reading): boolean {
  const found = patterns.NAMED_DRILL.exec(reading.rest);
  if (!found) return false;
  const [, number, numeral, letter, text, unit] = found;
  const named = number ? `#${numeral}` : letter?.toUpperCase();
  const size = named === undefined ? undefined : drillNamed(named);
  if (named !== undefined && size === undefined) return false;
  const diameter = size === undefined ? { text: text!, unit } : { text: String(size), unit: 'mm' };
  reading.hole = { at: 'shoulder', through: false, ...reading.hole, diameter };
  reading.subject = 'hole';
  takeText(reading, found[0]);
  return true;
}

function takeHole(reading: Reading): boolean {
  const hole = reading.take(patterns.HOLE);
  if (hole) {
    const diameter = { text: hole[1]!, unit: hole[2] };
    reading.hole = { at: 'shoulder', through: false, ...reading.hole, diameter };
    reading.subject = 'hole';
    return true;
  }
  const drill = reading.take(patterns.DRILL_WORD);
  if (!drill) return false;
  const length = { text: drill[1]!, unit: drill[2] };
  reading.hole = { at: 'shoulder', through: false, ...reading.hole };
  if (drill[3]) reading.hole.depth = length;
  else reading.hole.diameter = length;
  reading.subject = 'hole';
  return true;
}

/** In the ISO 6410 form `M12x16/Ø10.2x20` the number after the x is a depth: no pitch is that coarse. */
function withoutDepthAsPitch(text: string): { text: string; depth?: string } {
  const found = patterns.PITCH_PART.exec(text);
  if (!found) return { text };
  const size = Number(found[1]!.replace(/^\D+/, ''));
  if (Number(found[2]) <= size / 2) return { text };
  return { text: found[1]! + text.slice(found[0].length), depth: found[2]! };
}

/**
 * Whether a refusal settles it: a shorter reading of the same text would be another thread. What is
 * not made like a thread at all (`15-20` before the word deep) is left for the next piece to take.
 */
function settles(text: string, problems: readonly Problem[]): boolean {
  const shapeless = ['unreadable', 'extra-words'];
  return /[A-Z]/i.test(text) && !problems.some(({ code }) => shapeless.includes(code));
}

/** Every spelling of a thread that stands here, the longest first: `1/4-18 NPT` before `1/4-18`. */
function spellings(text: string): string[] {
  return patterns.THREADS.flatMap((pattern) => pattern.exec(text)?.[0] ?? []).sort(
    (a, b) => b.length - a.length,
  );
}

function takeText(reading: Reading, found: string): void {
  reading.rest = reading.rest.slice(found.length).trimStart();
}

function takeThread(reading: Reading): boolean {
  if (reading.thread || reading.refused) return false;
  for (const found of spellings(reading.rest)) {
    const { text, depth } = withoutDepthAsPitch(found);
    const outcome = readThread(text);
    if (!outcome.ok) {
      if (!settles(text, outcome.problems)) continue;
      reading.refused = outcome.problems;
    } else {
      reading.thread = outcome.value;
      reading.threadNotes = outcome.notes;
      reading.subject = 'thread';
      if (depth) reading.threadDepth = { text: depth, unit: undefined };
    }
    takeText(reading, found);
    return true;
  }
  return false;
}

/** A second thread on the line: which depth belongs to which cannot be known. */
function takeSecondThread(reading: Reading): boolean {
  if (!reading.thread) return false;
  for (const found of spellings(reading.rest)) {
    // A bare pair of numbers is a tolerance or a range as often as a thread.
    if (!/[A-Z]/i.test(found)) continue;
    const outcome = readThread(found);
    if (!outcome.ok) continue;
    if (outcome.value.designation !== reading.thread.designation) reading.second ??= found.trim();
    takeText(reading, found);
    return true;
  }
  return false;
}

function takeDepth(reading: Reading): boolean {
  const found = reading.takeOne(patterns.DEPTH);
  if (!found) return false;
  const length = { text: found[1]!, unit: found[2] };
  const toPoint = /^(?:point|tip)$/i.test(found[3] ?? '');
  const ofThread = reading.subject === 'thread' && reading.threadDepth === undefined;
  if (ofThread || /full|effective|usable/i.test(found[0])) reading.threadDepth ??= length;
  else {
    reading.hole = { at: 'shoulder', through: false, ...reading.hole };
    reading.hole.depth ??= length;
    if (toPoint) reading.hole.at = 'point';
  }
  return true;
}

function takeThrough(reading: Reading): boolean {
  if (!reading.take(patterns.THROUGH)) return false;
  if (reading.subject === 'hole' && reading.hole) reading.hole.through = true;
  else reading.threadThrough = true;
  return true;
}

function takeNoise(reading: Reading): boolean {
  const found = reading.take(patterns.NOISE);
  if (found && patterns.TYPICAL.test(found[0])) reading.note('typical');
  return found !== null;
}

const STEPS = [
  takeCount,
  takeCircle,
  takeSink,
  takeBore,
  takeNamedDrill,
  takeHole,
  takeThread,
  takeSecondThread,
  takeDepth,
  takeThrough,
  takeNoise,
] as const;

/** Reads a plain callout to its end; nothing is judged here, and nothing lost. Source: derived. */
export function readPieces(text: string): Reading {
  const reading = new Reading(text);
  while (reading.rest.length > 0) {
    if (STEPS.some((step) => step(reading))) continue;
    const word = /^\S+\s*/.exec(reading.rest)![0];
    reading.leftOver.push(word.trim());
    reading.rest = reading.rest.slice(word.length);
  }
  return reading;
}

/** Reads one line of a drawing: count, thread, depths, hole, countersink; what is left over is kept and said. */

import { answer, refuse, type Note, type Outcome } from '../outcome';
import { readThread } from '../thread/read';
import type { Thread } from '../thread/thread';
import { lengthInMm } from './length';
import { plainCallout } from './normalise';
import * as patterns from './patterns';
import type { Callout, CalloutNoteCode } from './types';

interface RawLength {
  text: string;
  unit: string | undefined;
}

interface RawHole {
  diameter?: RawLength;
  depth?: RawLength;
  at: 'shoulder' | 'point';
  through: boolean;
}

/** What a line has given so far; lengths wait until the thread has said which system it is. */
class Reading {
  rest: string;
  count: number | undefined;
  thread: Thread | undefined;
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

function takeSink(reading: Reading): boolean {
  const [withAngle, angleFirst, bare] = patterns.COUNTERSINK;
  const first = reading.take(withAngle);
  if (first) {
    reading.sink = { diameter: { text: first[1]!, unit: first[2] }, angle: Number(first[3]) };
    return true;
  }
  const second = reading.take(angleFirst);
  if (second) {
    reading.sink = { diameter: { text: second[2]!, unit: second[3] }, angle: Number(second[1]) };
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

function takeThread(reading: Reading): boolean {
  if (reading.thread) return false;
  for (const pattern of patterns.THREADS) {
    const found = pattern.exec(reading.rest);
    if (!found) continue;
    const { text, depth } = withoutDepthAsPitch(found[0]);
    const outcome = readThread(text);
    if (!outcome.ok) continue;
    reading.thread = outcome.value;
    reading.threadNotes = outcome.notes;
    reading.subject = 'thread';
    if (depth) reading.threadDepth = { text: depth, unit: undefined };
    reading.rest = reading.rest.slice(found[0].length).trimStart();
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
  takeSink,
  takeBore,
  takeHole,
  takeThread,
  takeDepth,
  takeThrough,
  takeNoise,
] as const;

function readPieces(text: string): Reading {
  const reading = new Reading(text);
  while (reading.rest.length > 0) {
    if (STEPS.some((step) => step(reading))) continue;
    const word = /^\S+\s*/.exec(reading.rest)![0];
    reading.leftOver.push(word.trim());
    reading.rest = reading.rest.slice(word.length);
  }
  return reading;
}

function toCallout(reading: Reading, thread: Thread): Callout {
  // G, Rp and Rc are inch by name and metric on the drawing; NPT is inch throughout.
  const inch = thread.system === 'unified' || thread.form.startsWith('NP');
  const length = (raw: RawLength): number | undefined => {
    const read = lengthInMm(raw.text, raw.unit, inch, thread.diameter);
    if (read?.guessedUnit) reading.note('depth-in-other-unit', { typed: raw.text });
    return read?.value;
  };
  const fullThread = reading.threadDepth && length(reading.threadDepth);
  const { hole, sink } = reading;
  const depth = hole?.depth && length(hole.depth);
  const diameter = hole?.diameter && length(hole.diameter);
  const said = reading.threadThrough || hole?.through === true;
  const assumed = !said && fullThread === undefined && depth === undefined;
  if (assumed) reading.note('through-assumed');
  const sinkDiameter = sink && length(sink.diameter);
  if (sink && sink.angle === undefined) reading.note('countersink-angle-assumed');
  const usualAngle = thread.system === 'unified' ? 82 : 90;
  return {
    count: reading.count ?? 1,
    thread: thread.designation,
    ...(fullThread !== undefined && { fullThread }),
    through: said || assumed,
    ...((depth !== undefined || diameter !== undefined) && {
      hole: {
        ...(diameter !== undefined && { diameter }),
        ...(depth !== undefined && { depth }),
        at: hole!.at,
      },
    }),
    ...(sinkDiameter !== undefined && {
      countersink: { diameter: sinkDiameter, angle: sink!.angle ?? usualAngle },
    }),
  };
}

/** Nothing read as a thread: let the thread reader say why, on what looks most like one. */
function noThread(line: string, text: string, reading: Reading): Outcome<Callout> {
  const data = { typed: line };
  if (text === '') return refuse({ code: 'empty-line', field: 'line', data });
  const candidates = [
    ...patterns.THREADS.map((pattern) => pattern.exec(text)?.[0]),
    reading.leftOver.join(' '),
    text,
  ].filter((each): each is string => Boolean(each));
  for (const each of candidates) {
    const outcome = readThread(each);
    if (outcome.ok) continue;
    const said = outcome.problems.filter((problem) => problem.code !== 'unreadable');
    if (said.length > 0) return { ok: false, problems: said };
  }
  return refuse({ code: 'no-thread', field: 'line', data });
}

/**
 * Reads one callout, such as `6× M10×1.5-6H ↧15 / Ø8.5 ↧16.5` or `4X 1/4-20 UNC-2B THRU`.
 * Lengths come back in mm: a metric thread's line is read in mm and an inch thread's in inches unless a
 * unit stands beside the number. Refuses with `empty-line`, `no-thread`, `count-absurd` or a problem of
 * `readThread`; words it could not read come back in a `not-read` note. Never throws.
 * Sources: `iso-129-1`, `iso-6410`, `asme-y14-5`.
 */
export function readCallout(line: string): Outcome<Callout> {
  const text = plainCallout(String(line));
  const reading = readPieces(text);
  if (!reading.thread) return noThread(String(line), text, reading);
  if (reading.count !== undefined && (reading.count < 1 || reading.count > 999)) {
    return refuse({ code: 'count-absurd', field: 'line', data: { typed: String(reading.count) } });
  }
  const callout = toCallout(reading, reading.thread);
  if (reading.leftOver.length > 0) reading.note('not-read', { text: reading.leftOver.join(' ') });
  return answer(callout, [...reading.threadNotes, ...reading.notes]);
}

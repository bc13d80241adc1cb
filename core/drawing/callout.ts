/** Reads one line of a drawing: every word of it is acted on, known to be harmless, or kept as not read. */

import { answer, refuse, type Outcome } from '../outcome';
import { readThread } from '../thread/read';
import type { Thread } from '../thread/thread';
import { bindHole } from './bind-hole';
import { requestFields } from './bind-fields';
import { inchToMm } from '../units';
import { lengthInMm, lengthLimits, plainNumber, type RawLength } from './length';
import { plainCallout } from './normalise';
import { readPieces } from './read-pieces';
import type { Reading } from './reading';
import { wholeThread } from './take-thread';
import * as patterns from './thread-patterns';
import type { Callout } from './types';

/** Turns the lengths of a line into mm, as its thread has them. */
class Measure {
  constructor(
    readonly reading: Reading,
    readonly thread: Thread,
  ) {}

  read(raw: RawLength) {
    const { system, form, diameter } = this.thread;
    // G, Rp and Rc are inch by name and metric on the drawing; NPT is inch throughout.
    const inch = system === 'unified' || form.startsWith('NP');
    return lengthInMm(raw.text, raw.unit, inch, diameter);
  }

  /** mm, with a note where the unit had to be guessed. */
  length(raw: RawLength | undefined): number | undefined {
    const read = raw && this.read(raw);
    if (read?.guessedUnit) this.reading.note('depth-in-other-unit', { typed: raw!.text });
    return read?.value;
  }

  /** mm, of what may be small beside the thread: only what no hole has at all is taken for the other unit. */
  small(raw: RawLength | undefined): number | undefined {
    const value = raw && plainNumber(raw.text);
    if (!raw || !value) return undefined;
    const { system, form } = this.thread;
    const inch = system === 'unified' || form.startsWith('NP');
    const own = inch ? inchToMm(value) : value;
    if (raw.unit) return /^mm/i.test(raw.unit) ? value : inchToMm(value);
    if (own >= 0.1 && own <= 600) return own;
    this.reading.note('depth-in-other-unit', { typed: raw.text });
    return inch ? value : inchToMm(value);
  }

  limits(raw: RawLength | undefined, usual: 'min' | 'max') {
    const read = raw && this.read(raw);
    return read && (raw.tolerance !== undefined || raw.bound !== usual)
      ? lengthLimits(raw, read)
      : null;
  }
}

/** A depth that stood before everything belongs to the thread, or else to the hole. */
function settleEarly(reading: Reading): void {
  const { early } = reading;
  if (!early) return;
  if (!reading.threadDepth) reading.threadDepth = { ...early, how: 'marked' };
  else reading.mark(early.span, 'notRead');
}

/** `THRU .75` in a metric part is inches: no plate of a tapped hole is so thin in mm. */
function thicknessOf(reading: Reading, measure: Measure): number | undefined {
  const raw = reading.thickness?.length;
  if (!raw) return undefined;
  const thin = raw.unit === undefined && (plainNumber(raw.text) ?? 1) < 1;
  return thin ? measure.length(raw) : measure.small(raw);
}

type HolePart = Pick<Callout, 'through' | 'fullThread' | 'hole' | 'thickness' | 'limits'>;

function holePart(reading: Reading, thread: Thread, measure: Measure): HolePart {
  settleEarly(reading);
  const fullThread = measure.length(reading.threadDepth?.length);
  const bound = bindHole(reading, thread, (raw) => ({
    diameter: measure.length(raw.diameter),
    depth: measure.length(raw.depth),
  }));
  const depth = bound?.depth;
  const diameter = bound?.diameter;
  const thickness = thicknessOf(reading, measure);
  const said = reading.threadThrough || bound?.hole.through === true;
  // A thread depth is the least and a hole depth the most, unless the line says otherwise.
  const ofThread = measure.limits(reading.threadDepth?.length, 'min');
  const ofHole = measure.limits(bound?.hole.depth, 'max');
  if (ofThread) reading.notes.push({ code: 'thread-depth-range', numbers: { ...ofThread } });
  if (ofHole) reading.notes.push({ code: 'hole-depth-range', numbers: { ...ofHole } });
  return {
    ...(fullThread !== undefined && { fullThread }),
    through: said,
    ...((depth !== undefined || diameter !== undefined) && {
      hole: {
        ...(diameter !== undefined && { diameter }),
        ...(depth !== undefined && { depth }),
        at: bound!.hole.at,
      },
    }),
    ...(thickness !== undefined && { thickness }),
    ...((ofThread || ofHole) && {
      limits: { ...(ofThread && { fullThread: ofThread }), ...(ofHole && { hole: ofHole }) },
    }),
  };
}

/** Where nothing says how deep: through, as drawings mean it, unless a number was not understood. */
function settleThrough(reading: Reading, part: HolePart, notRead: readonly string[]): boolean {
  if (part.through) return true;
  if (part.fullThread !== undefined || part.hole?.depth !== undefined) return false;
  if (reading.opens) return true;
  if (reading.blind) {
    reading.note('depth-unclear');
    return false;
  }
  reading.note(notRead.some((word) => /\d/.test(word)) ? 'depth-unclear' : 'through-assumed');
  return true;
}

function sinkPart(
  reading: Reading,
  thread: Thread,
  measure: Measure,
): Pick<Callout, 'countersink'> {
  const { sink, chamfer } = reading;
  const width = measure.small(chamfer?.width);
  if (!sink && chamfer && width !== undefined) {
    return { countersink: { diameter: thread.diameter + 2 * width, angle: 2 * chamfer.side } };
  }
  if (!sink) return {};
  if (sink.angle === undefined) reading.note('countersink-angle-assumed');
  const diameter = measure.length(sink.diameter) ?? thread.diameter;
  return {
    countersink: { diameter, angle: sink.angle ?? (thread.system === 'unified' ? 82 : 90) },
  };
}

function toCallout(reading: Reading, thread: Thread): Callout {
  const measure = new Measure(reading, thread);
  const part = holePart(reading, thread, measure);
  const sink = sinkPart(reading, thread, measure);
  const fields = requestFields(reading.fields, (raw) => measure.small(raw));
  const { read, harmless, notRead } = reading.line.sorted();
  const through = settleThrough(reading, part, notRead);
  if (notRead.length > 0) reading.note('not-read', { text: notRead.join(' ') });
  return {
    count: reading.count ?? 1,
    thread: thread.designation,
    ...part,
    through,
    ...sink,
    ...(fields && { fields }),
    ...(reading.chipsMayNotFall && { chipsMayFall: false as const }),
    ...(reading.fasteners.length > 0 && { fasteners: reading.fasteners }),
    read,
    harmless,
    notRead,
  };
}

/** Nothing read as a thread: let the thread reader say why, on what looks most like one. */
function noThread(line: string, reading: Reading): Outcome<Callout> {
  const data = { typed: line };
  const { text } = reading.line;
  if (text.trim() === '') return refuse({ code: 'empty-line', field: 'line', data });
  if (reading.refused) return { ok: false, problems: reading.refused };
  // A line that was understood and holds no thread is a drill, a depth or a count alone.
  const { notRead } = reading.line.sorted();
  if (notRead.length === 0) return refuse({ code: 'no-thread', field: 'line', data });
  const candidates = [
    ...patterns.THREADS.map((pattern) => pattern.exec(text.trim())?.[0]),
    notRead.join(' '),
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

/** A hole for a bolt or screw is none to be tapped, unless TAP, a class or a thread depth stands with it. */
function namesFastenerOnly(reading: Reading): boolean {
  if (reading.fasteners.length === 0) return false;
  const depth = reading.threadDepth !== undefined && reading.threadDepth.how !== 'bare';
  const given = reading.thread?.classGiven === true || reading.loneClass !== undefined;
  return !(reading.tapped || depth || given);
}

/** `Ø9 THRU FOR M8`: wider than the thread and meant for it, so the screw goes through. */
function clearsThread(reading: Reading, thread: Thread): string | null {
  const { threadDepth, tapped, loneClass } = reading;
  if (tapped || loneClass || thread.classGiven || (threadDepth && threadDepth.how !== 'bare'))
    return null;
  if (!/\bfor\b/i.test(reading.line.text)) return null;
  const measure = new Measure(reading, thread);
  const clear = reading.holes.find(({ diameter }) => {
    const size = (diameter && measure.read(diameter)?.value) ?? 0;
    return size >= thread.diameter && size <= 1.4 * thread.diameter;
  });
  return clear ? `Ø${clear.diameter!.text}` : null;
}

/** The line taken apart, for whoever must know more of it than its callout. Source: as `readCallout`; mm. */
export function readingOf(line: string): Reading {
  return readPieces(plainCallout(line));
}

/** What a line says, once it is taken apart. Source: as `readCallout`; mm. */
export function calloutOf(line: string, reading: Reading): Outcome<Callout> {
  if (namesFastenerOnly(reading)) {
    const data = { typed: line, words: reading.fasteners.join(', ') };
    return refuse({ code: 'no-tapped-hole', field: 'line', data });
  }
  const whole = wholeThread(reading);
  if (!whole) return noThread(line, reading);
  if (!whole.ok) return reading.refused ? { ok: false, problems: reading.refused } : whole;
  if (reading.count !== undefined && (reading.count < 1 || reading.count > 999)) {
    return refuse({ code: 'count-absurd', field: 'line', data: { typed: String(reading.count) } });
  }
  if (reading.second !== undefined) {
    const second = { first: whole.value.designation, second: reading.second };
    return refuse({ code: 'two-threads', field: 'line', data: { typed: line, ...second } });
  }
  if (reading.insert === 'solid' || (reading.insert && !whole.value.insert)) {
    const data = { typed: line, thread: whole.value.designation };
    return refuse({ code: 'insert-hole-unknown', field: 'line', data });
  }
  const clear = clearsThread(reading, whole.value);
  if (clear) {
    return refuse({ code: 'no-tapped-hole', field: 'line', data: { typed: line, words: clear } });
  }
  const callout = toCallout(reading, whole.value);
  return answer(callout, [...whole.notes, ...reading.notes]);
}

/**
 * Reads one callout as typed, such as `6× M10×1.5-6H ↧15 / Ø8.5 ↧16.5` or `4X 1/4-20 UNC-2B THRU`, its words
 * in English, German, French, Spanish, Italian or as JIS and DIN write them. Every word of the line comes back in
 * exactly one of `read`, `harmless` and `notRead`. A tab is the edge of a column; a whole number in the first is the count.
 * Lengths come back in mm: a metric thread's line is read in mm and an inch thread's in inches unless a
 * unit stands beside the number. Refuses with `empty-line`, `no-thread`, `no-tapped-hole`, `count-absurd`, `two-threads`,
 * `insert-hole-unknown` or a problem of `readThread`. Never throws.
 * Sources: `iso-129-1`, `iso-6410`, `asme-y14-5`.
 *
 * @example
 * readCallout('4X 1/4-20 UNC-2B THRU').value.count // 4
 * readCallout('BREAK ALL SHARP EDGES').problems[0].code // 'no-thread'
 */
export function readCallout(line: string): Outcome<Callout> {
  const typed = String(line);
  return calloutOf(typed, readingOf(typed));
}

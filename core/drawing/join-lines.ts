/**
 * Lines that are one callout: a drill and its thread, a quantity alone, a depth on a line of its own. Joined
 * only where there is no doubt; a person may join or part them. Common practice.
 */

import { fitsThread } from './bind-hole';
import { calloutOf, readingOf } from './callout';
import { lengthInMm } from './length';
import type { Reading } from './reading';
import { sheetLine } from './sheet-patterns';
import type { Thread } from '../thread/thread';

/** Lines of one hole. `lines`: their numbers as typed, from 1; `text`: what is read, of a table's row in plain order. */
export interface Entry {
  line: string;
  lines: number[];
  text: string;
}

/** What a line could be of a callout; `none` is anything that cannot be part of another. */
type Part = 'thread' | 'count' | 'drill' | 'depth' | 'sink' | 'words' | 'none';

interface Read extends Entry {
  part: Part;
  counted: boolean;
  reading: Reading;
  thread?: Thread;
}

/** More lines than this are no callout. */
const MOST = 4;

function partOf(reading: Reading): Part {
  const { holes, sink, chamfer, fields, count } = reading;
  if (reading.line.sorted().notRead.length > 0 || reading.fasteners.length > 0) return 'none';
  const deep = reading.early ?? reading.threadDepth;
  if (holes.length > 1) return 'none';
  if (holes.length === 1) {
    const [hole] = holes;
    return hole!.diameter && (hole!.depth || hole!.through || hole!.said) ? 'drill' : 'none';
  }
  if (deep || reading.threadThrough) return count === undefined ? 'depth' : 'none';
  if (sink || chamfer || fields.counterbore) return count === undefined ? 'sink' : 'none';
  if (count !== undefined) return 'count';
  return reading.tapped || !/\w/.test(reading.line.text) ? 'none' : 'words';
}

function readEntry(entry: Entry): Read {
  const { line, text } = entry;
  const reading = readingOf(text);
  const counted = reading.count !== undefined;
  const none = { ...entry, part: 'none' as const, counted, reading };
  if (line.includes('\t') || text !== line || sheetLine(line)) return none;
  const callout = calloutOf(text, reading);
  if (callout.ok) {
    const thread = reading.thread;
    return {
      ...entry,
      part: thread ? 'thread' : 'none',
      counted,
      reading,
      ...(thread && { thread }),
    };
  }
  const threadless = !reading.thread && !reading.refused;
  return threadless && callout.problems[0]?.code !== 'no-tapped-hole'
    ? { ...none, part: partOf(reading) }
    : none;
}

function drillFits(drill: Read, { thread, reading }: Read): boolean {
  const raw = drill.reading.holes[0]?.diameter;
  if (!raw || !thread || reading.holes.some(({ diameter }) => diameter)) return false;
  const inch = thread.system === 'unified' || thread.form.startsWith('NP');
  const read = lengthInMm(raw.text, raw.unit, inch, thread.diameter);
  return read !== null && fitsThread(thread, read.value);
}

/** Whether `first` leads `second`: the count and the drill stand before the thread that they belong to. */
function leads(first: Read, second: Read): boolean {
  if (second.part !== 'thread' || second.counted) return false;
  if (first.part === 'count') return true;
  return first.part === 'drill' && drillFits(first, second);
}

/** Whether `second` goes on where `first`, a thread's line, ends. */
function follows(first: Read, second: Read): boolean {
  if (first.part !== 'thread') return false;
  const { reading } = first;
  const deep =
    reading.threadDepth !== undefined || reading.threadThrough || reading.early !== undefined;
  switch (second.part) {
    case 'count':
      return !first.counted;
    case 'depth':
      return !deep;
    case 'sink':
      return !reading.sink && !reading.chamfer && !reading.fields.counterbore;
    case 'words':
      return true;
    case 'drill':
      return !second.counted && drillFits(second, first);
    default:
      return false;
  }
}

function joined(first: Entry, second: Entry): Read {
  return readEntry({
    line: `${first.line}
${second.line}`,
    lines: [...first.lines, ...second.lines],
    text: `${first.text}
${second.text}`,
  });
}

/** Whether the two may be one, neither losing what it said alone. */
function mayJoin(first: Read, second: Read): Read | null {
  if (first.lines.length + second.lines.length > MOST) return null;
  if (second.lines[0]! !== first.lines.at(-1)! + 1) return null;
  if (!leads(first, second) && !follows(first, second)) return null;
  const both = joined(first, second);
  const lost = both.reading.line.sorted().notRead.length;
  const before =
    first.reading.line.sorted().notRead.length + second.reading.line.sorted().notRead.length;
  return both.part === 'thread' && lost <= before ? both : null;
}

/** A bare `4X` belongs to what comes, `(4 PLACES)` to what was. */
const comesBefore = ({ line }: Entry) => /[x×]\s*\)?\s*$/i.test(line);

/**
 * Lines as callouts: those that surely belong together in one, blank ones passed over. `joins`: what a
 * person said, by number of the second line. What is in a table's row stays a row. Source: common practice; no unit.
 */
export function joinLines(
  entries: readonly Entry[],
  joins: Readonly<Record<number, boolean>> = {},
): Entry[] {
  const reads = entries.map(readEntry);
  const done: Read[] = [];
  reads.forEach((read, index) => {
    const before = done.at(-1);
    const asked = joins[read.lines[0]!];
    if (before && asked === true) {
      done[done.length - 1] = joined(before, read);
      return;
    }
    const both = before && asked !== false ? mayJoin(before, read) : null;
    if (!both) done.push(read);
    // Claimed from both sides, it is nobody's.
    else if (doubtful(read, reads[index + 1], joins))
      done.push(comesBefore(read) ? read : { ...read, part: 'none' });
    else done[done.length - 1] = both;
  });
  return done.map(({ line, lines, text }) => ({ line, lines, text }));
}

/** A drill or a quantity that the next line could claim as well belongs to neither for sure. */
function doubtful(
  read: Read,
  next: Read | undefined,
  joins: Readonly<Record<number, boolean>>,
): boolean {
  if (!next || (read.part !== 'drill' && read.part !== 'count')) return false;
  if (next.lines[0]! !== read.lines[0]! + 1 || joins[next.lines[0]!] === false) return false;
  return leads(read, next) && (read.part === 'drill' || comesBefore(read));
}

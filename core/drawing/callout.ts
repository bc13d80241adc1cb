/** Reads one line of a drawing: count, thread, depths, hole, countersink; what is left over is kept and said. */

import { answer, refuse, type Outcome } from '../outcome';
import { readThread } from '../thread/read';
import type { Thread } from '../thread/thread';
import { lengthInMm } from './length';
import { plainCallout } from './normalise';
import * as patterns from './patterns';
import { readPieces, type RawLength, type Reading } from './reading';
import type { Callout } from './types';

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
  // A number that could not be read may well be the depth: then nothing says that it goes through.
  const unclear = assumed && reading.leftOver.some((word) => /\d/.test(word));
  if (assumed) reading.note(unclear ? 'depth-unclear' : 'through-assumed');
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
  if (reading.refused) return { ok: false, problems: reading.refused };
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
 * Reads one callout as typed, such as `6× M10×1.5-6H ↧15 / Ø8.5 ↧16.5` or `4X 1/4-20 UNC-2B THRU`.
 * Lengths come back in mm: a metric thread's line is read in mm and an inch thread's in inches unless a
 * unit stands beside the number. Refuses with `empty-line`, `no-thread`, `count-absurd`, `two-threads` or a problem of
 * `readThread`; words it could not read come back in a `not-read` note. Never throws.
 * Sources: `iso-129-1`, `iso-6410`, `asme-y14-5`.
 *
 * @example
 * readCallout('4X 1/4-20 UNC-2B THRU').value.count // 4
 * readCallout('BREAK ALL SHARP EDGES').problems[0].code // 'no-thread'
 */
export function readCallout(line: string): Outcome<Callout> {
  const text = plainCallout(String(line));
  const reading = readPieces(text);
  if (!reading.thread) return noThread(String(line), text, reading);
  if (reading.count !== undefined && (reading.count < 1 || reading.count > 999)) {
    return refuse({ code: 'count-absurd', field: 'line', data: { typed: String(reading.count) } });
  }
  if (reading.second !== undefined) {
    const second = { first: reading.thread.designation, second: reading.second };
    return refuse({ code: 'two-threads', field: 'line', data: { typed: String(line), ...second } });
  }
  const callout = toCallout(reading, reading.thread);
  if (reading.leftOver.length > 0) reading.note('not-read', { text: reading.leftOver.join(' ') });
  return answer(callout, [...reading.threadNotes, ...reading.notes]);
}

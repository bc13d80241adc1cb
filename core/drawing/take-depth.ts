/** Depths and THRU, each bound to what it belongs to. */

import * as holes from './hole-patterns';
import { plainNumber, rawLength, type RawLength } from './length';
import { newHole, type RawHole, type Reading, type Span } from './reading';
import { readable } from './take-thread';

function same(a: RawLength, b: RawLength): boolean {
  return plainNumber(a.text) === plainNumber(b.text);
}

interface Taken {
  length: RawLength;
  span: Span;
  at?: 'point' | undefined;
}

function depthOfThread(reading: Reading, taken: Taken, how: 'said' | 'marked' | 'bare'): void {
  const { length, span } = taken;
  const had = reading.threadDepth;
  if (!had) reading.threadDepth = { length, how, span };
  else if (had.how !== 'said' && how === 'said' && !reading.holes.some(({ depth }) => depth)) {
    // `M10 20 DEEP, 15 FULL THREAD`: the first was the hole's.
    reading.threadDepth = { length, how, span };
    if (!same(had.length, length)) depthOfHole(reading, had);
  } else if (!same(had.length, length)) reading.mark(span, 'notRead');
}

/** The hole that a depth belongs to: the one spoken of, else one that has none yet, else a new one. */
function holeFor(reading: Reading, span: Span): RawHole {
  const { subject } = reading;
  if (typeof subject === 'object') return subject;
  return (
    reading.holes.find(({ depth, through }) => !depth && !through) ??
    reading.holes[0] ??
    newHole(reading, false, span)
  );
}

function depthOfHole(reading: Reading, { length, span, at }: Taken): void {
  const hole = holeFor(reading, span);
  hole.spans.push(span);
  if (at) hole.at = at;
  if (!hole.depth) hole.depth = length;
  else if (!same(hole.depth, length)) reading.mark(span, 'notRead');
}

/** A depth that does not say whose it is goes by what stands before it. */
function bareDepth(reading: Reading, taken: Taken, how: 'marked' | 'bare'): void {
  const { subject } = reading;
  if (subject === 'other') reading.mark(taken.span, 'notRead');
  else if (typeof subject === 'object') depthOfHole(reading, taken);
  else if (subject === 'thread') {
    if (!reading.threadDepth) depthOfThread(reading, taken, how);
    else if (reading.parted || taken.at) depthOfHole(reading, taken);
    else if (!same(reading.threadDepth.length, taken.length)) reading.mark(taken.span, 'notRead');
  } else if (!reading.early) reading.early = taken;
  else reading.mark(taken.span, 'notRead');
}

function takenLength(groups: Record<string, string | undefined>, span: Span): Taken {
  const length = rawLength(groups);
  const after = groups['after'];
  if (after && !length.bound) length.bound = /min/i.test(after) ? 'min' : 'max';
  const at = /point|tip/i.test(groups['at'] ?? '') ? ('point' as const) : undefined;
  return { length, span, at };
}

/** Takes a depth, and binds it to its thread or its hole. Source: common practice; no unit. */
export function takeDepth(reading: Reading): boolean {
  const ofThread = reading.takeOne(holes.THREAD_DEPTH);
  if (ofThread) {
    reading.tapped ||= /tap/i.test(ofThread.found[0]);
    depthOfThread(reading, takenLength(ofThread.found.groups!, ofThread.span), 'said');
    if (reading.subject === 'none' || reading.subject === 'other') reading.subject = 'thread';
    return true;
  }
  const ofHole = reading.takeOne(holes.DRILL_DEPTH);
  if (ofHole) {
    const { subject } = reading;
    if (typeof subject !== 'object' || subject.depth) reading.subject = 'none';
    depthOfHole(reading, takenLength(ofHole.found.groups!, ofHole.span));
    return true;
  }
  const bare = reading.takeOne(holes.DEPTH);
  if (!bare) return false;
  const how = /↧|deep|dp|depth/i.test(bare.found[0]) ? 'marked' : 'bare';
  bareDepth(reading, takenLength(bare.found.groups!, bare.span), how);
  return true;
}

/** Takes THRU, and the thickness that may stand after it. Source: common practice; no unit. */
export function takeThrough(reading: Reading): boolean {
  const taken = reading.take(holes.THROUGH);
  if (!taken) return false;
  if (/tap/i.test(taken.found[0])) reading.tapped = true;
  const { subject } = reading;
  if (/drill/i.test(taken.found[0])) {
    const hole = typeof subject === 'object' ? subject : newHole(reading, true, taken.span);
    hole.through = true;
  } else if (typeof subject === 'object') subject.through = true;
  else if (subject === 'other') reading.mark(taken.span, 'notRead');
  else reading.threadThrough = true;
  if (subject === 'other') return true;
  const thick = holes.THICKNESS.exec(reading.rest);
  if (!thick || readable(reading.rest)) return true;
  const span = reading.advance(thick[0].length, 'read');
  const { thick: text = '', thickUnit: unit } = thick.groups ?? {};
  if (reading.thickness) reading.mark(span, 'notRead');
  else reading.thickness = { length: { text, unit }, span };
  return true;
}

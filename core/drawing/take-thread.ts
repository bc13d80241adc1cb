/** The thread of a line, and what is said of it elsewhere: class, hand, insert, fine or coarse. */

import type { Outcome, Problem } from '../outcome';
import { readThread } from '../thread/read';
import type { Thread } from '../thread/thread';
import type { Reading } from './reading';
import * as patterns from './thread-patterns';

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

/** Whether a thread can be read from the beginning of this text. Source: `readThread`; no unit. */
export function readable(text: string): boolean {
  return spellings(text).some((found) => readThread(found).ok);
}

/** Takes the thread of the line, read or refused. Source: common practice; no unit. */
export function takeThread(reading: Reading): boolean {
  if (reading.thread || reading.refused) return false;
  for (const found of spellings(reading.rest)) {
    const { text, depth } = withoutDepthAsPitch(found);
    const outcome = readThread(text);
    if (!outcome.ok && !settles(text, outcome.problems)) continue;
    const span = reading.advance(found.length, 'read');
    reading.subject = 'thread';
    reading.threadText = text;
    if (!outcome.ok) {
      reading.refused = outcome.problems;
      return true;
    }
    reading.thread = outcome.value;
    reading.threadNotes = outcome.notes;
    if (depth && !reading.threadDepth) {
      reading.threadDepth = { length: { text: depth, unit: undefined }, how: 'bare', span };
    }
    return true;
  }
  return false;
}

/** A second thread on the line: which depth belongs to which cannot be known. */
export function takeSecondThread(reading: Reading): boolean {
  if (!reading.thread) return false;
  for (const found of spellings(reading.rest)) {
    // A bare pair of numbers is a tolerance or a range as often as a thread.
    if (!/[A-Z]/i.test(found)) continue;
    const outcome = readThread(found);
    if (!outcome.ok) continue;
    if (outcome.value.designation !== reading.thread.designation) reading.second ??= found.trim();
    reading.advance(found.length, 'read');
    reading.subject = 'thread';
    return true;
  }
  return false;
}

/** Takes hand, insert, fine or coarse, and a class that stands apart. Source: common practice; no unit. */
export function takeAboutThread(reading: Reading): boolean {
  if (reading.take(patterns.LEFT_HAND)) {
    reading.hand = 'left';
    return true;
  }
  if (reading.take(patterns.RIGHT_HAND, 'harmless')) return true;
  if (reading.take(patterns.SOLID_INSERT)) {
    reading.insert = 'solid';
    return true;
  }
  if (reading.take(patterns.WIRE_INSERT)) {
    reading.insert ??= 'wire';
    return true;
  }
  const fine = reading.take(patterns.FINE);
  const series = fine ?? reading.take(patterns.COARSE);
  if (series) {
    if (reading.seriesWord) reading.mark(series.span, 'notRead');
    else reading.seriesWord = { word: fine ? 'fine' : 'coarse', span: series.span };
    return true;
  }
  const lone = reading.take(patterns.LONE_CLASS);
  if (!lone) return false;
  if (reading.loneClass) reading.mark(lone.span, 'notRead');
  else reading.loneClass = { text: lone.found[1]!, span: lone.span };
  return true;
}

const METRIC_SIZE = /^\s*(?:(?:EG|STI)\s*)?M[JF]?\s*\d+(?:\.\d+)?(?:\s*x\s*\d*\.?\d+)?/i;

/** The thread with all that the line says of it; null where it has none. Source: `readThread`; no unit. */
export function wholeThread(reading: Reading): Outcome<Thread> | null {
  const { thread, threadText, loneClass, seriesWord, hand, insert } = reading;
  if (threadText === undefined) return null;
  if (!thread && !(seriesWord || loneClass)) return null;
  let text = threadText;
  if (seriesWord && /^\s*(?:EG|STI)?\s*M/i.test(threadText)) {
    text = text.replace(METRIC_SIZE, `$& ${seriesWord.word}`);
  } else if (
    seriesWord &&
    thread &&
    !(seriesWord.word === 'fine' ? /F$/ : /C$/).test(thread.series)
  ) {
    reading.mark(seriesWord.span, 'notRead');
  }
  if (loneClass && !thread?.classGiven) text += `-${loneClass.text}`;
  else if (loneClass && thread?.class !== loneClass.text) reading.mark(loneClass.span, 'notRead');
  if (hand) text += ' LH';
  if (insert && !thread?.insert) text = `${thread?.system === 'unified' ? 'STI' : 'EG'} ${text}`;
  return readThread(text);
}

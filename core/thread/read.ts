/** Reads a thread designation as drawings, drawers and people write it. */

import { refuse, type Outcome } from '../outcome';
import { readMetric } from './metric';
import { normalise } from './normalise';
import { notCovered } from './not-covered';
import { splitParts, threadProblem, type Parts } from './parts';
import { readPipe } from './pipe';
import type { Thread } from './thread';
import { readUnified } from './unified';

/** Longer than any designation: such a text is something else. */
const LONGEST = 120;

function readParts(parts: Parts): Outcome<Thread> {
  const family = notCovered(parts.text);
  if (family) return refuse(threadProblem('not-covered', parts.typed, { family }));
  const reading =
    countedThread(parts) ?? readMetric(parts) ?? readPipe(parts) ?? readUnified(parts);
  return reading ?? refuse(threadProblem('unreadable', parts.typed));
}

/** 4x M8, 6x 1/4-20: how many holes is not part of the thread. */
const COUNT = /^(\d{1,3}\s?x)\s?(?=M|#|\d+(?:-\d+)?\/\d|G|R[PC])/;

function countedThread(parts: Parts): Outcome<Thread> | null {
  const count = COUNT.exec(parts.text);
  if (!count) return null;
  const reading = readParts({ ...parts, text: parts.text.slice(count[0].length) });
  if (!reading.ok) return reading;
  const data = { extra: (count[1] ?? '').replace(' ', ''), suggestion: reading.value.designation };
  return refuse(threadProblem('extra-words', parts.typed, data));
}

/** The designation to offer: without its class unless one was typed. */
function suggestionOf(reading: Outcome<Thread>): string | undefined {
  if (!reading.ok) return reading.problems[0]?.data?.['suggestion'];
  const { designation, classGiven, class: grade } = reading.value;
  return classGiven ? designation : designation.replace(`-${grade}`, '');
}

/** 8x1.25, 8 mm, 3x8 mm: read again with an M in front, else by the size alone, to offer what was meant. */
function metricSuggestion(parts: Parts): Outcome<Thread> {
  const [size = ''] = parts.text.split('x');
  const suggestion =
    [parts.text, size]
      .map((text) => readMetric({ ...parts, text: `M${text}` }))
      .map((again) => again && suggestionOf(again))
      .find((offer) => offer) ?? `M${size}`;
  return refuse(threadProblem('metric-letter-missing', parts.typed, { suggestion }));
}

/**
 * Reads a thread designation: metric (M, MJ, EG), Unified (UN, UNJ, STI) or pipe (G, Rp, Rc, NPT kin).
 *
 * @param text as typed: `M8x1.25-6H`, `1/4-20 UNC-2B`, `#10-32`, `G1/4`; case, dashes, fractions, decimal
 *   commas and spaces as they come.
 * @returns the thread, its lengths in mm, with its canonical `designation`, which reads back to itself, and notes on everything
 *   that was assumed; or one problem on field `thread` (codes: {@link THREAD_PROBLEM_CODES}).
 *   Never throws. Sources: ISO 965-1, ISO 261, ASME B1.1, ISO 228-1, ISO 7-1, ASME B1.20.1.
 *
 * @example
 * readThread('m8').value.designation // 'M8x1.25-6H'
 * readThread('#10-32').value.series // 'UNF'
 * readThread('M8x9').ok // false
 */
export function readThread(text: string): Outcome<Thread> {
  const typed = String(text ?? '');
  if (typed.length > LONGEST) return refuse(threadProblem('unreadable', typed.slice(0, LONGEST)));
  const normal = normalise(typed);
  if (normal.text === '') {
    const code = typed.trim() === '' ? 'empty' : 'unreadable';
    return refuse(threadProblem(code, typed));
  }
  const parts = splitParts(typed, normal);
  if (normal.inMm && /^[\d.]+(?:x[\d.]+)?$/.test(parts.text)) return metricSuggestion(parts);
  const reading = readParts(parts);
  if (!reading.ok && reading.problems[0]?.code === 'metric-letter-missing') {
    return metricSuggestion(parts);
  }
  if (normal.external === undefined || !reading.ok) return reading;
  const data = { class: normal.external, suggestion: reading.value.designation };
  return refuse(threadProblem('external-class', typed, data));
}

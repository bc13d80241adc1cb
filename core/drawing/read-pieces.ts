/** One line of a drawing taken apart, piece by piece, from left to right. */

import type { MarkedText } from './marked';
import { Reading } from './reading';
import { takeDepth, takeThrough } from './take-depth';
import * as feature from './take-feature';
import * as hole from './take-hole';
import * as thread from './take-thread';
import * as word from './take-words';

/** What is surest stands first: a piece that another could be mistaken for comes before that other. */
const STEPS: readonly ((reading: Reading) => boolean)[] = [
  word.takeQuoted,
  hole.takeCount,
  hole.takeCircle,
  hole.takeFrame,
  feature.takeOpening,
  feature.takeEntry,
  hole.takeSink,
  hole.takeBore,
  feature.takeCrossing,
  hole.takeNamedDrill,
  hole.takeDiameter,
  feature.takeDuty,
  word.takeFastener,
  thread.takeThread,
  thread.takeSecondThread,
  takeDepth,
  takeThrough,
  thread.takeAboutThread,
  feature.takeCored,
  feature.takeShape,
  feature.takeLater,
  word.takeSubject,
  word.takeHarmless,
  word.takeMarks,
];

/** Reads a plain callout to its end; nothing is judged here, and nothing lost. Source: derived; no unit. */
export function readPieces(line: MarkedText): Reading {
  const reading = new Reading(line);
  while (reading.line.text[reading.at] === ' ') reading.at += 1;
  while (reading.rest.length > 0) {
    const small = reading.small.length;
    if (!STEPS.some((step) => step(reading))) word.takeUnknown(reading);
    // Small words belong to the unknown one that follows them at once, or to nothing.
    if (reading.small.length === small) reading.small = [];
  }
  return reading;
}

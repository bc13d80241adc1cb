/** Words that name a fastener, switch what is spoken of, say nothing, or are not understood. */

import * as fasteners from './fastener-patterns';
import { HARMLESS, ITEM, MARKS } from './harmless';
import * as holes from './hole-patterns';
import { newHole, type Reading } from './reading';

/** Takes a bolt, screw, stud, nut, or clearance. Source: common practice; no unit. */
export function takeFastener(reading: Reading): boolean {
  const { FASTENER, CLEARANCE, FASTENER_STANDARD, GRADE } = fasteners;
  const taken = reading.takeOne([FASTENER, CLEARANCE, FASTENER_STANDARD, GRADE]);
  if (!taken) return false;
  if (!GRADE.test(taken.found[0])) reading.fasteners.push(taken.found[0].trim());
  else reading.mark(taken.span, 'notRead');
  return true;
}

/** DRILL, TAP and HOLE say what the next depth belongs to. */
export function takeSubject(reading: Reading): boolean {
  const tap = reading.take(holes.TAP_WORD);
  if (tap) {
    reading.tapped ||= /tap|thread|thd/i.test(tap.found[0]);
    reading.subject = 'thread';
    return true;
  }
  const drill = reading.take(holes.DRILL_WORD);
  if (drill) {
    const open = reading.holes.find(({ depth, through }) => !depth && !through);
    if (open) reading.subject = open;
    else newHole(reading, true, drill.span);
    return true;
  }
  if (!reading.take(holes.HOLE_WORD)) return false;
  reading.partedAt = reading.at;
  return true;
}

/** Takes a word that changes nothing. Source: common practice; no unit. */
export function takeHarmless(reading: Reading): boolean {
  if (reading.line.text.slice(0, reading.at).trim() === '' && reading.take(ITEM, 'harmless'))
    return true;
  const typical = /^typ(?:ical)?\b/i.test(reading.rest);
  for (const { pattern } of HARMLESS) {
    const taken = reading.take(pattern, 'harmless');
    if (!taken) continue;
    if (/^[a-z]{1,4}$/.test(taken.found[0].toLowerCase())) reading.small.push(taken.span);
    if (typical) reading.note('typical');
    return true;
  }
  return false;
}

const PARTS = /[/,;¦¶]/;

/** Takes marks that only part words. Source: common practice; no unit. */
export function takeMarks(reading: Reading): boolean {
  // A point before a figure begins a number.
  if (/^\.\d/.test(reading.rest)) return false;
  let found = MARKS.exec(reading.rest)?.[0] ?? '';
  if (found.endsWith('.') && /^\d/.test(reading.rest.slice(found.length)))
    found = found.slice(0, -1);
  if (found === '') return false;
  reading.advance(found.length, 'harmless');
  if (PARTS.test(found)) reading.partedAt = reading.at;
  return true;
}

/** Work that no plan of one hole holds, made of words that each would be taken for something else. */
const QUOTED =
  /^(?:(?:match|line|transfer|back|jig|spot)[- ](?:drill|bore|tap|mark|face)(?:ed)?\b|(?:drill|tap)(?:led|ped)?\s+(?:(?:and|&)\s+tap(?:ped)?\s+)?(?:in|at|on)\s+(?:assembly|assy|position|place|situ)\b|(?:both|far|other|opposite|back)\s+(?:sides?|ends?|faces?)\b)/i;

/** Takes work that is quoted whole. Source: common practice; no unit. */
export function takeQuoted(reading: Reading): boolean {
  return reading.take(QUOTED, 'notRead') !== null;
}

/** What nobody understood: a whole word of it at a time. */
export function takeUnknown(reading: Reading): void {
  const word = /^(?:[\p{L}\p{N}][^\s¦¶,;/()[\]]*|[^\s])/u.exec(reading.rest)?.[0] ?? reading.rest;
  for (const span of reading.small) reading.mark(span, 'notRead');
  reading.advance(Math.max(1, word.length), 'notRead');
}

/** Reads Unified inch designations: UN, UNJ, and STI holes for wire thread inserts. */

import { answer, refuse, type Note, type Outcome } from '../outcome';
import { inchToMm, MM_PER_INCH } from '../units';
import { sizeAndPitch, type PairReading } from './unified-pair';
import { settlePair } from './unified-check';
import { seriesName } from './unified-names';
import { Tail, plainNumber, threadNote, threadProblem, type Parts } from './parts';
import type { Thread } from './thread';
import { isInchPair, isListedPair, isNumberPair, unifiedSeries } from './unified-series';

const SERIES =
  /^[\s\-"]*((?:\d{1,2}-?)?(?:UNJEF|UNJC|UNJF|UNJS|UNJ|UNREF|UNRC|UNRF|UNRS|UNR|UNEF|UNC|UNF|UNS|UN|NEF|NC|NF|NS|N|COARSE|FINE))(?![A-Z])/;
const CLASS = /^[\s\-x]*(\d{1,2}[A-Z](?:\d[A-Z])?)(?![A-Z0-9])/;
const GAUGING = /^[\s-]*\((2[123]A?)\)/;
const LENGTH = /^[\sx-]+(\.?\d[\d./]*(?:[\s-]\d+\/\d+)?"?)(?![A-Z0-9])/;

interface Reading extends PairReading {
  series?: string;
  class?: string;
  gauging?: string;
  length?: string;
  extra: string;
}

/** Puts a series typed in front (`UNC 1/4-20`) behind. */
function seriesLast(text: string): string {
  return text.replace(/^(UN[A-Z]{0,3}|NEF|NC|NF|NS)[\s-]*(?=[\d#.])(.*)$/, '$2 $1');
}

function scan(text: string): Reading | null {
  const tail = new Tail(seriesLast(text));
  const pair = sizeAndPitch(tail, SERIES);
  if (!pair) return null;
  const reading: Reading = { ...pair, extra: '' };
  for (let before = ''; before !== tail.rest;) {
    before = tail.rest;
    const series = reading.series === undefined ? tail.take(SERIES) : null;
    if (series) reading.series = series[1] ?? '';
    const found = reading.class === undefined ? tail.take(CLASS) : null;
    if (found) reading.class = found[1] ?? '';
    const gauging = tail.take(GAUGING);
    if (gauging) reading.gauging = gauging[1] ?? '';
  }
  tail.rest = tail.rest.replace(/[()]/g, ' ');
  const length = tail.take(LENGTH);
  if (length) reading.length = length[1] ?? '';
  reading.extra = tail.left;
  return reading;
}

/** A whole-inch size keeps its inch mark where it would else be read as a number size. */
function spellSize(size: string, tpi: number): string {
  const whole = /^\d+$/.test(size) ? Number(size) : null;
  if (whole === null) return size;
  if (whole > 6) return `${size}"`;
  const bareIsInches = !isNumberPair(whole, tpi) && isInchPair(whole, tpi);
  const numberCannot = 1 / tpi >= (0.06 + 0.013 * whole) / 2;
  return bareIsInches || numberCannot ? size : `${size}"`;
}

function build(parts: Parts, reading: Reading, tpi: number, form: 'UN' | 'UNJ'): Thread {
  const { size, diameter } = reading.size;
  const series = seriesName(unifiedSeries(diameter, tpi), form);
  const used = reading.class ?? (form === 'UNJ' ? '3B' : '2B');
  const word = series.replace(/^\d+-/, '');
  const pair = `${spellSize(size, tpi)}-${plainNumber(tpi)}`;
  const hand = parts.hand === 'left' ? '-LH' : '';
  return {
    designation: `${parts.insert ? 'STI ' : ''}${pair} ${word}-${used}${hand}`,
    system: 'unified',
    form,
    diameter: inchToMm(diameter),
    pitch: MM_PER_INCH / tpi,
    inch: { size, diameter, tpi },
    series,
    standard: isListedPair(diameter, tpi),
    class: used,
    classGiven: reading.class !== undefined,
    hand: parts.hand,
    insert: parts.insert,
  };
}

/** The designation without its class, for a suggestion: `1/4-20 UNC`. */
function short(thread: Thread): string {
  return thread.designation.replace(`-${thread.class}`, '');
}

function classProblem(parts: Parts, given: string, suggestion: string) {
  const data = { class: given, suggestion };
  if (/^\d+A$/.test(given)) return threadProblem('external-class', parts.typed, data);
  if (/^\d+B$/.test(given)) {
    return threadProblem('internal-grade', parts.typed, { ...data, system: 'unified' });
  }
  return threadProblem('class-of-other-system', parts.typed, data);
}

function notesOf(parts: Parts, reading: Reading, thread: Thread): Note[] {
  const notes: Note[] = [];
  if (!thread.standard) {
    notes.push(threadNote('not-standard-pair', { designation: thread.designation }));
  }
  if (!thread.classGiven) notes.push(threadNote('class-assumed', { class: thread.class }));
  if (parts.normal.fit) {
    notes.push(threadNote('fit-internal-part', { typed: parts.normal.fit, class: thread.class }));
  }
  if (reading.gauging) notes.push(threadNote('gauging-dropped', { typed: reading.gauging }));
  return notes;
}

/** Reads a Unified designation; null when the text is none. Source: ASME B1.1 (rules partly from memory). */
export function readUnified(parts: Parts): Outcome<Thread> | null {
  const reading = scan(parts.text);
  if (!reading) return null;
  const checked = settlePair(parts, reading);
  if (!checked.ok) return checked;
  const { tpi, form } = checked.value;
  const settled: Reading = { ...reading, size: checked.value.size };
  const usual = build(parts, { ...settled, class: undefined }, tpi, form);
  const given = reading.class;
  if (given !== undefined && !/^[123]B$/.test(given)) {
    return refuse(classProblem(parts, given, usual.designation));
  }
  const thread = build(parts, settled, tpi, form);
  if (reading.length !== undefined) {
    const grade = /^[123]$/.test(reading.length) && parts.text.endsWith(`-${reading.length}`);
    if (grade && given === undefined) {
      const suggestion = `${short(usual)}-${reading.length}B`;
      const data = { class: reading.length, suggestion };
      return refuse(threadProblem('class-letter-missing', parts.typed, data));
    }
    const length = reading.length.replace('"', '');
    const suggestion = given === undefined ? short(usual) : thread.designation;
    return refuse(threadProblem('length-not-needed', parts.typed, { length, suggestion }));
  }
  if (reading.extra) {
    const data = { extra: reading.extra, suggestion: thread.designation };
    return refuse(threadProblem('extra-words', parts.typed, data));
  }
  return answer(thread, [...checked.notes, ...notesOf(parts, reading, thread)]);
}

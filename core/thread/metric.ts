/** Reads metric designations: M, MJ, and EG holes for wire thread inserts. */

import { answer, refuse, type Note, type Outcome } from '../outcome';
import {
  coarsePitch,
  lacksGradeSix,
  listedPitches,
  metricSeries,
  usualMetricClass,
} from './metric-series';
import { Tail, plainNumber, threadNote, threadProblem, type Parts } from './parts';
import type { Thread } from './thread';

const NUMBER = '(\\d+(?:\\.\\d+)?|\\.\\d+)';
const END = '(?![A-Z0-9./])';
const SIZE = new RegExp(`^(MJ|M)[\\s-]*${NUMBER}(?![\\d])`);
const PITCH = new RegExp(`^(\\s?x|-|\\s)[\\s-]*P?\\s?${NUMBER}${END}`);
const CLASS = /^([\s\-x]*)(\d{1,2}[A-Z](?:\d[A-Z])?)(?![A-Z0-9])/;
const GROUP = /^[\s-]+([SNL])(?![A-Z0-9])/;
const ENGAGED = new RegExp(`^\\s?-\\s?${NUMBER}${END}`);
const LENGTH = /^[\sx-]+([\d./]+(?:-\d+\/\d+)?)(?![A-Z0-9])/;
const INTERNAL_CLASS = /^[4-8][GH](?:[4-8][GH])?$/;

/** What the words of a metric designation say, before it is judged. */
interface Reading {
  form: 'M' | 'MJ';
  diameter: number;
  pitch?: number;
  pitchBy?: 'x' | 'dash';
  class?: string;
  classByX?: boolean;
  engagement?: string;
  length?: string;
  seriesWord?: 'coarse' | 'fine';
  extra: string;
}

function scan(text: string): Reading | null {
  const head = SIZE.exec(text);
  if (!head) return null;
  const [whole, form, size] = head as unknown as [string, 'M' | 'MJ', string];
  const tail = new Tail(text.slice(whole.length).replace(/[()"]/g, ' '));
  const reading: Reading = { form, diameter: Number(size), extra: '' };
  const takeClass = () => {
    const found = tail.take(CLASS);
    if (!found) return false;
    reading.class = found[2] ?? '';
    reading.classByX = (found[1] ?? '').includes('x') && reading.pitch === undefined;
    return true;
  };
  const takeWord = () => {
    const word = tail.take(/^[\s-]*(COARSE|FINE)\b/)?.[1];
    if (word) reading.seriesWord = word === 'COARSE' ? 'coarse' : 'fine';
  };
  takeWord();
  if (!takeClass()) {
    const pitch = tail.take(PITCH);
    if (pitch) {
      reading.pitch = Number(pitch[2]);
      reading.pitchBy = pitch[1]?.includes('x') ? 'x' : 'dash';
    }
    takeWord();
    takeClass();
  }
  takeTail(tail, reading);
  return reading;
}

function takeTail(tail: Tail, reading: Reading): void {
  const engagement = tail.take(GROUP) ?? (reading.class === undefined ? null : tail.take(ENGAGED));
  if (engagement) reading.engagement = engagement[1] ?? '';
  const length = tail.take(LENGTH);
  if (length) reading.length = length[1] ?? '';
  if (reading.class === undefined) {
    const late = tail.take(CLASS);
    if (late) reading.class = late[2] ?? '';
  }
  reading.extra = tail.left;
}

/** Size and pitch as written on drawings, without class: `M8x1.25`. */
function pairName(form: string, diameter: number, pitch: number): string {
  return `${form}${plainNumber(diameter)}x${plainNumber(pitch)}`;
}

function build(parts: Parts, reading: Reading, pitch: number): Thread {
  const { form, diameter } = reading;
  const series = metricSeries(diameter, pitch);
  const given = reading.class;
  const merged =
    given !== undefined && given.slice(0, 2) === given.slice(2) ? given.slice(0, 2) : given;
  const used = merged ?? usualMetricClass(form, diameter, pitch);
  const engagement = reading.engagement;
  const pieces = [pairName(form, diameter, pitch), used];
  if (engagement !== undefined) pieces.push(plainEngagement(engagement));
  if (parts.hand === 'left') pieces.push('LH');
  return {
    designation: (parts.insert ? 'EG ' : '') + pieces.join('-'),
    system: 'metric',
    form,
    diameter,
    pitch,
    series,
    standard: series !== 'non-standard',
    class: used,
    classGiven: given !== undefined,
    hand: parts.hand,
    insert: parts.insert,
    ...(engagement === undefined ? {} : { engagement: engagementOf(engagement) }),
  };
}

function engagementOf(text: string): 'S' | 'N' | 'L' | number {
  return text === 'S' || text === 'N' || text === 'L' ? text : Number(text);
}

function plainEngagement(text: string): string {
  const value = engagementOf(text);
  return typeof value === 'number' ? plainNumber(value) : value;
}

function offers(form: string, diameter: number): string {
  return listedPitches(diameter)
    .map((pitch) => pairName(form, diameter, pitch))
    .join(', ');
}

/** The pitch that was typed or is understood, or why there is none. */
function settlePitch(parts: Parts, reading: Reading): Outcome<number> {
  const { form, diameter, pitch } = reading;
  const size = `${form}${plainNumber(diameter)}`;
  const coarse = coarsePitch(diameter);
  if (pitch === undefined) {
    if (coarse === null || reading.seriesWord === 'fine') {
      return refuse(
        threadProblem('pitch-missing', parts.typed, { size, offers: offers(form, diameter) }),
      );
    }
    const note = threadNote('coarse-assumed', { pitch: plainNumber(coarse) });
    return answer(coarse, [note]);
  }
  const data = { size, pitch: plainNumber(pitch) };
  const listed = metricSeries(diameter, pitch) !== 'non-standard';
  if (!listed && pitch >= diameter / 2) {
    return refuse(threadProblem('pitch-too-large', parts.typed, data));
  }
  if (pitch < 0.05) return refuse(threadProblem('pitch-too-fine', parts.typed, data));
  const series = metricSeries(diameter, pitch);
  if (reading.seriesWord && series !== reading.seriesWord) {
    const wrong = { ...data, series: reading.seriesWord, pairSeries: series };
    const all = { ...wrong, offers: offers(form, diameter) };
    return refuse(threadProblem('series-pitch-mismatch', parts.typed, all));
  }
  if (reading.pitchBy === 'dash')
    return answer(pitch, [threadNote('dash-pitch', { pitch: data.pitch })]);
  return answer(pitch);
}

function classProblem(parts: Parts, given: string, thread: Thread) {
  const suggestion = thread.designation;
  if (/^[123][AB]$/.test(given)) {
    return threadProblem('class-of-other-system', parts.typed, { class: given, suggestion });
  }
  return threadProblem('internal-grade', parts.typed, {
    class: given,
    system: 'metric',
    suggestion,
  });
}

function notesOf(parts: Parts, thread: Thread): Note[] {
  const notes: Note[] = [];
  if (!thread.standard) {
    notes.push(threadNote('not-standard-pair', { designation: thread.designation }));
  }
  if (!thread.classGiven) notes.push(threadNote('class-assumed', { class: thread.class }));
  if (parts.normal.smallClass?.includes('g')) {
    const typed = parts.normal.smallClass;
    notes.push(threadNote('lower-case-class', { typed, class: thread.class }));
  }
  if (parts.normal.fit) {
    notes.push(threadNote('fit-internal-part', { typed: parts.normal.fit, class: thread.class }));
  }
  if (/6[GH]/.test(thread.class) && lacksGradeSix(thread.diameter, thread.pitch)) {
    const usual = usualMetricClass(thread.form as 'M' | 'MJ', thread.diameter, thread.pitch);
    notes.push(threadNote('six-h-not-tabulated', { class: usual }));
  }
  return notes;
}

/** Reads a metric designation; null when the text is none. Sources: ISO 965-1, ISO 261 (from memory). */
export function readMetric(parts: Parts): Outcome<Thread> | null {
  const reading = scan(parts.text);
  if (!reading) return null;
  const { diameter } = reading;
  if (!(diameter >= 0.25 && diameter <= 1000)) {
    return refuse(
      threadProblem('size-out-of-range', parts.typed, { size: `${reading.form}${diameter}` }),
    );
  }
  const pitch = settlePitch(parts, reading);
  if (!pitch.ok) return pitch;
  const thread = build(parts, reading, pitch.value);
  const usual = build(parts, { ...reading, class: undefined, engagement: undefined }, pitch.value);
  const short = pairName(reading.form, diameter, pitch.value);
  const refuseWith = (code: Parameters<typeof threadProblem>[0], data: Record<string, string>) =>
    refuse(threadProblem(code, parts.typed, data));
  const given = reading.class;
  if (given !== undefined && !INTERNAL_CLASS.test(given)) {
    return refuse(classProblem(parts, given, usual));
  }
  if (reading.classByX && given !== undefined) {
    return refuseWith('class-as-pitch', { class: given, suggestion: thread.designation });
  }
  if (reading.length !== undefined) {
    if (
      given === undefined &&
      /^[4-8]$/.test(reading.length) &&
      parts.text.endsWith(`-${reading.length}`)
    ) {
      const data = { class: reading.length, suggestion: `${short}-${reading.length}H` };
      return refuseWith('class-letter-missing', data);
    }
    const suggestion = given === undefined ? short : thread.designation;
    return refuseWith('length-not-needed', { length: reading.length, suggestion });
  }
  if (reading.extra) {
    return refuseWith('extra-words', { extra: reading.extra, suggestion: thread.designation });
  }
  return answer(thread, [...pitch.notes, ...notesOf(parts, thread)]);
}

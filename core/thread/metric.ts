/** Reads metric designations: M, MJ, and EG holes for wire thread inserts. */

import { answer, refuse, type Note, type Outcome, type Problem } from '../outcome';
import {
  coarsePitch,
  lacksGradeSix,
  listedPitches,
  metricSeries,
  usualMetricClass,
} from './metric-series';
import { metricWords, type MetricWords } from './metric-words';
import { plainNumber, threadNote, threadProblem, type Parts } from './parts';
import type { Thread } from './thread';

/** Sizes that are read at all, mm; smaller and larger ones are typing errors. */
const SMALLEST = 0.25;
const LARGEST = 1000;

/** Coarsest pitch of ISO 261, mm: an unlisted one beyond it is a length. */
const COARSEST_PITCH = 8;
const FINEST_PITCH = 0.05;

const INTERNAL_CLASS = /^[4-8][GH](?:[4-8][GH])?$/;

/** Size and pitch as written on drawings, without class: `M8x1.25`. */
function pairName(form: string, diameter: number, pitch: number): string {
  return `${form}${plainNumber(diameter)}x${plainNumber(pitch)}`;
}

/** `6H6H` says no more than `6H`. */
function shortClass(given: string): string {
  const half = given.slice(0, given.length / 2);
  return half + half === given ? half : given;
}

function build(parts: Parts, words: MetricWords, pitch: number): Thread {
  const { form, diameter, engagement } = words;
  const series = metricSeries(diameter, pitch);
  const used =
    words.class === undefined ? usualMetricClass(form, diameter, pitch) : shortClass(words.class);
  const pieces = [pairName(form, diameter, pitch), used];
  if (engagement !== undefined) {
    pieces.push(typeof engagement === 'number' ? plainNumber(engagement) : engagement);
  }
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
    classGiven: words.class !== undefined,
    hand: parts.hand,
    insert: parts.insert,
    ...(engagement === undefined ? {} : { engagement }),
  };
}

function offersFor({ form, diameter }: MetricWords, series?: 'coarse' | 'fine'): string {
  return listedPitches(diameter)
    .filter((pitch) => series === undefined || metricSeries(diameter, pitch) === series)
    .map((pitch) => pairName(form, diameter, pitch))
    .join(', ');
}

function unwrittenPitch(parts: Parts, words: MetricWords): Outcome<number> {
  const coarse = coarsePitch(words.diameter);
  if (coarse !== null && words.seriesWord !== 'fine') {
    const note = threadNote('coarse-assumed', { pitch: plainNumber(coarse) });
    return answer(coarse, words.seriesWord ? [] : [note]);
  }
  const size = `${words.form}${plainNumber(words.diameter)}`;
  const offers = offersFor(words, words.seriesWord);
  const data: Record<string, string> = offers === '' ? { size } : { size, offers };
  return refuse(threadProblem('pitch-missing', parts.typed, data));
}

/** The pitch that was written or is understood, or why there is none. */
function settlePitch(parts: Parts, words: MetricWords): Outcome<number> {
  const { form, diameter, pitch, seriesWord } = words;
  if (pitch === undefined) return unwrittenPitch(parts, words);
  const data = { size: `${form}${plainNumber(diameter)}`, pitch: plainNumber(pitch) };
  const series = metricSeries(diameter, pitch);
  if (series === 'non-standard' && (pitch >= diameter / 2 || pitch > COARSEST_PITCH)) {
    return refuse(threadProblem('pitch-too-large', parts.typed, data));
  }
  if (pitch < FINEST_PITCH) return refuse(threadProblem('pitch-too-fine', parts.typed, data));
  if (seriesWord && series !== seriesWord) {
    const wrong = { ...data, series: seriesWord, pairSeries: series, offers: offersFor(words) };
    return refuse(threadProblem('series-pitch-mismatch', parts.typed, wrong));
  }
  return answer(pitch, words.dashPitch ? [threadNote('dash-pitch', { pitch: data.pitch })] : []);
}

function classProblem(parts: Parts, given: string, usual: Thread): Problem {
  const data = { class: given, suggestion: usual.designation };
  if (/^[123][AB]$/.test(given)) return threadProblem('class-of-other-system', parts.typed, data);
  return threadProblem('internal-grade', parts.typed, { ...data, system: 'metric' });
}

/** What is wrong with the words around size and pitch, if anything. */
function wordsProblem(parts: Parts, words: MetricWords, pitch: number): Problem | null {
  const { class: given, length } = words;
  const usual = build(parts, { ...words, class: undefined, engagement: undefined }, pitch);
  if (given !== undefined && !INTERNAL_CLASS.test(given)) return classProblem(parts, given, usual);
  const { designation } = build(parts, words, pitch);
  if (words.classByX && given !== undefined) {
    const data = { class: given, suggestion: designation };
    return threadProblem('class-as-pitch', parts.typed, data);
  }
  if (length !== undefined) {
    const pair = pairName(words.form, words.diameter, pitch);
    const grade = /^[4-8]$/.test(length) && parts.text.endsWith(`-${length}`);
    if (given === undefined && grade) {
      const data = { class: length, suggestion: `${pair}-${length}H` };
      return threadProblem('class-letter-missing', parts.typed, data);
    }
    const data = { length, suggestion: given === undefined ? pair : designation };
    return threadProblem('length-not-needed', parts.typed, data);
  }
  if (!words.extra) return null;
  return threadProblem('extra-words', parts.typed, { extra: words.extra, suggestion: designation });
}

function notesOf(parts: Parts, thread: Thread): Note[] {
  const notes: Note[] = [];
  const { smallClass, fit } = parts.normal;
  if (!thread.standard) {
    notes.push(threadNote('not-standard-pair', { designation: thread.designation }));
  }
  if (!thread.classGiven) notes.push(threadNote('class-assumed', { class: thread.class }));
  if (smallClass?.includes('g')) {
    notes.push(threadNote('lower-case-class', { typed: smallClass, class: thread.class }));
  }
  if (fit) notes.push(threadNote('fit-internal-part', { typed: fit, class: thread.class }));
  if (/6[GH]/.test(thread.class) && lacksGradeSix(thread.pitch)) {
    const usual = usualMetricClass('M', thread.diameter, thread.pitch);
    notes.push(threadNote('six-h-not-tabulated', { class: usual }));
  }
  return notes;
}

/** Reads a metric designation; null when the text is none. Sources: ISO 965-1, ISO 261 (from memory). */
export function readMetric(parts: Parts): Outcome<Thread> | null {
  const words = metricWords(parts.text);
  if (!words) return null;
  if (!(words.diameter >= SMALLEST && words.diameter <= LARGEST)) {
    const size = `${words.form}${plainNumber(words.diameter)}`;
    return refuse(threadProblem('size-out-of-range', parts.typed, { size }));
  }
  const pitch = settlePitch(parts, words);
  if (!pitch.ok) return pitch;
  const problem = wordsProblem(parts, words, pitch.value);
  if (problem) return refuse(problem);
  const thread = build(parts, words, pitch.value);
  return answer(thread, [...pitch.notes, ...notesOf(parts, thread)]);
}

/** Settles what an inch designation means: number size or inches, its pitch, its series. */

import { answer, refuse, type Note, type Outcome } from '../outcome';
import { coarsePitch, metricSeries } from './metric-series';
import { plainNumber, threadNote, threadProblem, type Parts } from './parts';
import type { InchSize } from './inch-size';
import { settleSize } from './unified-size';
import { pairOffers, readSeriesWord, seriesName, type SeriesWord } from './unified-names';
import type { PairReading } from './unified-pair';
import { isInchPair, isNumberPair, numberSize, seriesTpi, unifiedSeries } from './unified-series';

export interface Settled {
  size: InchSize;
  tpi: number;
  form: 'UN' | 'UNJ';
}

type Refusal = ReturnType<typeof refuse>;

/** Sizes and counts beyond which a text is a typing error: inches, threads per inch. */
const LARGEST = 40;
const FINEST = 250;

function isNamed(base: SeriesWord['base']): base is 'UNC' | 'UNF' | 'UNEF' {
  return base === 'UNC' || base === 'UNF' || base === 'UNEF';
}

/** 8x1.25, 20-1.5: a metric thread without its M. */
function metricWithoutLetter(reading: PairReading, series: SeriesWord | null): boolean {
  const { size, tpi, by } = reading;
  if (series || tpi === undefined || !(size.bare || size.decimal)) return false;
  const value = Number(reading.typedSize);
  if (size.bare && isNumberPair(value, tpi)) return false;
  if (by === 'x' && tpi < value / 2) return true;
  if (size.bare && isInchPair(value, tpi)) return false;
  return metricSeries(value, tpi) !== 'non-standard';
}

function sizeOnly(parts: Parts, reading: PairReading, form: 'UN' | 'UNJ'): Refusal {
  const { size } = reading;
  const offers = pairOffers(size.size, size.diameter, form);
  if (size.bare) {
    const number = numberSize(size.diameter);
    if (number !== null) offers.unshift(...pairOffers(`#${size.size}`, number, form));
    const coarse = coarsePitch(size.diameter);
    if (coarse !== null) offers.push(`M${size.size}x${plainNumber(coarse)}`);
  }
  if (offers.length === 0 && size.bare && numberSize(size.diameter) === null) {
    return refuse(threadProblem('no-such-number-size', parts.typed, { number: size.size }));
  }
  const offered: Record<string, string> = offers.length === 0 ? {} : { offers: offers.join(', ') };
  return refuse(threadProblem('pitch-missing', parts.typed, { size: size.size, ...offered }));
}

/** The series typed against the one the pair has; null where they agree. */
function mismatch(parts: Parts, size: InchSize, tpi: number, word: SeriesWord): Refusal | null {
  const pair = unifiedSeries(size.diameter, tpi);
  const wrongCount = word.constant !== undefined && word.constant !== tpi;
  const named = isNamed(word.base) ? word.base : null;
  if (!wrongCount && (named === null || pair === named)) return null;
  const own = named && seriesTpi(size.diameter, named);
  const series = seriesName(named ?? `${word.constant}-UN`, word.form);
  const pairSeries = seriesName(pair, word.form);
  const offers = [`${size.size}-${plainNumber(tpi)} ${pairSeries.replace(/^\d+-/, '')}`];
  if (own) offers.unshift(`${size.size}-${plainNumber(own)} ${series}`);
  const data = {
    ...{ size: size.size, series, tpi: plainNumber(tpi), pairSeries, offers: offers.join(', ') },
    ...(own ? { seriesTpi: plainNumber(own) } : {}),
  };
  return refuse(threadProblem('series-pitch-mismatch', parts.typed, data));
}

/** UN or UNS typed where the pair has a name of its own. */
function namedNote(size: InchSize, tpi: number, word: SeriesWord): Note[] {
  const pair = unifiedSeries(size.diameter, tpi);
  const loose =
    word.base === 'UN' ? /^UN[CF]$|^UNEF$/.test(pair) : word.base === 'UNS' && pair !== 'UNS';
  return loose
    ? [threadNote('series-named', { typed: word.word, series: seriesName(pair, word.form) })]
    : [];
}

/** 1/4 UNC: the series alone says the pitch. */
function pitchFromSeries(reading: PairReading, word: SeriesWord | null): Outcome<number> | null {
  if (!word || reading.size.bare || !isNamed(word.base)) return null;
  const tpi = seriesTpi(reading.size.diameter, word.base);
  if (tpi === null) return null;
  const data = { series: seriesName(word.base, word.form), tpi: plainNumber(tpi) };
  return answer(tpi, [threadNote('pitch-from-series', data)]);
}

/** 10/32: #10-32 with a slash, or 5/16 without a pitch. */
function slashedPair(parts: Parts, reading: PairReading): Refusal | null {
  const found = /^(\d+)\/(\d+)$/.exec(reading.typedSize);
  const [top, bottom] = [Number(found?.[1]), Number(found?.[2])];
  if (!found || reading.tpi !== undefined || !isNumberPair(top, bottom)) return null;
  const number = `#${top}-${bottom} ${unifiedSeries(numberSize(top) ?? 0, bottom)}`;
  const fraction = reading.problem ? [] : pairOffers(reading.size.size, reading.size.diameter);
  const data = { size: `#${top}`, offers: [number, ...fraction].join(', ') };
  return refuse(threadProblem('which-pitch', parts.typed, data));
}

/** Bounds of size and pitch within which a thread can exist at all. */
function absurd(parts: Parts, size: InchSize, tpi: number): Refusal | null {
  const data = { size: size.size, tpi: plainNumber(tpi) };
  if (!(size.diameter > 0 && size.diameter <= LARGEST)) {
    return refuse(threadProblem('size-out-of-range', parts.typed, { size: size.size }));
  }
  if (!(1 / tpi < size.diameter / 2)) {
    return refuse(threadProblem('pitch-too-large', parts.typed, data));
  }
  return tpi > FINEST ? refuse(threadProblem('pitch-too-fine', parts.typed, data)) : null;
}

/** Size, pitch and form of an inch designation, or what is wrong with them. Source: ASME B1.1. */
export function settlePair(parts: Parts, reading: PairReading): Outcome<Settled> {
  const word = reading.series === undefined ? null : readSeriesWord(reading.series);
  const form = word?.form ?? 'UN';
  const slashed = slashedPair(parts, reading);
  if (slashed) return slashed;
  if (reading.problem) {
    return refuse(threadProblem(reading.problem.code, parts.typed, reading.problem.data));
  }
  if (metricWithoutLetter(reading, word)) {
    return refuse(threadProblem('metric-letter-missing', parts.typed));
  }
  const pitch = reading.tpi === undefined ? pitchFromSeries(reading, word) : answer(reading.tpi);
  if (!pitch?.ok) return sizeOnly(parts, reading, form);
  const tpi = pitch.value;
  const size = settleSize(parts, reading, tpi, word);
  if (!size.ok) return size;
  const wrong = absurd(parts, size.value, tpi) ?? (word && mismatch(parts, size.value, tpi, word));
  if (wrong) return wrong;
  const named = word ? namedNote(size.value, tpi, word) : [];
  const notes = [...(word?.notes ?? []), ...pitch.notes, ...size.notes, ...named];
  return answer({ size: size.value, tpi, form }, notes);
}

/** Settles what an inch designation means: number size or inches, its pitch, its series. */

import { answer, refuse, type Note, type Outcome } from '../outcome';
import { coarsePitch, metricSeries } from './metric-series';
import { plainNumber, threadNote, threadProblem, type Parts } from './parts';
import type { InchSize } from './inch-size';
import { pairOffers, readSeriesWord, seriesName, type SeriesWord } from './unified-names';
import type { PairReading } from './unified-pair';
import { isInchPair, isNumberPair, numberSize, seriesTpi, unifiedSeries } from './unified-series';

export interface Settled {
  size: InchSize;
  tpi: number;
  form: 'UN' | 'UNJ';
}

type Refusal = ReturnType<typeof refuse>;

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
  const data = { size: size.size, offers: offers.join(', ') };
  return refuse(threadProblem('pitch-missing', parts.typed, data));
}

/** `5-16` may be the fraction 5/16 badly typed. Sizes of UN threads only. */
function fractionMeant(size: number, tpi: number): Note[] {
  const value = size / tpi;
  const likely = [2, 4, 8, 16].includes(tpi) && value < 1 && value >= 0.25 && size % 2 === 1;
  if (!likely) return [];
  const fraction = `${size}/${tpi}`;
  const example = pairOffers(fraction, value)[0] ?? fraction;
  return [threadNote('did-you-mean-fraction', { size: String(size), fraction, example })];
}

/** Rule for a bare whole number in front of a pitch: number size, inches, or ask. */
function settleBare(
  parts: Parts,
  reading: PairReading,
  tpi: number,
  series: SeriesWord | null,
): Outcome<InchSize> {
  const value = reading.size.diameter;
  const number = numberSize(value);
  const asNumber = (): Outcome<InchSize> => {
    const size = `#${value}`;
    const note = threadNote('number-size-read', { typed: reading.typedSize, size });
    return answer({ size, diameter: number ?? 0 }, [note]);
  };
  const asInches = (notes: Note[] = []) => answer({ size: String(value), diameter: value }, notes);
  if (isNumberPair(value, tpi)) return asNumber();
  if (isInchPair(value, tpi)) return asInches(series ? [] : fractionMeant(value, tpi));
  if (number === null) {
    return refuse(threadProblem('no-such-number-size', parts.typed, { number: String(value) }));
  }
  const carries = 1 / tpi < number / 2;
  if (series) return carries || value < 1 || value > 6 ? asNumber() : asInches();
  const special = carries
    ? `#${value}-${tpi} UNS`
    : value >= 1 && value <= 6
      ? `${value}-${tpi} UNS`
      : '';
  const offers = [...pairOffers(`#${value}`, number), special].filter(Boolean).join(', ');
  return refuse(threadProblem('which-pitch', parts.typed, { size: `#${value}`, offers }));
}

function settleSize(
  parts: Parts,
  reading: PairReading,
  tpi: number,
  series: SeriesWord | null,
): Outcome<InchSize> {
  const { size, typedSize } = reading;
  if (size.bare) return settleBare(parts, reading, tpi, series);
  const data = { typed: typedSize, size: size.size };
  if (size.decimal) {
    const same = size.size.startsWith('.') || /^\d*\./.test(size.size);
    return answer(size, same ? [] : [threadNote('decimal-read-as', data)]);
  }
  if (size.size.startsWith('#') && !typedSize.startsWith('#')) {
    return answer(size, [threadNote('number-size-read', data)]);
  }
  return answer(size);
}

function mismatch(parts: Parts, size: InchSize, tpi: number, word: SeriesWord): Refusal | null {
  const pair = unifiedSeries(size.diameter, tpi);
  const wrongCount = word.constant !== undefined && word.constant !== tpi;
  const named = word.base === 'UNC' || word.base === 'UNF' || word.base === 'UNEF';
  if (!wrongCount && (!named || pair === word.base)) return null;
  const own = named ? seriesTpi(size.diameter, word.base as 'UNC' | 'UNF' | 'UNEF') : null;
  const typed = seriesName(named ? word.base : `${word.constant}-UN`, word.form);
  const pairSeries = seriesName(pair, word.form);
  const ownOffer = own === null ? [] : [`${size.size}-${plainNumber(own)} ${typed}`];
  const pairOffer = `${size.size}-${plainNumber(tpi)} ${pairSeries.replace(/^\d+-/, '')}`;
  return refuse(
    threadProblem('series-pitch-mismatch', parts.typed, {
      size: size.size,
      series: typed,
      tpi: plainNumber(tpi),
      pairSeries,
      ...(own === null ? {} : { seriesTpi: plainNumber(own) }),
      offers: [...ownOffer, pairOffer].join(', '),
    }),
  );
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

/** Size, pitch and form of an inch designation, or what is wrong with them. Source: ASME B1.1. */
export function settlePair(parts: Parts, reading: PairReading): Outcome<Settled> {
  const word = reading.series === undefined ? null : readSeriesWord(reading.series);
  const form = word?.form ?? 'UN';
  if (reading.problem) {
    return refuse(threadProblem(reading.problem.code, parts.typed, reading.problem.data));
  }
  if (metricWithoutLetter(reading, word)) {
    return refuse(threadProblem('metric-letter-missing', parts.typed));
  }
  let { tpi } = reading;
  const notes: Note[] = [...(word?.notes ?? [])];
  if (
    tpi === undefined &&
    word &&
    !reading.size.bare &&
    word.base !== 'UN' &&
    word.base !== 'UNS'
  ) {
    tpi = seriesTpi(reading.size.diameter, word.base) ?? undefined;
    const data = { series: seriesName(word.base, form), tpi: plainNumber(tpi ?? 0) };
    if (tpi !== undefined) notes.push(threadNote('pitch-from-series', data));
  }
  if (tpi === undefined) return sizeOnly(parts, reading, form);
  const size = settleSize(parts, reading, tpi, word);
  if (!size.ok) return size;
  const limits = { size: size.value.size, pitch: plainNumber(tpi) };
  if (!(size.value.diameter > 0) || size.value.diameter > 40) {
    return refuse(threadProblem('size-out-of-range', parts.typed, { size: size.value.size }));
  }
  if (!(1 / tpi < size.value.diameter / 2)) {
    return refuse(threadProblem('pitch-too-large', parts.typed, limits));
  }
  if (tpi > 250) return refuse(threadProblem('pitch-too-fine', parts.typed, limits));
  const wrong = word && mismatch(parts, size.value, tpi, word);
  if (wrong) return wrong;
  const named = word ? namedNote(size.value, tpi, word) : [];
  return answer({ size: size.value, tpi, form }, [...notes, ...size.notes, ...named]);
}

/** Settles what size an inch designation means: a number size, whole inches, a fraction or a decimal. */

import { answer, refuse, type Note, type Outcome } from '../outcome';
import type { InchSize } from './inch-size';
import { plainNumber, threadNote, threadProblem, type Parts } from './parts';
import { pairOffers, type SeriesWord } from './unified-names';
import type { PairReading } from './unified-pair';
import { isInchPair, isNumberPair, numberSize } from './unified-series';

/** Largest whole number that may be inches when it stands bare. */
const LARGEST_BARE_INCHES = 6;

/** `5-16` may be the fraction 5/16 badly typed: its usual pairs, if it is a size of the UN series. */
function fractionPairs(top: number, bottom: number): string[] {
  const value = top / bottom;
  const isSize = [2, 4, 8, 16].includes(bottom) && value >= 0.25 && value < 1 && top % 2 === 1;
  return isSize ? pairOffers(`${top}/${bottom}`, value) : [];
}

function fractionNote(size: number, tpi: number): Note[] {
  const [example] = fractionPairs(size, tpi);
  if (!example) return [];
  const data = { size: String(size), fraction: `${size}/${tpi}`, example };
  return [threadNote('did-you-mean-fraction', data)];
}

/** Neither a number pair nor an inch pair: what is near, and how to write the special. */
function askWhich(parts: Parts, value: number, number: number, tpi: number) {
  const offers = [...pairOffers(`#${value}`, number), ...fractionPairs(value, tpi).slice(0, 1)];
  if (1 / tpi < number / 2) offers.push(`#${value}-${plainNumber(tpi)} UNS`);
  else if (value >= 1 && value <= LARGEST_BARE_INCHES && 1 / tpi < value / 2) {
    offers.push(`${value}-${plainNumber(tpi)} UNS`);
  }
  const data = { size: `#${value}`, offers: offers.join(', ') };
  return refuse(threadProblem('which-pitch', parts.typed, data));
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
  const asNumber = (diameter: number): Outcome<InchSize> => {
    const size = `#${value}`;
    const note = threadNote('number-size-read', { typed: reading.typedSize, size });
    return answer({ size, diameter }, [note]);
  };
  const inches = { size: String(value), diameter: value };
  if (number !== null && isNumberPair(value, tpi)) return asNumber(number);
  if (isInchPair(value, tpi)) return answer(inches, series ? [] : fractionNote(value, tpi));
  if (number === null) {
    return refuse(threadProblem('no-such-number-size', parts.typed, { number: String(value) }));
  }
  if (!series) return askWhich(parts, value, number, tpi);
  const mayBeInches = value >= 1 && value <= LARGEST_BARE_INCHES;
  return 1 / tpi < number / 2 || !mayBeInches ? asNumber(number) : answer(inches);
}

/**
 * The size that was meant, or the question to ask. A bare whole number is the number size where the pair is
 * a number-series one, inches where it is an inch pair, and else in doubt. `tpi` is threads per inch.
 */
export function settleSize(
  parts: Parts,
  reading: PairReading,
  tpi: number,
  series: SeriesWord | null,
): Outcome<InchSize> {
  const { size, typedSize } = reading;
  if (size.bare) return settleBare(parts, reading, tpi, series);
  const data = { typed: typedSize, size: size.size };
  if (size.decimal) {
    return answer(size, size.size.includes('.') ? [] : [threadNote('decimal-read-as', data)]);
  }
  if (size.size.startsWith('#') && !typedSize.startsWith('#')) {
    return answer(size, [threadNote('number-size-read', data)]);
  }
  return answer(size);
}

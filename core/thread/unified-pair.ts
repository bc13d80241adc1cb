/** Size and threads per inch at the front of an inch designation. */

import type { ThreadProblemCode } from './codes';
import { decimalSize, fractionName, numberName, type InchSize } from './inch-size';
import type { Tail } from './parts';
import { numberSize } from './unified-series';

/** What stood at the front, before it is judged. */
export interface PairReading {
  size: InchSize;
  /** The size as typed. */
  typedSize: string;
  tpi?: number;
  /** What stood between size and pitch. */
  by?: 'x' | '-';
  series?: string;
  problem?: { code: ThreadProblemCode; data: Record<string, string> };
}

const NUMBER = /^#\s?(\d+)(?![./\d]|[\s-]\d+\/)/;
const FRACTION = /^#?(?:(\d+)[\s-])?(\d+)\/(\d+)"?(?![\d.])/;
const DECIMAL = /^(\d*\.\d+)"?(?![\d./])/;
const WHOLE = /^(\d+)("?)(?![\d./]|[ABGH](?![A-Z]))/;
/** Only 4 is ever followed by a half: 2-4 1/2. After other counts a fraction is a length. */
const HALF_PITCH = /^[\s-]+4[\s-]1\/2(?![\d./])/;
const PITCH = /^([\sx-]+)(\d+(?:\.\d+)?|\.\d+)(?![\d./]|[ABGH](?![A-Z]))/;

/** 115/16 may be 1-15/16 or 11-5/16 without its space: every split that leaves a fraction as drawings write it. */
function mixedNumbers(top: string, denominator: number): string[] {
  return [...top].flatMap((_, at) => {
    const rest = top.slice(at + 1);
    const usual = Number(rest) % 2 === 1 && Number(rest) < denominator && !rest.startsWith('0');
    return usual ? [`${top.slice(0, at + 1)}-${rest}/${denominator}`] : [];
  });
}

function fraction(whole: string, top: string, bottom: string): Omit<PairReading, 'typedSize'> {
  const numerator = Number(top);
  const denominator = Number(bottom);
  const typed = (whole ? `${whole}-` : '') + `${top}/${bottom}`;
  const size = { size: typed, diameter: Number(whole || 0) + numerator / denominator };
  if (![2, 4, 8, 16, 32, 64].includes(denominator) || numerator === 0) {
    return { size, problem: { code: 'no-such-inch-size', data: { size: typed } } };
  }
  if (numerator >= denominator) {
    const splits = whole === '' ? mixedNumbers(top, denominator) : [];
    const offers = [...splits, fractionName((numerator / denominator) * 64)].join(', ');
    const data = { fraction: typed, offers };
    return { size, problem: { code: 'improper-fraction', data } };
  }
  const name = numberName(size.diameter) ?? fractionName(size.diameter * 64);
  return { size: { ...size, size: name } };
}

function takeSize(tail: Tail): PairReading | null {
  const number = tail.take(NUMBER);
  if (number) {
    const digits = number[1] ?? '';
    const diameter = numberSize(Number(digits));
    const name = `#${Number(digits)}`;
    const size = { size: name, diameter: diameter ?? 0 };
    if (diameter !== null) return { size, typedSize: name };
    const data = { number: String(Number(digits)) };
    return { size, typedSize: name, problem: { code: 'no-such-number-size', data } };
  }
  const parts = tail.take(FRACTION);
  if (parts) {
    const typedSize = (parts[0] ?? '').replace(/["#]/g, '').replace(/\s/, '-');
    return { ...fraction(parts[1] ?? '', parts[2] ?? '', parts[3] ?? ''), typedSize };
  }
  const decimal = tail.take(DECIMAL);
  if (decimal) {
    const typedSize = decimal[1] ?? '';
    return { size: decimalSize(Number(typedSize)), typedSize };
  }
  const whole = tail.take(WHOLE);
  if (!whole) return null;
  const typedSize = whole[1] ?? '';
  const value = Number(typedSize);
  const size = { size: String(value), diameter: value, bare: whole[2] !== '"' };
  return { size, typedSize };
}

function takePitch(tail: Tail, reading: PairReading): void {
  if (tail.take(HALF_PITCH)) {
    reading.tpi = 4.5;
    reading.by = '-';
    return;
  }
  const pitch = tail.take(PITCH);
  if (!pitch) return;
  reading.tpi = Number(pitch[2]);
  reading.by = pitch[1]?.includes('x') ? 'x' : '-';
}

/** Takes size, pitch and, where it stands between them, the series. Null when no size is in front. */
export function sizeAndPitch(tail: Tail, seriesPattern: RegExp): PairReading | null {
  const reading = takeSize(tail);
  if (!reading) return null;
  takePitch(tail, reading);
  if (reading.tpi === undefined) {
    const series = tail.take(seriesPattern);
    if (series) {
      reading.series = series[1] ?? '';
      takePitch(tail, reading);
    }
  }
  return reading;
}

/**
 * How thick the core of a tap is, before anyone has measured it. Common practice: ranges over many taps,
 * as shares of the major diameter (form tap: of the thread's minor diameter). A measured web is better.
 */

import type { Spread } from '../spread';
import type { TapStyle } from './tap';

interface Share {
  low: number;
  high: number;
}

const SHARES: Record<Exclude<TapStyle, 'thread-mill' | 'straight-flute'>, Share> = {
  'spiral-point': { low: 0.45, high: 0.6 },
  'spiral-flute': { low: 0.38, high: 0.45 },
  form: { low: 0.85, high: 0.9 },
};

/** Straight flute: three flutes, and four or more. */
const STRAIGHT: Record<'three' | 'more', Share> = {
  three: { low: 0.4, high: 0.45 },
  more: { low: 0.45, high: 0.52 },
};

/** Styles that turn in the hole and can twist off. */
export type TwistedStyle = Exclude<TapStyle, 'thread-mill'>;

/**
 * Web diameter to reckon with, mm: the usual range and its middle. `major` of the tap and `minor` of the
 * thread, mm; `flutes` matters to straight-flute taps only. Source: `common-practice`.
 */
export function webSpread(
  style: TwistedStyle,
  major: number,
  minor: number,
  flutes: number,
): Spread {
  const share =
    style === 'straight-flute' ? STRAIGHT[flutes <= 3 ? 'three' : 'more'] : SHARES[style];
  const size = style === 'form' ? minor : major;
  const [low, high] = [share.low * size, share.high * size];
  return { low, likely: (low + high) / 2, high };
}

/**
 * A web as measured with a caliper across the flute bottoms, mm. It cannot be as large as the tap, nor so
 * thin that the flutes would meet: null outside 0.2 to 0.95 of the major diameter. Source: `derived`.
 */
export function measuredWeb(web: number, major: number): Spread | null {
  if (!(web > 0.2 * major && web < 0.95 * major)) return null;
  return { low: web, likely: web, high: web };
}

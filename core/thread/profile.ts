/**
 * The basic 60 degree profile: ISO 68-1, and ASME B1.1 which shares it.
 * H is the height of the sharp triangle, P the pitch; ratios of P.
 */

import { roundHalfUp } from '../units';
import type { Thread } from './thread';

/** Height of the sharp V. */
export const SHARP_HEIGHT = Math.sqrt(3) / 2;
/** 2 x 3H/8: from basic major to basic pitch diameter. */
export const PITCH_DROP = 0.649519053;
/** 2 x 5H/8: from basic major to basic minor diameter. */
export const MINOR_DROP = 1.082531755;
/** 2 x 9H/16: from basic major to minor diameter of J threads, whose crest is cut back further. */
export const J_MINOR_DROP = 0.974278579;
/** Thread height of the 55 degree profile of pipe threads; the standard rounds it to 0.001 mm first. */
export const WHITWORTH_HEIGHT = 0.640327;

export interface BasicDiameters {
  major: number;
  pitch: number;
  minor: number;
}

/**
 * Basic diameters of the screw that the hole takes, mm: nominal size, pitch line, and the basic minor
 * diameter of the profile. Metric to 0.001 mm by ISO 724; inch threads unrounded (their standard rounds in
 * inches: see `threadLimits`); 55 degree pipe threads in the gauge plane by ISO 228-1; American pipe threads
 * by the profile at the outside of the pipe, which a taper only has in one plane.
 * Of a J thread the minor diameter is the raised one. `thread` from `readThread`; never refuses.
 * Sources: `iso-724`, `iso-228-1`, `asme-b1-1`, `asme-b1-20-1`.
 */
export function basicDiameters(thread: Thread): BasicDiameters {
  const { diameter, pitch, form } = thread;
  const whitworth = form === 'G' || form === 'Rp' || form === 'Rc';
  const minorDrop = form === 'MJ' || form === 'UNJ' ? J_MINOR_DROP : MINOR_DROP;
  if (whitworth) {
    const depth = roundHalfUp(WHITWORTH_HEIGHT * pitch, 0.001);
    const below = (depths: number) => roundHalfUp(diameter - depths * depth, 0.001);
    return { major: diameter, pitch: below(1), minor: below(2) };
  }
  const round = (value: number) => (thread.system === 'metric' ? roundHalfUp(value, 0.001) : value);
  return {
    major: diameter,
    pitch: round(diameter - PITCH_DROP * pitch),
    minor: round(diameter - minorDrop * pitch),
  };
}

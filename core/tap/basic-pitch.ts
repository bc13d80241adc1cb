/** The pitch diameter that tap limits count from, as the printed tables round it. */

import { PITCH_DROP } from '../thread/profile';
import type { Thread } from '../thread/thread';
import { mmToInch, roundHalfUp, roundUp } from '../units';

/** Twice the thread height of the profile, in pitches: from the screw's major diameter to the insert tap's. */
const INSERT_HEIGHT = 2 * PITCH_DROP;

/**
 * Basic pitch diameter of a tap for wire-insert holes, inches. Inch sizes: the tap's major diameter to four
 * places, then down to the pitch line and to four places again, which fits every printed row. Metric sizes: the
 * exact one rounded up, which fits all but a few rows; those are .0001 off either way. Both found by fitting.
 */
function insertBasicInch({ inch, diameter, pitch }: Thread): number {
  if (!inch) return roundUp(mmToInch(diameter + PITCH_DROP * pitch), 0.0001);
  const major = roundHalfUp(inch.diameter + INSERT_HEIGHT / inch.tpi, 0.0001);
  return roundHalfUp(major - PITCH_DROP / inch.tpi, 0.0001);
}

/** Basic pitch diameter that the inch limits count from, inches. Source: `handbook-tap-limits`. */
export function basicInch(thread: Thread): number {
  if (thread.insert) return insertBasicInch(thread);
  const { diameter, tpi } = thread.inch!;
  return roundHalfUp(diameter - PITCH_DROP / tpi, 0.0001);
}

/** Basic pitch diameter of a metric thread, mm to 0.001. Source: `iso-724`. */
export function basicMetric(thread: Pick<Thread, 'diameter' | 'pitch'>): number {
  return roundHalfUp(thread.diameter - PITCH_DROP * thread.pitch, 0.001);
}

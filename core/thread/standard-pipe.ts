/** Every pipe thread that a hole may have, for lists and pages. */

import { AMERICAN_PIPE, WHITWORTH_PIPE } from '../data/pipe-sizes';
import { readThread } from './read';
import type { Thread } from './thread';

/**
 * Pipe threads by size: G of ISO 228-1, Rp and Rc of ISO 7-1, NPT of ASME B1.20.1. Sizes as text, lengths mm.
 * Ordered by standard, then size. Nothing is asked, so nothing refused: never throws. Sources: `iso-228-1`, `iso-7-1`, `asme-b1-20-1`.
 */
export function standardPipeThreads(): Thread[] {
  const names = [
    ...['G', 'Rp', 'Rc'].flatMap((form) => WHITWORTH_PIPE.map(({ size }) => `${form}${size}`)),
    ...AMERICAN_PIPE.map(({ size }) => `${size} NPT`),
  ];
  // The sizes that ISO 7-1 lacks are refused, and left out.
  return names.flatMap((name) => {
    const reading = readThread(name);
    return reading.ok ? [reading.value] : [];
  });
}

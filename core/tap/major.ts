/** The diameter a tap cuts to. */

import type { Thread } from '../thread/thread';

/** Twice the height of a fundamental triangle's three quarters, in pitches: what a wire insert adds. Derived. */
const INSERT_GROWTH = 1.29903811;

/**
 * Basic major diameter of the tap for a thread, mm: the thread's own, or for a wire-insert hole
 * D + 1.299 P. Source: `from-memory` (ASME B18.29), derived.
 */
export function tapMajor(thread: Pick<Thread, 'diameter' | 'pitch' | 'insert'>): number {
  return thread.insert ? thread.diameter + INSERT_GROWTH * thread.pitch : thread.diameter;
}

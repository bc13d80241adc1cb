/** What hands can turn, and with which taps. Common practice. */

import type { Candidate } from './candidates';
import type { Job } from './job';
import { reason } from './reason';
import type { Reason } from './types';

/** Sharp torque that is said to be heavy, and that no wrench should be asked for, N·m. Common practice. */
export const HAND_TORQUE = { heavy: 60, most: 100 } as const;

/** True where the tap is turned by a wrench. No unit. */
export function byHand({ spindle }: Pick<Job, 'spindle'>): boolean {
  return spindle.drive === 'hand';
}

/** Why hands do not turn this tap: no hand set has helical flutes or forms its thread, or it is too heavy. */
export function handProblems(job: Job, { style, asks }: Candidate): Reason[] {
  if (!byHand(job)) return [];
  const found: Reason[] = [];
  if (style === 'spiral-flute' || style === 'form') found.push(reason('not-by-hand'));
  if (asks.sharp > HAND_TORQUE.most) {
    const numbers = { sharp: asks.sharp, most: HAND_TORQUE.most };
    found.push(reason('too-heavy-by-hand', numbers, 'tap-chip-model'));
  }
  return found;
}

/** How long a tap wrench may be, so that hands cannot twist the tap off unawares. Common practice. */

import { MOST_OF_BREAKING } from './clutch';

/** Force of one hand that feels like nothing special, N; two hands turn a wrench. Common practice. */
const HAND = 50;

/**
 * Longest arm of a two-handed wrench, from the tap's axis to the hand, mm: easy hand force on both ends
 * stays within half of what breaks the tap. `breaks` N·m. Source: `common-practice`.
 */
export function wrenchArm(breaks: number): number {
  return ((MOST_OF_BREAKING * breaks) / (2 * HAND)) * 1000;
}

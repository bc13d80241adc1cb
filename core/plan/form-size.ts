/**
 * How large form taps are made: their torque grows with the square of the pitch, and the metal has to be moved.
 * Common practice.
 */

import type { Job } from './job';

interface Sizes {
  /** Largest that shops lead with, and largest that is made to order, mm. */
  usual: number;
  no: number;
}

const METRIC = { usual: 16, stainless: 10, no: 20 };
const INCH = { usual: 5 / 8, stainless: 3 / 8, no: 3 / 4 };

/** Slack for inches turned into mm. */
const HAIR = 1e-6;

/**
 * Sizes of the thread up to which a form tap is led with, and beyond which it is refused, mm: M16 or 5/8 (M10 or
 * 3/8 in stainless), M20 or 3/4. Source: `common-practice`.
 */
export function formSizes({ thread, material }: Pick<Job, 'thread' | 'material'>): Sizes {
  const metric = thread.system === 'metric';
  const { usual, stainless, no } = metric ? METRIC : INCH;
  const factor = metric ? 1 : 25.4;
  const led = material.group === 'M' ? stainless : usual;
  return { usual: led * factor + HAIR, no: no * factor + HAIR };
}

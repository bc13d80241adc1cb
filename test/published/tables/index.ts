/** Every published table that the core is held to, row by row. */

import { STRENGTH_TABLES } from './areas';
import { DRILL_TABLES } from './drills';
import { PIPE_TABLES } from './pipe';
import type { PublishedTable, Row } from './table';
import { TAP_TABLES } from './taps';
import { THREAD_TABLES } from './threads';
import { LOAD_TABLES } from './torque';

export const PUBLISHED: readonly PublishedTable[] = [
  ...THREAD_TABLES,
  ...PIPE_TABLES,
  ...TAP_TABLES,
  ...DRILL_TABLES,
  ...STRENGTH_TABLES,
  ...LOAD_TABLES,
];

/** How far a row is off, in its own unit. */
export function difference({ printed, here }: Row): number {
  return here - printed;
}

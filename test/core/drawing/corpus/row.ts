/** One line of the corpus: where it comes from, and what it must give. Lengths in mm. */

import type { Callout, PlannedHole } from '../../../../core';

export interface Row extends Partial<
  Pick<
    Callout,
    | 'count'
    | 'through'
    | 'fullThread'
    | 'thickness'
    | 'hole'
    | 'limits'
    | 'countersink'
    | 'fields'
    | 'chipsMayFall'
    | 'notRead'
    | 'thread'
  >
> {
  line: string;
  from: string;
  verdict: PlannedHole['verdict'];
  apart?: PlannedHole['apart'];
  /** Why it is refused. */
  problem?: string;
}

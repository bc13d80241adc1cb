/** Which drills a shop reaches for: all, or only one system's. */

import type { DrillSeries } from '../../core/drill/drill';

export const DRAWERS = ['all', 'metric', 'inch'] as const;

export type Drawer = (typeof DRAWERS)[number];

/** The series of a drawer; all four where everything is in it. */
export const SERIES_OF: Record<Drawer, readonly DrillSeries[] | undefined> = {
  all: undefined,
  metric: ['metric'],
  inch: ['fraction', 'number', 'letter'],
};

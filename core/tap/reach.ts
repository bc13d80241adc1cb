/** How deep a stock tap can go before its shank or its holder stands in the way. Lengths mm. */

import {
  B94_9_FULL,
  B94_9_REDUCED,
  DIN_371,
  DIN_374,
  DIN_376,
  type FullShankRow,
  type LengthMark,
  type ReducedShankRow,
} from '../data/tap-lengths';
import type { SourceId } from '../sources';
import { coarsePitch } from '../thread/metric-series';
import type { Thread } from '../thread/thread';
import { MM_PER_INCH } from '../units';

/** What the holder grips, in shank diameters. Common practice. */
export const GRIP = 3;

/** Beyond so many thread diameters of tip depth no tap is kept in stock. Common practice. */
export const DEEPEST_STOCK = 8;

/** How much wider than the shank a counterbore must be to let it in, mm. Common practice. */
export const SHANK_CLEARANCE = 1;

export type TapStandard = 'din-371' | 'din-374' | 'din-376' | 'asme-b94-9';

/** One kind of stock tap. */
export interface StockShank {
  standard: TapStandard;
  overall: number;
  shank: number;
  /** How far the tip goes in before the shank (full size) or the holder (reduced shank) meets the face. */
  reach: number;
  /** How far it sticks out of its holder: overall length less the grip. */
  free: number;
  source: SourceId;
}

export interface StockTap {
  /** The ordinary one: full-size shank to M10 and 3/8, where there is one. */
  usual: StockShank;
  full: boolean;
  /** The same size with a reduced shank, where the usual one has a full-size shank. */
  reduced?: StockShank;
}

const SOURCE_OF: Record<LengthMark, SourceId> = {
  catalogue: 'din-tap-lengths',
  handbook: 'handbook-tap-blanks',
  memory: 'from-memory',
};

function fullShank(standard: TapStandard, row: FullShankRow, unit: number): StockShank {
  const { overall, shank, toShank, toShankMark } = row;
  return {
    standard,
    overall: overall * unit,
    shank: shank * unit,
    reach: toShank * unit,
    free: (overall - GRIP * shank) * unit,
    source: SOURCE_OF[toShankMark],
  };
}

function reducedShank(standard: TapStandard, row: ReducedShankRow, unit: number): StockShank {
  const free = (row.overall - GRIP * row.shank) * unit;
  const [overall, shank] = [row.overall * unit, row.shank * unit];
  return { standard, overall, shank, reach: free, free, source: SOURCE_OF[row.mark] };
}

function metricTap({ diameter, pitch }: Thread): StockTap | null {
  if (coarsePitch(diameter) !== pitch) {
    const fine = DIN_374[`${diameter}x${pitch}`];
    return fine ? { usual: reducedShank('din-374', fine, 1), full: false } : null;
  }
  const [full, reduced] = [DIN_371[diameter], DIN_376[diameter]];
  const slim = reduced && reducedShank('din-376', reduced, 1);
  if (full) {
    return { usual: fullShank('din-371', full, 1), full: true, ...(slim && { reduced: slim }) };
  }
  return slim ? { usual: slim, full: false } : null;
}

function inchTap(size: string): StockTap | null {
  const [full, reduced] = [B94_9_FULL[size], B94_9_REDUCED[size]];
  if (full) return { usual: fullShank('asme-b94-9', full, MM_PER_INCH), full: true };
  return reduced ? { usual: reducedShank('asme-b94-9', reduced, MM_PER_INCH), full: false } : null;
}

/**
 * The stock tap of a thread, mm; null where no length is held: pipe threads, wire-insert holes, sizes and fine
 * pitches outside the tables. Sources: `din-tap-lengths`, `handbook-tap-blanks`, `from-memory`, as marked on each.
 */
export function stockTap(thread: Thread): StockTap | null {
  if (thread.insert || thread.system === 'pipe') return null;
  if (thread.system === 'metric') return metricTap(thread);
  return thread.inch ? inchTap(thread.inch.size) : null;
}

/** What a hole asks of a tap, mm: tip below the thread's start, and the counterbore above it. */
export interface ReachAsked {
  tip: number;
  /** Basic diameter of the thread. */
  diameter: number;
  counterbore?: { diameter: number; depth: number } | undefined;
}

export interface TapReach {
  /** `long`: beyond the ordinary tap; `none`: beyond every stock tap; `unknown`: its length is not held here. */
  verdict: 'reaches' | 'long' | 'none' | 'unknown';
  /** Length asked of the tap, mm, and the length it has; `have` left out where not known. */
  needed: number;
  have?: number;
  /** What a reduced-shank tap of this size would reach, where it is needed and reaches. */
  reduced?: number;
  source: SourceId;
}

/** Slack for lengths, mm. */
const HAIR = 1e-9;

function fullReach(tap: StockTap, { tip, counterbore }: ReachAsked): TapReach {
  const { usual, reduced } = tap;
  const total = tip + (counterbore?.depth ?? 0);
  const letIn =
    counterbore !== undefined && counterbore.diameter >= usual.shank + SHANK_CLEARANCE - HAIR;
  const needed = letIn ? tip : total;
  const { reach: have, source } = usual;
  // A wide counterbore takes the shank in, but never the holder.
  if (needed <= have + HAIR && total <= usual.free + HAIR) {
    return { verdict: 'reaches', needed, have, source };
  }
  const slim = reduced && total <= reduced.reach + HAIR ? { reduced: reduced.reach } : {};
  if (needed > have + HAIR) return { verdict: 'long', needed, have, ...slim, source };
  return { verdict: 'long', needed: total, have: usual.free, ...slim, source };
}

/**
 * Whether a stock tap gets to the bottom of its travel, all lengths mm. A tip beyond 8 thread diameters, or tip and
 * counterbore beyond overall length less three shank diameters of the longest kind, is `none`.
 * Sources: lengths as `stockTap`; the grip, the eight diameters and the millimetre are common practice.
 */
export function tapReach(tap: StockTap | null, asked: ReachAsked): TapReach {
  const total = asked.tip + (asked.counterbore?.depth ?? 0);
  const deepest = DEEPEST_STOCK * asked.diameter;
  if (asked.tip > deepest + HAIR) {
    return { verdict: 'none', needed: asked.tip, have: deepest, source: 'common-practice' };
  }
  if (!tap) return { verdict: 'unknown', needed: total, source: 'from-memory' };
  const free = Math.max(tap.usual.free, tap.reduced?.free ?? 0);
  const { source } = tap.usual;
  if (total > free + HAIR) return { verdict: 'none', needed: total, have: free, source };
  if (tap.full) return fullReach(tap, asked);
  return { verdict: 'reaches', needed: total, have: tap.usual.reach, source };
}

/** Judging every drill near a thread against the minor-diameter window of its class. */

import type { Range } from '../units';
import type { DrillChoice, DrillSeries } from './drill';
import { likelyOversize } from './oversize';
import { percentThread } from './percent';
import { drillsBetween, type StockedDrill } from './sizes';

/** Slack for comparing decimal inches converted to mm; far below any limit's last digit. */
const HAIR = 1e-7;

/**
 * Past the limit by less than this, mm, or than a tenth of the tolerance where that is less, no oversize from memory can
 * tell inside from outside: inside, with little room. Common practice.
 */
const LITTLE = 0.01;

export interface HoleWindow extends Range {
  /** Major diameter of the tap and pitch, mm. */
  major: number;
  pitch: number;
  /** Share of the likely oversize that stays in this material, 0 to 1. */
  oversizeShare: number;
  /** How much larger than itself the shop's own drill cuts, mm, as measured: in place of what is likely. */
  oversize?: number | undefined;
}

/**
 * Judges one drill: inside the window, at risk (its nominal size is inside and the hole it likely cuts
 * is not), or outside. mm. Sources: `drill-oversize`; the class limits for the window.
 */
export function judgeDrill(drill: StockedDrill, window: HoleWindow): DrillChoice {
  const large = window.oversize ?? window.oversizeShare * likelyOversize(drill.diameter);
  const likely = drill.diameter + large;
  const nominalInside = drill.diameter >= window.min - HAIR && drill.diameter <= window.max + HAIR;
  // A measured oversize is known.
  const recalled = window.oversize === undefined;
  const unsure = recalled ? Math.min(LITTLE, (window.max - window.min) / 10) : 0;
  const over = likely - window.max;
  const verdict = !nominalInside ? 'outside' : over <= unsure + HAIR ? 'inside' : 'risk';
  const little = verdict === 'inside' && over > HAIR;
  return {
    name: drill.name,
    series: drill.series,
    diameter: drill.diameter,
    percent: percentThread(window.major, window.pitch, drill.diameter),
    likely,
    verdict,
    ...(little && { little }),
  };
}

/**
 * Every stocked drill near the window, judged, smallest first. "Near" reaches most of a window's width
 * (at least a quarter pitch) to either side, so that the neighbours a person might reach for are seen
 * to be wrong. Sources: as `judgeDrill`.
 */
export function judgeDrills(window: HoleWindow, series?: readonly DrillSeries[]): DrillChoice[] {
  const reach = Math.max(window.max - window.min, window.pitch / 4);
  return drillsBetween(window.min - reach, window.max + reach, series).map((drill) =>
    judgeDrill(drill, window),
  );
}

export interface DrillPreference {
  /** Drill that a published table lists for the thread. */
  listed?: string | undefined;
  /** Hole to be nearest to when no listed drill passes, mm. */
  target: number;
  /** True in material that is hard on taps: the largest hole that surely passes is the kindest. */
  largest: boolean;
  /** Series the shop reaches for first. */
  system: 'metric' | 'inch';
}

/**
 * The drill to use, from a judged list: one surely inside if there is one, else one at risk, else null.
 * Among equals: the shop's own system, then (hard material) the largest, else the listed drill, else
 * the one nearest the target, of two equally near the smaller. Source: common practice.
 */
export function bestDrill(drills: DrillChoice[], wish: DrillPreference): DrillChoice | null {
  const surely = drills.filter((drill) => drill.verdict === 'inside');
  const pool = surely.length > 0 ? surely : drills.filter((drill) => drill.verdict === 'risk');
  if (pool.length === 0) return null;
  const ownSystem = pool.filter(
    (drill) => (drill.series === 'metric') === (wish.system === 'metric'),
  );
  const own = ownSystem.length > 0 ? ownSystem : pool;
  if (surely.length === 0) return own[0]!;
  const roomy = own.filter(({ little }) => !little);
  if (wish.largest) return (roomy[roomy.length - 1] ?? own[own.length - 1])!;
  const distance = (drill: DrillChoice) => Math.abs(drill.diameter - wish.target);
  return (
    own.find((drill) => drill.name === wish.listed) ??
    own.reduce((best, drill) => (distance(drill) < distance(best) ? drill : best))
  );
}

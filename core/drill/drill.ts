/** Tap drills: what is stocked, what it leaves, whether that passes the class. */

export type DrillSeries = 'metric' | 'fraction' | 'number' | 'letter';

export const DRILL_SERIES: readonly DrillSeries[] = ['metric', 'fraction', 'number', 'letter'];

export interface DrillChoice {
  /** Name on the drill: `6.8`, `27/64`, `#7`, `F`. */
  name: string;
  series: DrillSeries;
  /** mm */
  diameter: number;
  /** Percent of thread, on the US shop base (3H/4 a side) and on the ISO profile base (5H/8 a side). */
  percent: {
    shop: number;
    iso: number;
    /** On the form-tap scale; on drills for a form tap only. */
    form?: number;
  };
  /** Hole the drill is likely to leave, mm. */
  likely: number;
  verdict: 'inside' | 'risk' | 'outside';
  /** Inside, but the hole it likely leaves comes so near the limit that the recalled oversize cannot tell. */
  little?: true;
}

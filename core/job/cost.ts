/** What a tapped hole costs: machine time, tools, gauging, set-up, and the risk of a broken tap as its own line. */

import { answer, refuse, type Outcome, type Problem } from '../outcome';

/** Money in any one currency. */
export interface CostInput {
  /** Seconds of drilling, tapping and moving for one hole. */
  seconds: number;
  /** Money an hour: machine with its operator, and whoever gauges. */
  machineRate: number;
  gaugeRate: number;
  tapPrice: number;
  /** Holes a tap makes before it is changed. */
  tapLife: number;
  drillPrice: number;
  drillLife: number;
  /** Seconds of one gauging, which is done once in so many holes. */
  gaugeSeconds: number;
  gaugeEvery: number;
  /** Minutes of set-up, shared by the holes of the job. */
  setupMinutes: number;
  holes: number;
  /** One tap breaks in so many holes. */
  breaksIn: number;
  /** Money of one break: removal, the scrapped share of the part, standstill. */
  breakCost: number;
}

/** Money a hole. */
export interface HoleCost {
  time: number;
  tools: number;
  gauging: number;
  setup: number;
  breakage: number;
  total: number;
  /** breakage / total; 0 where the total is 0. */
  breakageShare: number;
  /** total × holes */
  job: number;
}

export const COST_PROBLEM_CODES = ['cost-below-zero', 'cost-not-above-zero'] as const;

/** Divisors: none of them may be nothing. */
const ABOVE_ZERO = ['tapLife', 'drillLife', 'gaugeEvery', 'holes', 'breaksIn'] as const;

/**
 * Cost of one hole: t·rate + tap/life + drill/life + gauging/n + set-up/N + p·(what a break costs). Money
 * in any one currency, seconds, minutes, counts of holes; everything 0 or more, lives and counts above
 * 0. Refuses with `COST_PROBLEM_CODES`. Source: `common-practice`.
 */
export function holeCost(input: CostInput): Outcome<HoleCost> {
  const problems = (Object.entries(input) as [keyof CostInput, number][]).flatMap(
    ([field, value]): Problem[] => {
      const data = { typed: String(value) };
      if (!(value >= 0) || value === Infinity) return [{ code: 'cost-below-zero', field, data }];
      const divides = (ABOVE_ZERO as readonly string[]).includes(field);
      return divides && value === 0 ? [{ code: 'cost-not-above-zero', field, data }] : [];
    },
  );
  const [first, ...more] = problems;
  if (first) return refuse(first, ...more);
  const time = (input.seconds * input.machineRate) / 3600;
  const tools = input.tapPrice / input.tapLife + input.drillPrice / input.drillLife;
  const gauging = (input.gaugeSeconds * input.gaugeRate) / 3600 / input.gaugeEvery;
  const setup = (input.setupMinutes * input.machineRate) / 60 / input.holes;
  const breakage = input.breakCost / input.breaksIn;
  const total = time + tools + gauging + setup + breakage;
  const breakageShare = total > 0 ? breakage / total : 0;
  const job = total * input.holes;
  return answer({ time, tools, gauging, setup, breakage, total, breakageShare, job });
}

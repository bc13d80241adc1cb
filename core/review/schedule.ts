/**
 * When a question comes back. What was remembered rests longer each time; what was forgotten comes back
 * at once, and then sooner than before. The growth of the rests is common practice in spaced recall; the
 * figures are our own choice, kept in one place.
 */

export type Recalled = 'remembered' | 'forgotten';

/** How a question stands with one learner. Times are days since any fixed day, fractions included. */
export interface Standing {
  /** Days of rest it has earned. */
  interval: number;
  /** When it was last asked. */
  seen: number;
  /** When it wants to be asked again. */
  due: number;
}

export const POLICY = {
  /** Rest of a question that was remembered at its first asking, days. */
  first: 2,
  /** Rest of one that was forgotten at its first asking, once it has been remembered, days. */
  shortest: 1,
  /** Longest rest, days. */
  longest: 365,
  /** How much longer the next rest is after one that was kept to the day. */
  growth: 2.5,
  /** A delay counts as rest up to this many times the rest that was planned. */
  lateness: 3,
  /** What a lapse leaves of the rest. */
  lapse: 0.25,
  /** A forgotten question comes back after this, days: ten minutes. */
  again: 10 / (24 * 60),
} as const;

const within = (days: number): number => Math.min(POLICY.longest, Math.max(POLICY.shortest, days));

/**
 * True from a lapse until the question has been remembered again.
 * Days as in {@link Standing}. Source: derived.
 */
export function isRelearning({ interval, seen, due }: Standing): boolean {
  return due - seen < interval;
}

/** Rest after a question was remembered, having rested for some days. */
function grown(interval: number, rested: number): number {
  if (rested < interval) return interval + (POLICY.growth - 1) * rested;
  return POLICY.growth * Math.min(rested, POLICY.lateness * interval);
}

/**
 * How a question stands after it was asked: (standing, when, outcome) → standing. `null` is a question
 * never asked. `when` in days on the same count as the standing; an earlier `when` than the last asking (a
 * clock set back) counts as no rest at all. Intervals stay between 1 and 365 days. Common practice, figures
 * in {@link POLICY}.
 */
export function reschedule(before: Standing | null, when: number, outcome: Recalled): Standing {
  if (outcome === 'forgotten') {
    const kept = before === null ? 0 : before.interval * (isRelearning(before) ? 1 : POLICY.lapse);
    return { interval: within(kept), seen: when, due: when + POLICY.again };
  }
  const rested = before === null ? 0 : Math.max(0, when - before.seen);
  const interval = before === null ? POLICY.first : within(grown(before.interval, rested));
  return { interval, seen: when, due: when + interval };
}

/** What a shop's own drawer can do for a hole, and what one better tap would gain. */

import type { ChamferClass } from '../chamfer/chamfer';
import type { TapStyle } from '../tap/tap';
import { readThread } from '../thread/read';
import type { DrillChoice } from '../drill/drill';
import type { HolePlan, TapChoice } from './types';

export interface OwnedTap {
  thread: string;
  style: TapStyle;
  chamfer: ChamferClass;
}

export interface OwnedAnswer {
  /** The highest-ranked tap of the plan that the drawer holds; null when none that it holds will do. */
  tap: TapChoice | null;
  /** What the plan would put first. */
  best: TapChoice | null;
  /** Taps of this thread in the drawer that the plan rejects, highest-ranked first. */
  rejected: TapChoice[];
  /** What the best tap would gain over the drawer's: shares of breaking torque, sharp; mm of hole saved (below 0: it wants more). */
  gain: { shareBefore: number; shareAfter: number; shoulder: number } | null;
}

/**
 * The drawer's answer to a planned hole. Only taps of the same designation count. mm, as the plan has them; shares are
 * fractions, 0 to 1. Never refuses: a drawer without a fitting tap gets an answer that says so. Source: derived from the plan.
 */
export function ownedAnswer(plan: HolePlan, taps: readonly OwnedTap[]): OwnedAnswer {
  const held = new Set(
    taps.flatMap(({ thread, style, chamfer }) => {
      const read = readThread(thread);
      return read.ok && read.value.designation === plan.thread.designation
        ? [`${style} ${chamfer}`]
        : [];
    }),
  );
  const owned = plan.taps.filter(({ style, chamfer }) => held.has(`${style} ${chamfer.class}`));
  const best = plan.taps.find(({ verdict }) => verdict === 'best') ?? null;
  const tap = owned.find(({ verdict }) => verdict !== 'no') ?? null;
  const better = tap && best && tap !== best;
  return {
    tap,
    best,
    rejected: owned.filter(({ verdict }) => verdict === 'no'),
    gain: better
      ? {
          shareBefore: tap.tapShare.sharp,
          shareAfter: best.tapShare.sharp,
          shoulder: tap.depth.shoulder - best.depth.shoulder,
        }
      : null,
  };
}

export interface OwnedDrillAnswer {
  /** True where the drawer holds the drill that the plan asks for. */
  has: boolean;
  /** The nearest other drill of the drawer that is surely inside the class; null when there is none. */
  instead: DrillChoice | null;
}

/**
 * Whether the drawer's drills make this hole. `names` as stocked drills are called (`6.8`, `27/64`, `#7`,
 * `F`). Null where the plan has no drill, or forms its thread: then only its own drill will do. mm.
 * Source: derived from the plan.
 */
export function ownedDrill(plan: HolePlan, names: readonly string[]): OwnedDrillAnswer | null {
  const wanted = plan.drill;
  const best = plan.taps.find(({ verdict }) => verdict === 'best');
  if (!wanted || best?.process === 'form') return null;
  if (names.includes(wanted.name)) return { has: true, instead: null };
  const far = ({ diameter }: DrillChoice) => Math.abs(diameter - wanted.diameter);
  const [instead = null] = plan.drills
    .filter(({ name, verdict }) => verdict === 'inside' && names.includes(name))
    .sort((a, b) => far(a) - far(b));
  return { has: false, instead };
}

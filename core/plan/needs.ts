/** What stands between the hole and a tap, in one place: headline, warning and remedy say the same number. */

import { STYLES } from '../tap/styles';
import type { ReasonCode } from './codes';
import type { Judged } from './judge';

const cuts = (tap: Judged): boolean => STYLES[tap.style].process === 'cut';

function least(taps: Judged[], measure: (tap: Judged) => number): Judged | undefined {
  return taps.reduce<Judged | undefined>(
    (best, tap) => (!best || measure(tap) < measure(best) ? tap : best),
    undefined,
  );
}

export interface SpindleNeed {
  /** N·m of the tap that turns lightest among those that only the spindle stands against, and of the heaviest. */
  sharp: number;
  worn: number;
  most: number;
}

/** Torque a stronger spindle would have to give, N·m; null where no cutting tap fails for it. Source: `tap-chip-model`. */
export function spindleNeed(taps: readonly Judged[]): SpindleNeed | null {
  const says = (tap: Judged, wanted: ReasonCode) => tap.reasons.some(({ code }) => code === wanted);
  // A stronger spindle is no help to a tap that no shop can buy that long.
  const over = taps.filter(
    (tap) => cuts(tap) && says(tap, 'spindle-over') && !says(tap, 'no-stock-tap'),
  );
  const otherwise = over.filter((tap) => tap.fitsHole && !tap.worksOnly);
  const pool = otherwise.length > 0 ? otherwise : over;
  const lightest = least(pool, (tap) => tap.asks.worn);
  if (!lightest) return null;
  const { sharp, worn } = lightest.asks;
  return { sharp, worn, most: Math.max(...pool.map((tap) => tap.asks.worn)) };
}

/**
 * The tap whose room below a through hole is spoken of: the usual chamfer where that cannot pass, whether or not a
 * shorter one can. Undefined where nothing is in the way. Source: derived.
 */
export function tapWantingRoom(taps: readonly Judged[]): Judged | undefined {
  return taps.find((tap) => cuts(tap) && tap.chamfer.class === 'plug' && tap.short > 0);
}

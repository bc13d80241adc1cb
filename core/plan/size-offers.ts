/** Asking for another thread: less of it, a finer pitch, the next size. Common practice on derived numbers. */

import { UNC, UNEF, UNF } from '../data/unified-series';
import { ENGAGEMENT_MARGIN } from '../engagement/strip';
import { dangerIndex } from '../tap/danger';
import { WATCH } from '../tap/twist';
import { coarsePitch, listedPitches } from '../thread/metric-series';
import { ISO_261_PAIRS } from '../data/iso-261-pairs';
import type { Job } from './job';
import type { Judged } from './judge';
import type { StripCheck } from './strength';

/** Diameters of thread beyond which more of it is asked about. Common practice. */
const LONG = 2;

/** Shape of thread, (P/D)², from which its tap is weak for what it cuts, and size to which any is. Common practice. */
const COARSE = 0.045;
const SMALL = 2.5;

/**
 * How much full thread is enough where more than two diameters and more than the upper margin are asked, mm; null
 * where it is not known or not too long. Sources: `fed-std-h28`, `common-practice`.
 */
export function enoughThread(
  { fullThread, thread }: Job,
  strip: StripCheck | null,
): Record<string, number> | null {
  if (!strip) return null;
  const to = strip.matching * ENGAGEMENT_MARGIN.most;
  if (fullThread <= Math.max(to, LONG * thread.diameter) + 1e-6) return null;
  return { to, from: fullThread, matching: strip.matching };
}

function unifiedOffer(diameter: number, pitch: number): Record<string, number> {
  const size = Math.round((diameter / 25.4) * 10000);
  const tpi = Math.round(25.4 / pitch);
  const finer = [UNF, UNEF]
    .flatMap((series) => series.get(size) ?? [])
    .filter((each) => each > tpi);
  const larger = [...UNC.keys()].filter((each) => each > size).sort((a, b) => a - b)[0];
  return {
    ...(finer.length > 0 ? { finer: 25.4 / Math.min(...finer) } : {}),
    ...(larger === undefined ? {} : { next: (larger / 10000) * 25.4 }),
  };
}

function metricOffer(diameter: number, pitch: number): Record<string, number> {
  const finer = listedPitches(diameter).find((each) => each < pitch - 1e-9);
  const larger = [...ISO_261_PAIRS.keys()]
    .filter((each) => each > diameter && coarsePitch(each) !== null)
    .sort((a, b) => a - b)[0];
  return {
    ...(finer === undefined ? {} : { finer }),
    ...(larger === undefined ? {} : { next: larger }),
  };
}

/**
 * The next finer pitch and the next larger size, mm, of a thread that is very small, or so coarse for its size that
 * its tap is at risk; null for others and where the tap has strength to spare. Source: derived, limits common practice.
 */
export function otherSize(job: Job, spoken: Judged | undefined): Record<string, number> | null {
  const { diameter, pitch, system } = job.thread;
  const weak = dangerIndex(pitch, diameter) >= COARSE || diameter <= SMALL;
  if (!weak || system === 'pipe' || !spoken || spoken.asks.share.worn < WATCH.worn) return null;
  const found = system === 'metric' ? metricOffer(diameter, pitch) : unifiedOffer(diameter, pitch);
  return Object.keys(found).length > 0 ? found : null;
}

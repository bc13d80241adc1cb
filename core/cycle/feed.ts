/** The feed of a program and what rounding it does to a thread, and speeds that need no rounding. */

import { mmToInch } from '../units';

export type ProgramUnit = 'mm' | 'in';

/** How a feed is programmed: per minute, or per turn of the spindle. */
export type FeedMode = 'per-minute' | 'per-revolution';

export interface FeedCheck {
  /** The feed that follows the pitch exactly, in the program's unit per minute or per revolution. */
  exact: number;
  /** What was to be programmed, same unit. */
  programmed: number;
  /** (programmed − exact) / exact */
  error: number;
  /** mm by which the tap is pushed ahead (above 0) or held back over the thread. */
  drift: number;
  turns: number;
  verdict: 'good' | 'check' | 'refuse';
}

/**
 * Drift, in pitches over the whole thread, up to which nobody can measure it, and beyond which the tap
 * shaves the flanks of its own thread. Common practice; a holder with some float forgives more.
 */
const DRIFT = { good: 0.01, most: 0.05 } as const;

const inUnit = (mm: number, unit: ProgramUnit) => (unit === 'mm' ? mm : mmToInch(mm));
const inMm = (value: number, unit: ProgramUnit) => (unit === 'mm' ? value : value * 25.4);

/** The exact feed, in the program's unit a minute or a turn. `pitch` mm, `rpm` rev/min, both above 0. Source: derived. */
export function exactFeed(pitch: number, rpm: number, unit: ProgramUnit, mode: FeedMode): number {
  return inUnit(pitch, unit) * (mode === 'per-minute' ? rpm : 1);
}

/** A value as a control takes it, rounded to so many decimals. Source: derived. */
export function roundedFeed(feed: number, decimals: number): number {
  const steps = 10 ** decimals;
  return Math.round(feed * steps) / steps;
}

/**
 * What a programmed feed does over `thread` mm: drift = turns × (F/n − P). `pitch` mm, `rpm` rev/min, all
 * above 0; `programmed` in the program's unit. Sources: `derived`; the verdict `common-practice`.
 */
export function checkFeed(question: {
  pitch: number;
  rpm: number;
  unit: ProgramUnit;
  mode: FeedMode;
  programmed: number;
  thread: number;
}): FeedCheck {
  const { pitch, rpm, unit, mode, programmed, thread } = question;
  const exact = exactFeed(pitch, rpm, unit, mode);
  const advance = inMm(programmed, unit) / (mode === 'per-minute' ? rpm : 1);
  const turns = thread / pitch;
  const drift = turns * (advance - pitch);
  const share = Math.abs(drift) / pitch;
  const verdict = share <= DRIFT.good ? 'good' : share <= DRIFT.most ? 'check' : 'refuse';
  return { exact, programmed, error: programmed / exact - 1, drift, turns, verdict };
}

export interface CleanSpeed {
  rpm: number;
  /** In the program's unit a minute, exactly. */
  feed: number;
  decimals: number;
}

/** Decimals that write a value exactly; null where `most` are not enough. */
function decimalsOf(value: number, most: number): number | null {
  for (let decimals = 0; decimals <= most; decimals += 1) {
    const steps = value * 10 ** decimals;
    if (Math.abs(steps - Math.round(steps)) < 1e-7) return decimals;
  }
  return null;
}

/** How far from the wanted speed a cleaner one is still worth offering. Common practice. */
const NEAR = 0.08;

/**
 * Whole spindle speeds near `rpm` whose feed per minute needs no rounding, the cleanest first. `pitch`
 * mm, rev/min above 0; `range` limits them. At most `count`. Source: derived.
 */
export function cleanSpeeds(
  pitch: number,
  rpm: number,
  unit: ProgramUnit,
  range: { min: number; max: number } = { min: 1, max: Infinity },
  count = 3,
): CleanSpeed[] {
  const from = Math.max(1, Math.ceil(Math.max(range.min, rpm * (1 - NEAR))));
  const to = Math.floor(Math.min(range.max, rpm * (1 + NEAR)));
  const most = unit === 'mm' ? 2 : 3;
  const found: CleanSpeed[] = [];
  for (let each = from; each <= to; each += 1) {
    const feed = exactFeed(pitch, each, unit, 'per-minute');
    const decimals = decimalsOf(feed, most);
    if (decimals !== null) found.push({ rpm: each, feed: roundedFeed(feed, decimals), decimals });
  }
  const away = (speed: CleanSpeed) => Math.abs(speed.rpm - rpm);
  return found.sort((a, b) => a.decimals - b.decimals || away(a) - away(b)).slice(0, count);
}

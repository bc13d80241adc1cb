/** What to do about what the gauges said: the thread's depth as the GO proved it, and the next step. */

import { answer, refuse, type Outcome } from '../outcome';
import type { Range } from '../units';
import { readGauges, type GaugeFindingCode, type GaugeReading, type GaugeVerdict } from './reading';

export const DEPTH_FINDING_CODES = [
  /** The GO turned in far enough even if its own start takes a whole thread. */
  'depth-reached',
  /** Only the gauge's own start decides: measure it, or cut one open. */
  'depth-doubtful',
  /** Too few turns whatever the gauge's start takes. */
  'depth-short',
  /** No turns were counted: the GO proves what it went through, not how deep that is. */
  'depth-unchecked',
] as const;

export type DepthFindingCode = (typeof DEPTH_FINDING_CODES)[number];

export const GAUGE_ACTIONS = [
  'clean-and-retry',
  'never-force',
  'second-gauge',
  'ask-which-rule',
  'try-plain-plugs',
  'count-turns',
  'measure-start',
  'stop-and-hold',
  'fresh-tap',
  'check-feed-and-limit',
  'check-drill',
  'check-depths',
  'record-and-run',
] as const;

export type GaugeAction = (typeof GAUGE_ACTIONS)[number];

/** Threads of the GO's own start that show no full thread, fewest and most. Common practice. */
export const GAUGE_START: Range = { min: 0.5, max: 1 };

export interface GaugedDepth {
  /** Turns the GO made until it stopped. */
  turns: number;
  /** mm */
  pitch: number;
  /** Full thread asked for, mm from the face. */
  asked: number;
}

export interface GaugeAdvice extends GaugeVerdict {
  depth: DepthFindingCode;
  /** Full thread proved, mm, with the longest and the shortest start of the gauge; null where not counted. */
  proved: Range | null;
  /** True where every rule accepts and the depth is reached; null where something was not tried or the rules differ. */
  passes: boolean | null;
  actions: GaugeAction[];
}

const ACTIONS: Record<GaugeFindingCode | DepthFindingCode, readonly GaugeAction[]> = {
  'pitch-in-class': [],
  'pitch-small': ['never-force', 'clean-and-retry', 'second-gauge', 'fresh-tap', 'stop-and-hold'],
  'go-stops': ['never-force', 'clean-and-retry', 'check-depths', 'stop-and-hold'],
  'pitch-large': ['stop-and-hold', 'second-gauge', 'check-feed-and-limit'],
  'rules-disagree': ['ask-which-rule', 'stop-and-hold', 'check-feed-and-limit'],
  'both-wrong': ['stop-and-hold', 'clean-and-retry', 'second-gauge', 'check-feed-and-limit'],
  'minor-small': ['stop-and-hold', 'check-drill'],
  'minor-large': ['stop-and-hold', 'check-drill'],
  'minor-unchecked': ['try-plain-plugs'],
  'depth-reached': [],
  'depth-doubtful': ['measure-start'],
  'depth-short': ['stop-and-hold', 'clean-and-retry', 'check-depths'],
  'depth-unchecked': ['count-turns'],
};

/** Full thread that so many turns of a GO prove, mm, least and most. `turns` 0 or more, `pitch` mm. Derived. */
export function provedDepth(turns: number, pitch: number): Range {
  const less = (start: number) => Math.max(0, turns - start) * pitch;
  return { min: less(GAUGE_START.max), max: less(GAUGE_START.min) };
}

function depthFinding(proved: Range | null, asked: number): DepthFindingCode {
  if (!proved) return 'depth-unchecked';
  if (proved.min >= asked - 1e-9) return 'depth-reached';
  return proved.max >= asked - 1e-9 ? 'depth-doubtful' : 'depth-short';
}

function verdictOf(verdict: GaugeVerdict, depth: DepthFindingCode): boolean | null {
  const accepts = verdict.rules.map((rule) => rule.accepts);
  if (!accepts.some(Boolean) || depth === 'depth-short') return false;
  const open = verdict.findings.includes('minor-unchecked') || depth !== 'depth-reached';
  return open || !accepts.every(Boolean) ? null : true;
}

/**
 * Reads GO, NOT GO, plain plugs and counted turns together, under both rules of turns.
 *
 * @param reading as for `readGauges`; @param depth turns counted by hand and mm, or nothing where not counted.
 * @returns what each rule says, the depth proved in mm, and the next steps without repeats. Refuses as
 *   `readGauges` does, and `turns-negative` for the depth. Sources: `asme-b1-2`, `iso-1502`, `common-practice`.
 */
export function gaugeAdvice(reading: GaugeReading, depth?: GaugedDepth): Outcome<GaugeAdvice> {
  const read = readGauges(reading);
  if (!read.ok) return read;
  if (depth && !(depth.turns >= 0 && depth.pitch > 0)) {
    return refuse({ code: 'turns-negative', field: 'goTurns' });
  }
  const proved = depth ? provedDepth(depth.turns, depth.pitch) : null;
  const found = depthFinding(proved, depth?.asked ?? 0);
  const passes = verdictOf(read.value, found);
  const steps = [...read.value.findings, found].flatMap((code) => ACTIONS[code]);
  const actions = passes === true ? (['record-and-run'] as const) : [...new Set(steps)];
  return answer({ ...read.value, depth: found, proved, passes, actions: [...actions] });
}

/** What the gauges said about a hole, and what that means under each rule of turns. */

import { answer, refuse, type Outcome } from '../outcome';
import { TURN_RULES, type TurnRule } from './members';

export interface GaugeReading {
  /** How far the GO thread plug went, by hand: all the thread, part of it, or not at all. */
  go: 'all' | 'part' | 'none';
  /** Turns the NOT GO thread plug entered before it stopped by itself; 0 when it did not start. */
  notGoTurns: number;
  /** Turns of thread the hole should have: how far a gauge that stops nowhere can go. */
  threadTurns: number;
  /** Whether the plain plugs went in; left out where they were not tried. */
  minorGo?: boolean;
  minorNotGo?: boolean;
}

export const GAUGE_FINDING_CODES = [
  /** GO all the way and NOT GO within the rules. */
  'pitch-in-class',
  /** GO will not start: pitch diameter small, or pitch or angle wrong. */
  'pitch-small',
  /** GO stops part way: chips, too little full thread, taper, or a tap that cuts smaller deeper down. */
  'go-stops',
  /** NOT GO goes too far under every rule: pitch diameter large. */
  'pitch-large',
  /** NOT GO is large at the mouth only: it enters further than one rule allows, and then stops. */
  'rules-disagree',
  /** GO refused and NOT GO enters: wrong gauge, wrong pitch, or a thread torn or cut twice. */
  'both-wrong',
  /** Plain GO will not enter: hole drilled small. */
  'minor-small',
  /** Plain NOT GO enters: hole drilled large. */
  'minor-large',
  /** No plain plug was tried: the thread plugs say nothing about the drilled hole. */
  'minor-unchecked',
] as const;

export type GaugeFindingCode = (typeof GAUGE_FINDING_CODES)[number];

export interface GaugeVerdict {
  /** Under each rule of turns: does the thread pass, as far as it was gauged? */
  rules: { rule: TurnRule['rule']; turns: number; accepts: boolean }[];
  findings: GaugeFindingCode[];
}

/** Slack on counted turns: a quarter turn is as well as a hand can tell. Common practice. */
const TURN_HAIR = 1e-9;

function pitchFinding(reading: GaugeReading, enters: boolean[]): GaugeFindingCode {
  const goes = reading.go === 'all';
  if (!goes && enters.some(Boolean)) return 'both-wrong';
  if (reading.go === 'none') return 'pitch-small';
  if (reading.go === 'part') return 'go-stops';
  if (enters.every(Boolean)) return 'pitch-large';
  return enters.some(Boolean) ? 'rules-disagree' : 'pitch-in-class';
}

function minorFinding({ minorGo, minorNotGo }: GaugeReading): GaugeFindingCode | null {
  if (minorGo === undefined && minorNotGo === undefined) return 'minor-unchecked';
  if (minorGo === false) return 'minor-small';
  return minorNotGo ? 'minor-large' : null;
}

/**
 * Passes or refuses a hole from what the gauges did, under both rules of turns side by side.
 *
 * @param reading turns counted by hand, 0 or more, in turns; no force.
 * @returns the verdict of each rule and what the gauges point to. A plug through a part thinner than the turns
 *   allowed is taken to enter too far once it has passed all the thread. Refuses `turns-negative` (a count below 0)
 *   and `thread-turns` (no thread to gauge). Sources: `asme-b1-2`, `iso-1502`.
 */
export function readGauges(reading: GaugeReading): Outcome<GaugeVerdict> {
  const { notGoTurns, threadTurns } = reading;
  if (!(notGoTurns >= 0)) return refuse({ code: 'turns-negative', field: 'notGoTurns' });
  if (!(threadTurns > 0)) return refuse({ code: 'thread-turns', field: 'threadTurns' });
  const through = notGoTurns >= threadTurns - TURN_HAIR;
  const enters = TURN_RULES.map(({ turns }) => through || notGoTurns > turns + TURN_HAIR);
  const minor = minorFinding(reading);
  const minorPasses = minor === null || minor === 'minor-unchecked';
  const rules = TURN_RULES.map(({ rule, turns }, index) => ({
    rule,
    turns,
    accepts: reading.go === 'all' && !enters[index] && minorPasses,
  }));
  const findings = [pitchFinding(reading, enters)];
  return answer({ rules, findings: minor ? [...findings, minor] : findings });
}

/** Depth of thread a GO plug has proved, mm, from the whole turns it made; `pitch` mm. Source: derived. */
export function depthByTurns(turns: number, pitch: number): number {
  return turns * pitch;
}

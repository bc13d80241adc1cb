/** The gauges that pass or refuse a tapped hole: what each proves, and what it cannot see. */

import type { ThreadLimits } from '../limits/limits';
import type { SourceId } from '../sources';
import type { Thread } from '../thread/thread';

export type GaugeMember = 'go' | 'not-go' | 'minor-go' | 'minor-not-go';

/** What a gauge can prove about a hole. */
export const GAUGE_PROOFS = [
  /** The pitch diameter is not too small. */
  'pitch-not-small',
  /** Pitch errors and a wrong flank angle have not used the pitch diameter up. */
  'lead-and-angle',
  /** The root is cut deep enough for the screw's crest. */
  'major-not-small',
  /** The pitch diameter is not too large. */
  'pitch-not-large',
  /** The hole was not drilled too small. */
  'minor-not-small',
  /** The hole was not drilled too large. */
  'minor-not-large',
] as const;

export type GaugeProof = (typeof GAUGE_PROOFS)[number];

export interface Gauge {
  member: GaugeMember;
  kind: 'thread' | 'plain';
  /** Diameter it stands for: pitch diameter of a thread plug, diameter of a plain one; in the unit of the limits. */
  size: number;
  unit: 'mm' | 'in';
  proves: readonly GaugeProof[];
}

export interface TurnRule {
  rule: 'asme-b1-2' | 'iso-1502';
  /** Turns the NOT GO thread plug may enter, by hand and without force. */
  turns: number;
  source: SourceId;
}

/**
 * How far a NOT GO thread plug may enter under each rule. The drawing or the contract says which rule holds:
 * the two disagree between two and three turns. Sources: `asme-b1-2`, `iso-1502`.
 */
export const TURN_RULES: readonly TurnRule[] = [
  { rule: 'asme-b1-2', turns: 3, source: 'asme-b1-2' },
  { rule: 'iso-1502', turns: 2, source: 'iso-1502' },
];

/** The rule that goes with a thread's own standards, where the drawing names none. Sources: `asme-b1-2`, `iso-1502`. */
export function usualTurnRule(thread: Pick<Thread, 'system'>): TurnRule['rule'] | null {
  if (thread.system === 'pipe') return null;
  return thread.system === 'unified' ? 'asme-b1-2' : 'iso-1502';
}

export interface GaugeSet {
  gauges: readonly Gauge[];
  /** Empty for pipe threads, whose gauging standards are not held here. */
  turns: readonly TurnRule[];
  usual: TurnRule['rule'] | null;
}

/**
 * The gauges of a parallel thread, with the diameters they stand for: mm or inches as the limits are. Makers'
 * tolerances and wear are inside them: a GO is a little larger than its limit when new, a NOT GO a little smaller.
 * The plain NOT GO is missing where the largest minor diameter is not known (UNJ).
 * Sources: `asme-b1-2`, `iso-1502`; the sizes are the class limits.
 */
export function gaugeSet(thread: Thread, limits: ThreadLimits): GaugeSet {
  const { unit, pitch, minor } = limits;
  const usual = usualTurnRule(thread);
  const gauges: Gauge[] = [
    {
      member: 'go',
      kind: 'thread',
      size: pitch.min,
      unit,
      proves: ['pitch-not-small', 'lead-and-angle', 'major-not-small'],
    },
    { member: 'not-go', kind: 'thread', size: pitch.max, unit, proves: ['pitch-not-large'] },
    { member: 'minor-go', kind: 'plain', size: minor.min, unit, proves: ['minor-not-small'] },
  ];
  if (minor.max !== undefined) {
    gauges.push({
      member: 'minor-not-go',
      kind: 'plain',
      size: minor.max,
      unit,
      proves: ['minor-not-large'],
    });
  }
  return { gauges, turns: usual ? TURN_RULES : [], usual };
}

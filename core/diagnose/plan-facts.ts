/** What the plan of a hole says about trouble in it: its own numbers, and the causes they point to. */

import type { ChamferClass } from '../chamfer/chamfer';
import type { WarningCode } from '../plan/codes';
import type { HolePlan, HoleRequest, TapChoice } from '../plan/types';
import type { SourceId } from '../sources';
import { WORN } from '../tap/styles';
import type { TapStyle } from '../tap/tap';
import { WATCH } from '../tap/twist';
import type { CauseId } from './causes';

export const PLAN_FACT_CODES = [
  'room-short',
  'room-enough',
  'chips-ahead-blind',
  'share-high',
  'share-low',
  'spindle-short',
  'tooth-load-high',
  'speed-above',
  'speed-below',
  'speed-range',
  'thread-deep',
  'work-hardens',
  'springs-back',
  'interrupted',
  'plated',
  'drill-at-risk',
  'strips-first',
] as const;

export type PlanFactCode = (typeof PLAN_FACT_CODES)[number];

export interface PlanFact {
  code: PlanFactCode;
  /** Lengths in mm, room in pitches, loads in N, torques in N·m, shares as fractions, speeds in rev/min. */
  numbers: Record<string, number>;
  speaksFor: readonly CauseId[];
  source: SourceId;
}

/** The tap that was run and how fast; the plan's first choice and its speed where not said. */
export interface TapUsed {
  style?: TapStyle;
  chamfer?: ChamferClass;
  /** rev/min */
  rpm?: number;
}

/** A tooth this much more loaded than under a 3 to 5 thread chamfer is called heavy. Common practice. */
const HEAVY_TOOTH = 1.3;

/** Share of the spindle's torque that a worn tap may take. Common practice. */
const SPINDLE_FULL = 0.9;

/**
 * The tap of a plan that was run: style and chamfer as said, otherwise the plan's first choice of that style.
 * Null for a plan without taps. Source: derived; no unit.
 */
export function tapInUse(plan: HolePlan, used: TapUsed): TapChoice | null {
  const { style, chamfer } = used;
  const fits = (tap: TapChoice) =>
    tap.process !== 'mill' &&
    (style === undefined || tap.style === style) &&
    (chamfer === undefined || tap.chamfer.class === chamfer);
  return plan.taps.find(fits) ?? plan.taps.find((tap) => tap.process !== 'mill') ?? null;
}

function fact(
  code: PlanFactCode,
  numbers: Record<string, number>,
  speaksFor: readonly CauseId[],
  source: SourceId = 'derived',
): PlanFact {
  return { code, numbers, speaksFor, source };
}

function roomFacts(plan: HolePlan, request: HoleRequest, tap: TapChoice): PlanFact[] {
  if (request.hole.kind !== 'blind') return [];
  const short = tap.reasons.find(({ code }) => code === 'does-not-reach');
  const { pitch } = plan.thread;
  const wanted = tap.depth.roomInPitches;
  if (!short) return [fact('room-enough', { wanted }, [])];
  const missing = (short.numbers['short'] ?? 0) / pitch;
  const causes: CauseId[] = ['too-little-room', 'touches-bottom', 'hole-shallow'];
  return [fact('room-short', { have: wanted - missing, wanted }, causes)];
}

function forceFacts(plan: HolePlan, tap: TapChoice): PlanFact[] {
  const found: PlanFact[] = [];
  const { sharp, worn } = tap.tapShare;
  if (sharp > WATCH.sharp || worn > WATCH.worn) {
    const causes: CauseId[] = ['overload', 'dull-tap', 'chips-packed', 'hole-small'];
    found.push(fact('share-high', { sharp, worn }, causes, 'tap-chip-model'));
  } else if (worn > 0 && worn <= WATCH.good) {
    found.push(fact('share-low', { sharp, worn }, ['bending', 'misaligned'], 'tap-chip-model'));
  }
  const spindle = tap.spindleShare;
  if (spindle !== undefined && spindle * WORN > SPINDLE_FULL) {
    const numbers = { sharp: spindle, worn: spindle * WORN };
    found.push(fact('spindle-short', numbers, ['torque-over'], 'tap-chip-model'));
  }
  const longer = plan.taps.find(
    ({ style, chamfer }) => style === tap.style && chamfer.class === 'plug',
  );
  const ratio = longer && longer.toothLoad > 0 ? tap.toothLoad / longer.toothLoad : 0;
  if (longer && ratio >= HEAVY_TOOTH) {
    const numbers = { load: tap.toothLoad, longer: longer.toothLoad, ratio };
    found.push(fact('tooth-load-high', numbers, ['tooth-load'], 'tap-chip-model'));
  }
  return found;
}

function speedFacts(plan: HolePlan, rpm: number | undefined): PlanFact[] {
  if (!plan.cycle) return [];
  const { min, max } = plan.cycle.rpmRange;
  if (rpm === undefined) return [fact('speed-range', { min, max }, [], 'speed-charts')];
  if (rpm > max) {
    const causes: CauseId[] = ['speed-high', 'heat', 'built-up-edge'];
    return [fact('speed-above', { rpm, min, max }, causes, 'speed-charts')];
  }
  if (rpm < min) return [fact('speed-below', { rpm, min, max }, ['rubbing'], 'speed-charts')];
  return [fact('speed-range', { rpm, min, max }, [], 'speed-charts')];
}

/** What a warning of the plan points to. */
const BY_WARNING: Partial<Record<WarningCode, { code: PlanFactCode; causes: CauseId[] }>> = {
  'deep-thread': { code: 'thread-deep', causes: ['chips-packed', 'recut-chips', 'fluid-missed'] },
  'work-hardens': { code: 'work-hardens', causes: ['hardened-wall', 'rubbing'] },
  'springs-back': { code: 'springs-back', causes: ['springy', 'closes-in'] },
  interrupted: { code: 'interrupted', causes: ['hard-spot'] },
  plated: { code: 'plated', causes: ['no-allowance', 'limit-low'] },
  'drill-at-risk': { code: 'drill-at-risk', causes: ['drill-off', 'minor-large-unseen'] },
  'weak-when-stripped': { code: 'strips-first', causes: ['engagement-short'] },
};

/**
 * The facts of a plan that bear on trouble, in a fixed order. Units as on `PlanFact`; empty for a plan without taps.
 * `request` is the one the plan was made from. Sources: on each fact.
 */
export function planFacts(plan: HolePlan, request: HoleRequest, used: TapUsed = {}): PlanFact[] {
  const tap = tapInUse(plan, used);
  if (!tap) return [];
  const ahead =
    request.hole.kind === 'blind' && tap.chips.goes === 'ahead' && tap.chips.fits !== true;
  const chips: CauseId[] = ['chips-packed', 'touches-bottom', 'overload'];
  return [
    ...roomFacts(plan, request, tap),
    ...(ahead
      ? [fact('chips-ahead-blind', { room: tap.chips.neededRoom }, chips, 'packed-chips')]
      : []),
    ...forceFacts(plan, tap),
    ...speedFacts(plan, used.rpm),
    ...plan.warnings.flatMap(({ code, numbers, source }) => {
      const known = BY_WARNING[code];
      return known ? [fact(known.code, numbers, known.causes, source)] : [];
    }),
  ];
}

/** The numbers a hole section is drawn from, picked out of a plan. All in mm; depths from the face. */

import type { HolePlan, HoleRequest, TapChoice } from '../../core/plan/types';
import type { TapStyle } from '../../core/tap/tap';
import { tapMajor } from '../../core/tap/major';
import { basicDiameters } from '../../core/thread/profile';
import type { Hand } from '../../core/thread/thread';
import { drillName, limitNumber, type Unit } from '../words/format';

/** Below this a difference is rounding, not metal. */
const HAIR = 0.004;

export interface HoleFacts {
  designation: string;
  hand: Hand;
  through: boolean;
  /** Major diameter of the thread, hole diameter, pitch. */
  major: number;
  hole: number;
  pitch: number;
  /** What stands on the drill, or the size to bore where no drill suits. */
  drill: string;
  /** Full thread this tap leaves, the full thread asked for, and what is missing (0 when it is met). */
  fullThread: number;
  asked: number;
  short: number;
  /** The tap at its deepest; null where none is drawn (a mill, or no tap at all). */
  tap: TapFacts | null;
  /** Blind: where the drill's corners and its point end. Through: both the thickness. */
  shoulder: number;
  point: number;
  limit: { at: 'shoulder' | 'point'; depth: number } | null;
  /** Through: room under the far face, null when nothing is known to be there. */
  clearBelow: number | null;
  /** Through: how far the tap would run into what is beneath; 0 when it does not. */
  strikes: number;
}

export interface TapFacts {
  style: TapStyle;
  /** Where the tap's full profile ends, its chamfer ends, and its nose (with any centre) ends. */
  body: number;
  nose: number;
  tip: number;
  /** Longest chamfer of the class: its length and threads. */
  chamfer: number;
  threads: { min: number; max: number };
  /** Tip at the middle of the class. */
  middleTip: number;
}

/** The choice a section shows: the one asked for, else the best, else the first cut tap. */
export function shownChoice(plan: HolePlan, choice?: TapChoice): TapChoice | undefined {
  return (
    choice ??
    plan.taps.find((tap) => tap.verdict === 'best') ??
    plan.taps.find((tap) => tap.process === 'cut') ??
    plan.taps[0]
  );
}

function tapFacts(choice: TapChoice, pitch: number, centre: number): TapFacts | null {
  if (choice.process === 'mill') return null;
  const chamfer = choice.chamfer.threads.max * pitch;
  const { tip, nominal } = choice.depth;
  // A hole too shallow to let the tap in at all shows none.
  if (tip <= HAIR) return null;
  const nose = Math.max(0, tip - centre);
  return {
    style: choice.style,
    body: Math.max(0, nose - chamfer),
    nose,
    tip,
    chamfer,
    threads: choice.chamfer.threads,
    middleTip: nominal.tip,
  };
}

function askedThread(plan: HolePlan, request: HoleRequest, fallback: number): number {
  if (request.fullThread !== undefined) return request.fullThread;
  if (request.hole.kind === 'through') return request.hole.thickness;
  const taken = plan.assumptions.find((assumption) => assumption.code === 'full-thread-default');
  return taken?.numbers['depth'] ?? fallback;
}

/** Hole to draw where no stocked drill suits: the middle of the class, or the basic minor diameter. */
function boredHole(plan: HolePlan): number {
  const { limits, thread } = plan;
  const factor = limits?.unit === 'in' ? 25.4 : 1;
  if (limits?.minor.max !== undefined) return (factor * (limits.minor.min + limits.minor.max)) / 2;
  return limits ? factor * limits.minor.min : basicDiameters(thread).minor;
}

/** Picks the facts of one section. `unit` decides only how the drill or bored size is written. */
export function holeFacts(
  plan: HolePlan,
  request: HoleRequest,
  unit: Unit,
  wanted?: TapChoice,
): HoleFacts {
  const choice = shownChoice(plan, wanted);
  const { hole: kind } = request;
  const { thread } = plan;
  const through = kind.kind === 'through';
  const drill = choice ? choice.drill : plan.drill;
  const hole = drill?.diameter ?? boredHole(plan);
  const asked = askedThread(plan, request, choice?.depth.fullThread ?? 0);
  const fullThread = choice?.depth.fullThread ?? asked;
  const tap = choice ? tapFacts(choice, thread.pitch, request.externalCentre ?? 0) : null;
  const clearBelow = through ? (kind.clearBelow ?? null) : null;
  const floor = through && clearBelow !== null ? kind.thickness + clearBelow : Infinity;
  const strikes = Math.max(0, (tap?.tip ?? 0) - floor);
  return {
    designation: thread.designation,
    hand: thread.hand,
    through,
    major: Math.max(tapMajor(thread), hole),
    hole,
    pitch: thread.pitch,
    drill: drill ? drillName(drill) : `${limitNumber(hole, unit)} ${unit}`,
    fullThread,
    asked,
    short: asked - fullThread > HAIR ? asked - fullThread : 0,
    tap,
    shoulder: through ? kind.thickness : (choice?.depth.shoulder ?? fullThread),
    point: through ? kind.thickness : (choice?.depth.point ?? fullThread),
    limit: kind.kind === 'blind' ? (kind.limit ?? null) : null,
    clearBelow,
    strikes: strikes > HAIR ? strikes : 0,
  };
}

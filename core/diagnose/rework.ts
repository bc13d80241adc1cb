/**
 * What can be done about a thread that is wrong, rung by rung, and whose word each rung needs.
 * Nothing here accepts a rework: it says who may. Common practice; wire-insert sizes derived.
 */

import { answer, refuse, type Outcome } from '../outcome';
import type { SourceId } from '../sources';

export const REWORK_RUNGS = [
  'chase',
  'open-minor',
  're-tap',
  'shorter-screw',
  'longer-screw',
  'larger-thread',
  'wire-insert',
  'solid-insert',
  'plug-or-weld',
  'scrap',
] as const;

export type ReworkRung = (typeof REWORK_RUNGS)[number];

/** `shop`: the shop itself; `designer`: the drawing must change; `concession`: in writing from whoever accepts the part; `engineer`: the responsible engineer, under the code that governs. */
export type Authority = 'shop' | 'designer' | 'concession' | 'engineer';

export const DEFECTS = [
  'chips-or-burr',
  'pitch-small',
  'pitch-large',
  'minor-large',
  'minor-small',
  'thread-short',
  'torn',
  'double-start',
  'stripped',
] as const;

export type Defect = (typeof DEFECTS)[number];

/** What the thread serves. Anything but `ordinary` puts every rung that cuts or adds metal before the engineer. */
export type Duty = 'ordinary' | 'governed';

export interface ReworkStep {
  rung: ReworkRung;
  authority: Authority;
  /** False where this rung does nothing for this defect. */
  helps: boolean;
  source: SourceId;
}

const HELPS: Record<Defect, readonly ReworkRung[]> = {
  'chips-or-burr': ['chase'],
  'pitch-small': ['chase', 're-tap'],
  // Opened first: a tap forced into too small a hole is the next to break.
  'minor-small': ['open-minor'],
  // A longer screw would stand on the end of the thread.
  'thread-short': ['re-tap', 'shorter-screw'],
  torn: ['longer-screw', 'larger-thread', 'wire-insert', 'solid-insert', 'plug-or-weld'],
  'pitch-large': ['larger-thread', 'wire-insert', 'solid-insert', 'plug-or-weld'],
  'minor-large': ['longer-screw', 'larger-thread', 'wire-insert', 'solid-insert', 'plug-or-weld'],
  'double-start': ['larger-thread', 'wire-insert', 'solid-insert', 'plug-or-weld'],
  stripped: ['longer-screw', 'larger-thread', 'wire-insert', 'solid-insert', 'plug-or-weld'],
};

const AUTHORITY: Record<ReworkRung, Authority> = {
  chase: 'shop',
  'open-minor': 'shop',
  're-tap': 'shop',
  'shorter-screw': 'designer',
  'longer-screw': 'designer',
  'larger-thread': 'designer',
  'wire-insert': 'concession',
  'solid-insert': 'concession',
  'plug-or-weld': 'engineer',
  scrap: 'shop',
};

/**
 * The ladder for a defect, cheapest rung first. Where a code or a responsible engineer governs the thread
 * (pressure, lifting, structure, vehicle, medical), every rung but cleaning and scrap needs the engineer.
 * No units. Source: `common-practice`.
 */
export function reworkLadder(defect: Defect, duty: Duty): ReworkStep[] {
  return REWORK_RUNGS.map((rung): ReworkStep => {
    const free = rung === 'chase' || rung === 'scrap';
    return {
      rung,
      authority: duty === 'governed' && !free ? 'engineer' : AUTHORITY[rung],
      helps: rung === 'scrap' || HELPS[defect].includes(rung),
      source: 'common-practice',
    };
  });
}

/**
 * Asked to accept a rework, this always refuses: `rework-not-accepted-here` names whose word is needed.
 * No units. Source: `common-practice`.
 */
export function acceptRework(defect: Defect, rung: ReworkRung, duty: Duty): Outcome<never> {
  const authority = reworkLadder(defect, duty).find((step) => step.rung === rung)?.authority;
  return refuse({ code: 'rework-not-accepted-here', data: { authority: authority ?? 'engineer' } });
}

export interface InsertHole {
  /** Limits of the hole's minor diameter before the insert's tap, and least major diameter, mm. */
  minorMin: number;
  majorMin: number;
  /** Wall to keep beyond that major diameter, mm. Common practice. */
  wall: number;
}

/** Height of the insert's wire: its tapped hole is one basic thread larger all round. Derived from ISO 68-1. */
const WIRE = { minor: 0.2165, major: 1.299 } as const;

/** Wall beyond the insert's thread, share of the screw's diameter. Common practice. */
const WALL_SHARE = 0.3;

/**
 * Hole for a wire insert of a thread, mm. `diameter` and `pitch` of the screw, mm, above 0
 * (`thread-not-positive`). Sources: derived; the wall `common-practice`.
 */
export function insertHole(diameter: number, pitch: number): Outcome<InsertHole> {
  if (!(diameter > 0 && pitch > 0)) return refuse({ code: 'thread-not-positive', field: 'thread' });
  return answer({
    minorMin: diameter + WIRE.minor * pitch,
    majorMin: diameter + WIRE.major * pitch,
    wall: WALL_SHARE * diameter,
  });
}

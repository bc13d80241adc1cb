/**
 * How deep is enough: the engagement at which the screw breaks before the thread strips.
 *
 * Static stripping under one steady pull, worst sizes of both parts, nothing else. It is geometry with strengths
 * put in, not a rating: it does not say what a joint may carry, lift or hold, and is refused where that is asked.
 */

import type { ThreadLimits } from '../limits/limits';
import { externalMajorMin, externalPitchMin } from '../limits/external';
import type { Material } from '../material/material';
import { answer, refuse, type Outcome } from '../outcome';
import type { Thread } from '../thread/thread';
import { MM_PER_INCH, type Range } from '../units';
import type { Purpose } from './purposes';
import { SCREW_STRENGTH, SHEAR_SHARE, type ScrewGrade } from './screws';
import { ENGAGEMENT_MARGIN, internalShearArea, tensileArea } from './strip';

export const ENGAGEMENT_PROBLEM_CODES = [
  /** Lifting, pressure, fatigue, rework, a rated load: for the responsible engineer. data: purpose. */
  'not-rated',
  /** Pipe and wire-insert holes: other rules. data: designation. */
  'engagement-other-thread',
  /** The strength of this material varies too much to state. data: material. */
  'strength-unknown',
  /** Largest minor diameter not known (UNJ, MJ by own rules). data: designation. */
  'engagement-minor-unknown',
] as const;

export type EngagementProblemCode = (typeof ENGAGEMENT_PROBLEM_CODES)[number];

export interface EngagementRequest {
  thread: Thread;
  limits: ThreadLimits;
  screw: ScrewGrade;
  material: Pick<Material, 'id' | 'shear'>;
  /** Shear strength of the tapped metal from its certificate, N/mm², in place of the table's. */
  shear?: number;
  purpose?: Purpose;
}

export interface Engagement {
  /** Tensile stress area of the screw, mm². */
  tensileArea: number;
  /** Area that shears per mm of engagement, mm²/mm: the hole's thread, the screw's thread. */
  holeArea: number;
  screwArea: number;
  /** Engagement at which both take the same pull, mm: the longer of hole and screw. */
  matching: number;
  /** Whose thread would strip first. */
  governs: 'hole' | 'screw';
  /** Full thread to ask for: matching × 1.25 to × 1.5, mm. */
  specify: Range;
  /** The same in diameters of the screw. */
  inDiameters: { matching: number; specify: Range };
}

/**
 * Shear area of the screw's thread per mm of engagement, mm²/mm, at the largest minor diameter of the hole.
 * All in mm. Source: `fed-std-h28`.
 */
export function externalShearArea(sizes: {
  pitch: number;
  holeMinorMax: number;
  screwPitchMin: number;
}): number {
  const { pitch, holeMinorMax, screwPitchMin } = sizes;
  const bite = pitch / 2 + (screwPitchMin - holeMinorMax) / Math.sqrt(3);
  return (Math.PI / pitch) * holeMinorMax * Math.max(0, bite);
}

interface Areas {
  tensile: number;
  hole: number;
  screw: number;
}

function areasOf(thread: Thread, limits: ThreadLimits, minorMax: number): Areas {
  const factor = limits.unit === 'in' ? MM_PER_INCH : 1;
  const { pitch } = thread;
  return {
    tensile: tensileArea(thread.diameter, pitch, thread.system === 'unified' ? 'inch' : 'metric'),
    hole: internalShearArea({
      pitch,
      screwMajorMin: externalMajorMin(thread),
      holePitchMax: limits.pitch.max * factor,
    }),
    screw: externalShearArea({
      pitch,
      holeMinorMax: minorMax * factor,
      screwPitchMin: externalPitchMin(thread),
    }),
  };
}

function reckon(areas: Areas, thread: Thread, tensile: number, shear: number): Engagement {
  const pull = areas.tensile * tensile;
  const byHole = pull / (areas.hole * shear);
  const byScrew = pull / (areas.screw * SHEAR_SHARE * tensile);
  const matching = Math.max(byHole, byScrew);
  const specify = {
    min: matching * ENGAGEMENT_MARGIN.least,
    max: matching * ENGAGEMENT_MARGIN.most,
  };
  const { diameter } = thread;
  return {
    tensileArea: areas.tensile,
    holeArea: areas.hole,
    screwArea: areas.screw,
    matching,
    governs: byHole >= byScrew ? 'hole' : 'screw',
    specify,
    inDiameters: {
      matching: matching / diameter,
      specify: { min: specify.min / diameter, max: specify.max / diameter },
    },
  };
}

/**
 * Engagement needed for a screw of this grade to break before its thread, or the hole's, strips.
 *
 * @param request strengths N/mm²; `limits` of the hole's class; the screw 6g or 2A at its smallest.
 * @returns areas in mm² and mm²/mm, engagement in mm of full thread. Refuses with `ENGAGEMENT_PROBLEM_CODES`;
 *   any purpose but `static` is refused. Sources: `fed-std-h28`, `screw-grades`, `shear-strength`;
 *   the margin common practice.
 */
export function neededEngagement(request: EngagementRequest): Outcome<Engagement> {
  const { thread, limits, screw, material, purpose = 'static' } = request;
  if (purpose !== 'static') {
    return refuse({ code: 'not-rated', field: 'purpose', data: { purpose } });
  }
  const { designation } = thread;
  if (thread.system === 'pipe' || thread.insert) {
    return refuse({ code: 'engagement-other-thread', field: 'thread', data: { designation } });
  }
  const shear = request.shear ?? material.shear;
  if (shear === undefined) {
    return refuse({ code: 'strength-unknown', field: 'material', data: { material: material.id } });
  }
  if (limits.minor.max === undefined) {
    return refuse({ code: 'engagement-minor-unknown', field: 'thread', data: { designation } });
  }
  const areas = areasOf(thread, limits, limits.minor.max);
  return answer(reckon(areas, thread, SCREW_STRENGTH[screw], shear));
}

/** Whether the chips of a tap that drives them ahead fit at the bottom of one blind hole, and what would have to change. */

import type { Chamfer, ChamferClass } from '../chamfer/chamfer';
import { chamferOf } from '../chamfer/classes';
import {
  bulkCurve,
  bulkOf,
  chipFit,
  type ChipBulk,
  type ChipFit,
  type PackedChips,
} from '../chips/fit';
import { coneLength, LOOSE_BULKING } from '../chips/room';
import { waysForAhead, type Way } from '../chips/ways';
import type { DrillChoice } from '../drill/drill';
import { STOP_CLEARANCE, tipDepth } from '../hole/depth';
import type { MaterialId } from '../material/material';
import { answer, type Outcome } from '../outcome';
import type { Thread } from '../thread/thread';
import { jobOf } from './prepare';

export interface ChipQuestion {
  thread: string;
  /** mm; the depth to the drill's shoulder. */
  fullThread: number;
  shoulder: number;
  chamfer: ChamferClass;
  material: MaterialId;
  /** Degrees. */
  pointAngle: number;
}

export interface ChipStudy {
  thread: Thread;
  chamfer: Chamfer;
  hole: number;
  drill: DrillChoice | null;
  /** Tip of the tap and point of the drill, mm from the face, with the longest chamfer of the class. */
  tip: number;
  point: number;
  fit: ChipFit;
  /** The material's own kind of chip among those of `fit`. */
  bulk: ChipBulk;
  own: PackedChips;
  /** Shoulder depth at which that kind would fit, mm. */
  shoulderNeeded: number;
  /** mm by which the tap itself is too long for the hole; 0 where it reaches. */
  short: number;
  /** What would have to change before they fit, the way that keeps the tap first. */
  ways: Way[];
  /** Free bore wanted against how loosely chips lie. */
  curve: { factor: number; needed: number }[];
}

/**
 * Sets the chips of a spiral-point tap against the room below it: lengths mm, degrees. The chamfer counts
 * with the longest of its class. Refuses as `jobOf` does (the shoulder stands for the hole's limit).
 * Sources: `packed-chips`, `chip-bulking`, `iso-68-1`, derived.
 */
export function chipStudy(question: ChipQuestion): Outcome<ChipStudy> {
  const { fullThread, shoulder, pointAngle } = question;
  const job = jobOf({
    thread: question.thread,
    fullThread,
    hole: { kind: 'blind', limit: { at: 'shoulder', depth: shoulder } },
    material: question.material,
    drillPoint: pointAngle,
  });
  if (!job.ok) return job;
  const { major, pitch, cutHole: hole, system, drill, material, thread } = job.value;
  const chamfer = chamferOf(question.chamfer, system, true);
  const chain = { pitch, chamferThreads: chamfer.threads.max, centre: 0, clearance: 0 };
  const tip = tipDepth(fullThread, chain);
  const free = shoulder - tip;
  const input = { major, pitch, hole, fullThread, free, pointAngle };
  const fit = chipFit(input);
  const bulk = bulkOf(material.chips);
  const own = fit.packed.find((each) => each.bulk === bulk)!;
  const ways = waysForAhead({
    groove: { major, pitch, hole },
    bulk,
    fullThread,
    nose: tip - fullThread,
    clearance: STOP_CLEARANCE.synchronous * pitch,
    shoulder,
    pointAngle,
    forming: material.forming,
  });
  return answer(
    {
      thread,
      chamfer,
      hole,
      drill,
      tip,
      point: shoulder + coneLength(hole, pointAngle),
      fit,
      bulk,
      own,
      shoulderNeeded: shoulder + own.deeper,
      short: Math.max(0, -free),
      ways,
      curve: bulkCurve(input, LOOSE_BULKING.fine.min, LOOSE_BULKING.coils.max),
    },
    job.notes,
  );
}

/** Sizes the hole for a cutting tap: the window its class or its gauge leaves, every near drill judged, one chosen. */

import type { DrillChoice } from '../drill/drill';
import { bestDrill, judgeDrills, type HoleWindow } from '../drill/judge';
import { oversizeShare } from '../drill/oversize';
import { listedDrill, targetHole } from '../drill/usual';
import { inchSystem } from '../thread/inch-system';
import { basicDiameters } from '../thread/profile';
import type { Range, ThreadLimits } from '../limits/limits';
import type { Material } from '../material/material';
import type { Thread } from '../thread/thread';
import { taperDrills, type TaperPipe } from './taper';
import type { HoleRequest } from './types';

export interface JobParts {
  request: HoleRequest;
  thread: Thread;
  limits: ThreadLimits | null;
  material: Material;
  borrowedMax?: number | undefined;
}

/**
 * A thread's window on the hole, before coating, in mm. Inch limits hold on the coated thread, so both move;
 * metric ones on the bare thread, which must still clear the basic size (`basicMinor`, mm) once coated, so
 * only the least moves. Sources: derived; the rules from memory of ASME B1.1 and ISO 965-1.
 */
export function holeWindow(
  limits: ThreadLimits,
  coating: HoleRequest['coating'],
  borrowedMax?: number,
  basicMinor?: number,
): Range {
  const [thin, thick] = coating?.thickness ?? [0, 0];
  const max = limits.minor.max ?? borrowedMax ?? limits.minor.min;
  if (limits.unit === 'in') {
    return { min: limits.minor.min * 25.4 + 2 * thick, max: max * 25.4 + 2 * thin };
  }
  const basic = basicMinor ?? limits.minor.min;
  return { min: Math.max(limits.minor.min, basic + 2 * thick), max };
}

/** Hard on taps: the largest hole that surely passes spares them. No unit. Common practice. */
export function wantsLargestHole(material: Material): boolean {
  return material.abrasive || material.workHardens || material.springsBack || material.kc11 >= 1900;
}

/** mm */
export interface CutHole {
  window: Range;
  drills: DrillChoice[];
  drill: DrillChoice | null;
}

/** The hole of a taper pipe thread, from the lists. mm. Sources: as `taperPipe`. */
export function taperHole(taper: TaperPipe, { request, thread, material }: JobParts): CutHole {
  const share = oversizeShare(material);
  const drills = taperDrills(taper, thread.pitch, share, request.stockedDrills);
  const drill = bestDrill(drills, {
    listed: taper.listed,
    target: (taper.window.min + taper.window.max) / 2,
    largest: false,
    system: inchSystem(thread) ? 'inch' : 'metric',
  });
  return { window: taper.window, drills, drill };
}

/** The drill that lists give for a parallel pipe thread, mm: where it may cut large, the nearest to it is taken. */
function pipeTarget(thread: Thread): number | undefined {
  const listed = Number(listedDrill(thread));
  return Number.isFinite(listed) ? listed : undefined;
}

/** The hole of a thread with limits, for a tap of this major diameter. mm. Sources: as `bestDrill`. */
export function limitedHole(limits: ThreadLimits, parts: JobParts, major: number): CutHole {
  const { request, thread, material } = parts;
  // The basic size of a plain metric thread; other profiles keep their own least size as the basic one.
  const plain = thread.system === 'metric' && thread.form === 'M' && !thread.insert;
  const basic = plain ? basicDiameters(thread).minor : undefined;
  const window = holeWindow(limits, request.coating, parts.borrowedMax, basic);
  const cutWindow: HoleWindow = {
    ...window,
    major,
    pitch: thread.pitch,
    oversizeShare: oversizeShare(material),
  };
  const drills = judgeDrills(cutWindow, request.stockedDrills);
  const pipe = thread.system === 'pipe';
  const drill = bestDrill(drills, {
    listed: listedDrill(thread),
    target: pipe
      ? (pipeTarget(thread) ?? (window.min + window.max) / 2)
      : targetHole(thread, major),
    largest: wantsLargestHole(material),
    system: thread.system === 'unified' ? 'inch' : 'metric',
  });
  return { window, drills, drill };
}

/** The blind-hole sum, asked from any side: full thread, drilled depth, or the chamfer that fits. */

import { chamferOf, type ChamferSystem } from '../chamfer/classes';
import { CHAMFER_CLASSES, type Chamfer } from '../chamfer/chamfer';
import { answer, refuse, type Outcome } from '../outcome';
import { obtainableThread, roomBelowThread } from './depth';

export interface BlindHoleSum {
  /** mm */
  pitch: number;
  /** Two of the three: full thread and shoulder depth in mm, chamfer in threads. */
  fullThread?: number;
  shoulder?: number;
  chamfer?: { min: number; max: number };
  /** Stop clearance, pitches; external centre on the nose, mm. */
  clearance: number;
  centre: number;
}

/** An answer for the longest chamfer of the class (promise), its middle, and its shortest. */
export interface ThreeWays {
  worst: number;
  middle: number;
  best: number;
}

export type BlindHoleAnswer =
  | { asked: 'shoulder'; depth: ThreeWays }
  | { asked: 'fullThread'; depth: ThreeWays }
  | { asked: 'chamfer'; threads: number; roomInPitches: number };

function threeWays(
  chamfer: { min: number; max: number },
  at: (threads: number) => number,
): ThreeWays {
  const { min, max } = chamfer;
  return { worst: at(max), middle: at((min + max) / 2), best: at(min) };
}

/**
 * Works out the missing one of full thread (mm), shoulder depth (mm) and chamfer (threads).
 * All given lengths above 0; clearance 0 or more, pitches. Refuses `two-of-three` unless exactly one is
 * missing, `no-room` when the hole is not deeper than the thread and its clearance. Source: derived.
 */
export function solveBlindHole(sum: BlindHoleSum): Outcome<BlindHoleAnswer> {
  const { pitch, fullThread, shoulder, chamfer, clearance, centre } = sum;
  const given = [fullThread, shoulder, chamfer].filter((each) => each !== undefined).length;
  if (given !== 2) return refuse({ code: 'two-of-three' });
  const chain = (chamferThreads: number) => ({ pitch, chamferThreads, centre, clearance });
  if (fullThread === undefined) {
    const at = (threads: number) => obtainableThread(shoulder!, chain(threads));
    if (at(chamfer!.min) <= 0) return refuse({ code: 'no-room', field: 'shoulder' });
    return answer({ asked: 'fullThread', depth: threeWays(chamfer!, at) });
  }
  if (shoulder === undefined) {
    const at = (threads: number) => fullThread + roomBelowThread(chain(threads));
    return answer({ asked: 'shoulder', depth: threeWays(chamfer!, at) });
  }
  const roomInPitches = (shoulder - fullThread) / pitch;
  const threads = roomInPitches - clearance - centre / pitch;
  if (threads <= 0) return refuse({ code: 'no-room', field: 'shoulder' });
  return answer({ asked: 'chamfer', threads, roomInPitches });
}

export interface ChamferBand {
  chamfer: Chamfer;
  points: { shoulder: number; sure: number; atBest: number }[];
}

/**
 * Full thread against shoulder depth, one band for each chamfer class: what its longest chamfer makes
 * sure of and what its shortest would allow. Even steps, and the depths at which an edge leaves zero.
 * All lengths mm, `from` below `to`; `steps` 1 or more. Source: derived.
 */
export function threadDepthBands(
  hole: { pitch: number; clearance: number; centre: number; system: ChamferSystem },
  from: number,
  to: number,
  steps = 12,
): ChamferBand[] {
  const even = Array.from({ length: steps + 1 }, (_, i) => from + ((to - from) * i) / steps);
  return CHAMFER_CLASSES.map((name) => {
    const chamfer = chamferOf(name, hole.system);
    const { min, max } = chamfer.threads;
    const chain = (chamferThreads: number) => ({ ...hole, chamferThreads });
    const corners = [min, max]
      .map((threads) => roomBelowThread(chain(threads)))
      .filter((corner) => corner > from && corner < to);
    const depths = [...new Set([...even, ...corners])].sort((a, b) => a - b);
    const points = depths.map((shoulder) => ({
      shoulder,
      sure: obtainableThread(shoulder, chain(max)),
      atBest: obtainableThread(shoulder, chain(min)),
    }));
    return { chamfer, points };
  });
}

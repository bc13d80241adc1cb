/** One blind hole asked from any side, with its drill, its tap at the deepest, and every chamfer class beside it. */

import { CHAMFER_CLASSES, type Chamfer } from '../chamfer/chamfer';
import { chamferOf, type ChamferSystem } from '../chamfer/classes';
import { chamfersWithin, type ChamferThatFits } from '../chamfer/names';
import { coneLength } from '../chips/room';
import type { DrillChoice } from '../drill/drill';
import {
  solveBlindHole,
  threadDepthBands,
  type BlindHoleAnswer,
  type ChamferBand,
} from '../hole/blind';
import {
  HAND_FINISH_CLEARANCE,
  obtainableThread,
  roomBelowThread,
  STOP_CLEARANCE,
  tipDepth,
} from '../hole/depth';
import type { MaterialId } from '../material/material';
import { answer, type Outcome } from '../outcome';
import type { Thread } from '../thread/thread';
import { jobOf } from './prepare';
import type { SpindleDrive } from './types';

export interface BlindQuestion {
  thread: string;
  /** Two of the three: mm, mm to the drill's shoulder, threads. */
  fullThread?: number;
  shoulder?: number;
  chamfer?: { min: number; max: number };
  drive: SpindleDrive;
  /** True for the last tap of a hand set, worked down to the floor with care. */
  finishing?: boolean;
  /** External centre, mm; drill point, degrees. */
  centre: number;
  pointAngle: number;
}

/** The hole and the tap in it at its deepest, for one length of chamfer. mm from the face. */
export interface BlindDepths {
  threads: number;
  fullThread: number;
  shoulder: number;
  /** Where the drill's point ends. */
  point: number;
  /** Where the tap's chamfer ends, and where its tip is: the two differ by an external centre. */
  nose: number;
  tip: number;
  roomInPitches: number;
}

export interface BlindStudy {
  thread: Thread;
  system: ChamferSystem;
  result: BlindHoleAnswer;
  /** Stop clearance, pitches. */
  clearance: number;
  /** Hole reckoned with, mm, and the drill that is listed for the thread. */
  hole: number;
  drill: DrillChoice | null;
  /** With the longest chamfer of the class, which is promised, and with its middle. */
  promised: BlindDepths;
  middle: BlindDepths;
  /** The same question for every class; empty where the chamfer itself was asked for. */
  classes: { chamfer: Chamfer; promised: BlindDepths; middle: BlindDepths }[];
  /** Which classes fit; empty unless the chamfer was asked for. */
  fits: ChamferThatFits[];
  bands: ChamferBand[];
}

/** The drill is the listed one for the thread: in a metal with no wishes of its own. */
const PLAIN_METAL: MaterialId = 'steel-low';

/** Hole depths drawn beyond the one in question. */
const BEYOND = 1.35;

interface Setting {
  question: BlindQuestion;
  pitch: number;
  clearance: number;
  /** Length of the drill's cone, mm. */
  cone: number;
}

function depthsAt({ question, pitch, clearance, cone }: Setting, threads: number): BlindDepths {
  const chain = { pitch, chamferThreads: threads, centre: question.centre, clearance };
  const fullThread = question.fullThread ?? obtainableThread(question.shoulder ?? 0, chain);
  const shoulder = question.shoulder ?? fullThread + roomBelowThread(chain);
  return {
    threads,
    fullThread,
    shoulder,
    point: shoulder + cone,
    nose: fullThread + threads * pitch,
    tip: tipDepth(fullThread, chain),
    roomInPitches: (shoulder - fullThread) / pitch,
  };
}

/** With the longest of a range, and with its middle. */
function bothWays(setting: Setting, { min, max }: { min: number; max: number }) {
  return { promised: depthsAt(setting, max), middle: depthsAt(setting, (min + max) / 2) };
}

/**
 * Works out a blind hole: lengths mm, chamfer in threads, angle in degrees. Refuses as `jobOf` and
 * `solveBlindHole` do. Sources: derived; clearances `common-practice`.
 */
export function blindStudy(question: BlindQuestion): Outcome<BlindStudy> {
  const { thread, fullThread, shoulder, chamfer, centre, pointAngle } = question;
  const hole = { kind: 'blind' } as const;
  const metal = { material: PLAIN_METAL, drillPoint: pointAngle, externalCentre: centre };
  const job = jobOf({ thread, hole, ...metal });
  if (!job.ok) return job;
  const { pitch, system, cutHole, drill } = job.value;
  const clearance = question.finishing ? HAND_FINISH_CLEARANCE : STOP_CLEARANCE[question.drive];
  const solved = solveBlindHole({ pitch, fullThread, shoulder, chamfer, clearance, centre });
  if (!solved.ok) return solved;
  const result = solved.value;
  const setting = { question, pitch, clearance, cone: coneLength(cutHole, pointAngle) };
  const found = result.asked === 'chamfer' ? result.threads : null;
  const here = bothWays(setting, chamfer ?? { min: found ?? 0, max: found ?? 0 });
  const classes = CHAMFER_CLASSES.map((name) => chamferOf(name, system));
  const chart = { pitch, clearance, centre, system };
  return answer(
    {
      thread: job.value.thread,
      system,
      result,
      clearance,
      hole: cutHole,
      drill,
      ...here,
      classes:
        found === null
          ? classes.map((each) => ({ chamfer: each, ...bothWays(setting, each.threads) }))
          : [],
      fits: found === null ? [] : chamfersWithin(found, system),
      bands: threadDepthBands(chart, 0, BEYOND * here.promised.shoulder),
    },
    job.notes,
  );
}

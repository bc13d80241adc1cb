/** Tapping by hand: which taps in which order, how long a wrench, when to turn back, when to clear. */

import type { ChamferClass } from '../chamfer/chamfer';
import { chamferOf } from '../chamfer/classes';
import { HAND_FINISH_CLEARANCE, obtainableThread, STOP_CLEARANCE } from '../hole/depth';
import { referenceFlutes } from '../load/torque';
import type { Material } from '../material/material';
import { answer, refuse, type Outcome } from '../outcome';
import { inchSystem } from '../thread/inch-system';
import { basicDiameters } from '../thread/profile';
import type { Thread } from '../thread/thread';
import type { Range } from '../units';
import { breakingBand } from './twist';
import { webSpread, type TwistedStyle } from './web';
import { wrenchArm } from './wrench';

/** `same-diameter`: every tap cuts the whole thread, only chamfers differ. `serial`: each cuts larger, only the last to size. */
export type HandSet = 'same-diameter' | 'serial';

export type HandStyle = Exclude<TwistedStyle, 'form'>;

export interface HandJob {
  thread: Thread;
  /** mm of full thread. */
  fullThread: number;
  hole: { kind: 'through' } | { kind: 'blind'; shoulder: number };
  set: HandSet;
  style: HandStyle;
  material?: Material | undefined;
}

export interface HandTap {
  /** Place in the order, from 1. */
  order: number;
  /** Threads of chamfer, fewest and most. */
  threads: Range;
  /** Class of a same-diameter tap; missing in a serial set, whose taps go by number. */
  class?: ChamferClass;
  /** True where the thread is still undersize after this tap. */
  undersize: boolean;
  /** Full thread this tap leaves in the hole, mm, with its longest chamfer; 0 while undersize. */
  fullThread: number;
  /** False where another tap before it already does the job. */
  needed: boolean;
}

export interface HandPlan {
  taps: HandTap[];
  /** Full thread after the last tap, mm, and whether that is enough. */
  obtainable: number;
  reaches: boolean;
  /** Torque that breaks the tap, N·m. */
  breaks: { low: number; expected: number; high: number };
  /** Longest arm of the wrench from the tap's axis to each hand, mm: for the expected strength, and for the weakest. */
  arm: { expected: number; careful: number };
  /** Turns on and turns back until the chip snaps; null where the tap is simply kept turning. */
  backOff: { on: Range; back: Range } | null;
  /** Blind: pitches cut at depth before the tap comes out and chips go. */
  clearEvery: Range | null;
  /** Turns after which squareness is tried, and after which it can no longer be steered. */
  square: { check: readonly number[]; fixed: number };
  /** Depth of the nose at which the first tap must stop, mm; null in a through hole. */
  stop: number | null;
}

/** A hand set in one planned hole: what it asks of the arms, and how long it takes. */
export interface HandWork extends HandPlan {
  /** Force of each hand at the end of the longest careful arm, N, with a sharp and with a worn tap. */
  effort: { sharp: number; worn: number };
  turns: number;
  seconds: Range;
}

/** Chamfers of a serial set of three, threads. As catalogues list it; common practice. */
const SERIAL: readonly Range[] = [
  { min: 5, max: 6 },
  { min: 3, max: 4 },
  { min: 2, max: 2 },
];

const SAME: readonly ChamferClass[] = ['taper', 'plug', 'bottoming'];

/** Common practice, turns and pitches. */
const BACK_OFF = { on: { min: 0.5, max: 1 }, back: { min: 0.25, max: 0.5 } };
const CLEAR_EVERY: Range = { min: 2, max: 4 };
const SQUARE = { check: [1, 2], fixed: 3 } as const;

function depthOf(job: HandJob, threads: number, clearance: number): number {
  if (job.hole.kind === 'through') return job.fullThread;
  const chain = { pitch: job.thread.pitch, chamferThreads: threads, centre: 0, clearance };
  return Math.min(job.fullThread, obtainableThread(job.hole.shoulder, chain));
}

/** Same diameter: begin with the longest chamfer, go on only while the thread is too short. */
function sameDiameter(job: HandJob): HandTap[] {
  const system = inchSystem(job.thread) ? 'inch' : 'metric';
  // A long chamfer takes chips so thin that they rub in metal which hardens by it.
  const classes = job.material?.workHardens ? SAME.slice(1) : SAME;
  let done = false;
  return classes.map((each, index) => {
    const { threads } = chamferOf(each, system);
    const last = index === classes.length - 1;
    const clearance = last ? HAND_FINISH_CLEARANCE : STOP_CLEARANCE.hand;
    const fullThread = depthOf(job, threads.max, clearance);
    const needed = !done;
    done ||= fullThread >= job.fullThread - 1e-9;
    return { order: index + 1, threads, class: each, undersize: false, fullThread, needed };
  });
}

function serial(job: HandJob): HandTap[] {
  return SERIAL.map((threads, index) => {
    const last = index === SERIAL.length - 1;
    const fullThread = last ? depthOf(job, threads.max, HAND_FINISH_CLEARANCE) : 0;
    return { order: index + 1, threads, undersize: !last, fullThread, needed: true };
  });
}

/**
 * How to tap a hole by hand.
 *
 * @param job lengths mm: full thread above 0 (`full-thread-not-positive`), shoulder beyond it
 *   (`thread-deeper-than-hole`); parallel threads only (`taper-by-hand`). A spiral-point tap has no serial set and
 *   pushes chips ahead: refused in a blind hole (`spiral-point-blind`).
 * @returns lengths mm, torque N·m. A thread that cannot be had in full is an answer, with `reaches` false.
 *   Sources: `common-practice`, strength `from-memory`, depths derived.
 */
export function handTapping(job: HandJob): Outcome<HandPlan> {
  const { thread, fullThread, hole, style, material } = job;
  if (thread.system === 'pipe') return refuse({ code: 'taper-by-hand', field: 'thread' });
  if (!(fullThread > 0)) return refuse({ code: 'full-thread-not-positive', field: 'fullThread' });
  if (hole.kind === 'blind' && !(hole.shoulder > fullThread)) {
    return refuse({ code: 'thread-deeper-than-hole', field: 'shoulder' });
  }
  if (hole.kind === 'blind' && style === 'spiral-point') {
    return refuse({ code: 'spiral-point-blind', field: 'style' });
  }
  const taps = job.set === 'serial' ? serial(job) : sameDiameter(job);
  const used = taps.filter(({ needed }) => needed);
  const obtainable = Math.max(...used.map((tap) => tap.fullThread));
  const { major, minor } = basicDiameters(thread);
  const breaks = breakingBand(webSpread(style, major, minor, referenceFlutes(major)));
  const short = material !== undefined && ['powder', 'needles'].includes(material.chips);
  return answer({
    taps,
    obtainable,
    reaches: obtainable >= fullThread - 1e-9,
    breaks,
    arm: { expected: wrenchArm(breaks.expected), careful: wrenchArm(breaks.low) },
    backOff: style === 'straight-flute' && !short ? BACK_OFF : null,
    clearEvery: hole.kind === 'blind' ? CLEAR_EVERY : null,
    square: SQUARE,
    stop: hole.kind === 'blind' ? hole.shoulder - STOP_CLEARANCE.hand * thread.pitch : null,
  });
}

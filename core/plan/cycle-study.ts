/** Everything about one tapping cycle: speed, feed and its rounding, reach, time, overrun, skeleton. */

import {
  checkFeed,
  cleanSpeeds,
  exactFeed,
  roundedFeed,
  type CleanSpeed,
  type FeedCheck,
  type FeedMode,
  type ProgramUnit,
} from '../cycle/feed';
import { cycleTime, overrun, reachableRpm, type CycleTime } from '../cycle/reach';
import { cycleSkeleton, type SkeletonBlock } from '../cycle/skeleton';
import { depthFactor, rpmFor, startRpm, surfaceSpeeds } from '../cycle/speed';
import {
  toolSpeedFactor,
  type CycleFluid,
  type Substrate,
  type TapCoating,
} from '../cycle/tool-speed';
import { findMaterial } from '../material/table';
import type { Material, MaterialId } from '../material/material';
import { answer, refuse, type Outcome } from '../outcome';
import { tapMajor } from '../tap/major';
import { readThread } from '../thread/read';
import type { Thread } from '../thread/thread';
import type { Range } from '../units';
import type { SpindleDrive } from './types';

export interface CycleQuestion {
  thread: string;
  /** mm; default 1.5 D */
  fullThread?: number | undefined;
  /** Depth of the tap's tip below the face, mm; default: the full thread and three pitches of chamfer. */
  tip?: number | undefined;
  /** Start plane above the face, mm; default three pitches. */
  start?: number | undefined;
  material: MaterialId;
  substrate: Substrate;
  coating: TapCoating;
  fluid: CycleFluid;
  drive: SpindleDrive;
  /** rev/s² */
  acceleration?: number | undefined;
  maxRpm?: number | undefined;
  /** Speed out as a multiple of the speed in, 1 to 4. */
  retract?: number | undefined;
  unit: ProgramUnit;
  mode: FeedMode;
  /** The speed to run, rev/min; default from the range. */
  rpm?: number | undefined;
  /** A feed that stands in a program, in its unit a minute or a turn. */
  feed?: number | undefined;
}

export interface CycleStudy {
  thread: Thread;
  fullThread: number;
  tip: number;
  start: number;
  /** Surface speed, m/min, and spindle speeds that are sensible, rev/min. */
  surface: Range;
  range: Range;
  /** Share of the surface speed that is left in a deep thread. */
  depthFactor: number;
  rpm: number;
  /** False where the reader chose a speed outside the range. */
  sensible: boolean;
  exact: number;
  /** The exact feed as a control usually takes it, and what that rounding does. */
  rounded: FeedCheck;
  /** What the feed from the program does, where one was given. */
  typed: FeedCheck | null;
  clean: CleanSpeed[];
  /** Highest speed the spindle reaches between start plane and tip, rev/min; null without an acceleration. */
  reachable: number | null;
  time: CycleTime;
  /** mm that a spindle not tied to the feed runs on; null where it is, or where nothing is known. */
  overrun: number | null;
  skeleton: SkeletonBlock[];
}

/** Pitches from full thread to the tip, and from face to start plane. Common practice. */
const CHAMFER = 3;
const APPROACH = 3;
const USUAL_DIAMETERS = 1.5;

/** Decimals that controls take in a feed. Common practice; the control's manual rules. */
const FEED_DECIMALS: Record<FeedMode, Record<ProgramUnit, number>> = {
  'per-minute': { mm: 1, in: 2 },
  'per-revolution': { mm: 3, in: 4 },
};

function outOfRange(question: CycleQuestion): string | undefined {
  const limits: [keyof CycleQuestion, number, number][] = [
    ['fullThread', 0, 1000],
    ['tip', 0, 1000],
    ['start', 0, 500],
    ['acceleration', 0, 10_000],
    ['maxRpm', 0, 100_000],
    ['retract', 0.999, 4],
    ['rpm', 0, 100_000],
    ['feed', 0, 1_000_000],
  ];
  return limits.find(([name, min, max]) => {
    const value = question[name] as number | undefined;
    return value !== undefined && !(value > min && value <= max);
  })?.[0];
}

function speeds(question: CycleQuestion, material: Material, major: number, fullThread: number) {
  const tool = toolSpeedFactor(question.substrate, question.coating, question.fluid);
  const most = question.maxRpm ?? Infinity;
  const all = surfaceSpeeds(material, major, fullThread, tool) ?? { min: 0, max: 0 };
  const range = {
    min: Math.min(rpmFor(all.min, major), most),
    max: Math.min(rpmFor(all.max, major), most),
  };
  return { surface: all, range };
}

/**
 * Studies one cycle. Lengths mm, rev/min, rev/s²; feeds in the program's own unit. Refuses with the
 * problems of `readThread`, `no-tapping-speed` where no HSS or carbide tap speed is known for the
 * material, and `cycle-number-out-of-range` at its field. Sources: `speed-charts`, `derived`,
 * `common-practice`, `nist-rs274`.
 */
export function cycleStudy(question: CycleQuestion): Outcome<CycleStudy> {
  const read = readThread(question.thread);
  if (!read.ok) return read;
  const bad = outOfRange(question);
  if (bad !== undefined) return refuse({ code: 'cycle-number-out-of-range', field: bad });
  const material = findMaterial(question.material);
  if (!material?.speed) return refuse({ code: 'no-tapping-speed', field: 'material' });

  const thread = read.value;
  const { pitch } = thread;
  const major = tapMajor(thread);
  const { unit, mode, acceleration, drive } = question;
  const fullThread = question.fullThread ?? USUAL_DIAMETERS * major;
  const tip = question.tip ?? fullThread + CHAMFER * pitch;
  const start = question.start ?? APPROACH * pitch;
  const factor = depthFactor(fullThread, major);
  const { surface, range } = speeds(question, material, major, fullThread);
  const suggested = Math.min(startRpm(material, range.min, range.max), range.max);
  const rpm = question.rpm ?? suggested;
  const exact = exactFeed(pitch, rpm, unit, mode);
  const base = { pitch, rpm, unit, mode, thread: fullThread };
  const programmed = roundedFeed(exact, FEED_DECIMALS[mode][unit]);
  const travel = tip + start;
  const tied = drive === 'synchronous' || drive === 'hand';
  return answer(
    {
      thread,
      fullThread,
      tip,
      start,
      surface,
      range,
      depthFactor: factor,
      rpm,
      sensible: rpm >= range.min * 0.999 && rpm <= range.max * 1.001,
      exact,
      rounded: checkFeed({ ...base, programmed }),
      typed: question.feed === undefined ? null : checkFeed({ ...base, programmed: question.feed }),
      clean: cleanSpeeds(pitch, rpm, unit),
      reachable: acceleration === undefined ? null : reachableRpm(acceleration, pitch, travel),
      time: cycleTime({ travel, pitch, rpm, retract: question.retract ?? 1, acceleration }),
      overrun: tied || acceleration === undefined ? null : overrun(rpm, acceleration, pitch),
      skeleton: cycleSkeleton({ unit, mode, hand: thread.hand, rpm, pitch, tip, start }),
    },
    read.notes,
  );
}

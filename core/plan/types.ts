/** The question a setter asks of one hole, and the whole of the answer. */

import type { Chamfer, ChamferClass } from '../chamfer/chamfer';
import type { ChipCourse } from '../chips/direction';
import type { DrillChoice, DrillSeries } from '../drill/drill';
import type { ThreadLimits } from '../limits/limits';
import type { MaterialId } from '../material/material';
import type { OwnMaterialInput } from '../material/own';
import type { SourceId } from '../sources';
import type { TapReach } from '../tap/reach';
import type { TapProcess, TapStyle } from '../tap/tap';
import type { TapLimit } from '../tap/limits';
import type { Hand, Thread } from '../thread/thread';
import type { Range } from '../units';
import type { HandWork } from '../tap/hand';
import type { AssumptionCode, ReasonCode, RemedyCode, WarningCode } from './codes';

export type SpindleDrive = 'synchronous' | 'floating' | 'reversing-head' | 'hand';

export interface Spindle {
  drive: SpindleDrive;
  /** Torque the spindle can give at tapping speed, N·m. */
  torque?: number;
  /** rev/min */
  maxRpm?: number;
  /** rev/s² */
  acceleration?: number;
}

export type HoleKind =
  | { kind: 'through'; thickness: number; clearBelow?: number; chipsMayFall?: boolean }
  | { kind: 'blind'; limit?: { at: 'shoulder' | 'point'; depth: number } };

/**
 * Something that cuts across the hole. `from`: where it begins along the hole, mm, counted as its depths are: from
 * the face, or with a counterbore from its floor.
 */
export interface Crossing {
  kind: 'bore' | 'slot';
  /** mm */
  width: number;
  from?: number;
  /** Before or after tapping. */
  cut: 'before' | 'after';
}

export type LaterProcess = 'harden' | 'plate' | 'anodise' | 'weld';

export type Duty = 'lifting' | 'pressure' | 'structure' | 'vehicle' | 'medical';

export interface HoleRequest {
  /** As typed. */
  thread: string;
  /** mm of full thread asked for; default 1.5 D, through: the thickness. */
  fullThread?: number;
  hole: HoleKind;
  material: MaterialId;
  spindle?: Spindle;
  /** Included angle of the drill point, degrees; default 118; 180 is flat. */
  drillPoint?: number;
  stockedDrills?: DrillSeries[];
  /** Web (core) diameter of the tap as measured, mm. */
  tapWeb?: number;
  /** Length of an external centre on the tap's nose, mm; default none. */
  externalCentre?: number;
  /** A crossing nobody measured; `crossing` is the fuller answer. */
  interrupted?: boolean;
  /** Slope of the entry face, degrees from square to the hole, 0–60; `flat`: it is spotfaced first. */
  entry?: { angle: number; flat?: boolean };
  crossing?: Crossing;
  /** mm; every depth of the plan counts from its floor. */
  counterbore?: { diameter: number; depth: number };
  /** The hole was cast in. */
  cored?: boolean;
  /** What is done to the part after tapping. */
  later?: LaterProcess[];
  /** What the thread carries, where a rule or a responsible engineer decides. */
  duty?: Duty;
  /** What the tap is made of; default bright HSS. */
  tool?: { substrate: 'hss' | 'hss-e' | 'pm' | 'carbide'; coated?: boolean };
  /** Growth of each surface by the coating, mm. */
  coating?: { thickness: [min: number, max: number] };
  /** A torque measured on this machine in the same thread and material, N·m. */
  measured?: { torque: number; style: TapStyle; chamfer: ChamferClass; worn?: boolean };
  /** What earlier readings on this machine taught; see `learnedScale`. Rules over `measured`. */
  learned?: { factor: number; band: number };
  /** A material the shop entered itself; `material` is then the handbook's that lends the rest. */
  ownMaterial?: Omit<OwnMaterialInput, 'like'>;
}

/** A statement that the words file turns into a sentence: its code, its numbers, where it comes from. */
export interface Coded<Code extends string = string> {
  code: Code;
  numbers: Record<string, number>;
  source: SourceId;
}

export type Reason = Coded<ReasonCode>;
/** `note` says how, `caution` asks for care or an answer, `stop` says do not go on like this. */
export type WarningLevel = 'note' | 'caution' | 'stop';

export interface Warning extends Coded<WarningCode> {
  level: WarningLevel;
}

export type Assumption = Coded<AssumptionCode>;
export type Remedy = Coded<RemedyCode>;

export interface TapChoice {
  process: TapProcess;
  style: TapStyle;
  hand: Hand;
  chamfer: Chamfer;
  verdict: 'best' | 'works' | 'no';
  reasons: Reason[];
  drill: DrillChoice | null;
  /** mm from the face, with the class's longest chamfer; `nominal` with the middle of the class. */
  depth: {
    shoulder: number;
    point: number;
    tip: number;
    fullThread: number;
    /** From the end of the full thread to the shoulder (through: to the tap's end of travel), in pitches. */
    roomInPitches: number;
    nominal: { shoulder: number; tip: number; fullThread: number };
    /** The same depths from the face, where they count from a counterbore's floor or a flat below it. */
    fromFace?: { shoulder: number; point: number; tip: number; fullThread: number };
  };
  /** N·m, sharp tap; all 0 for a thread mill, whose forces are not planned here. */
  torque: { low: number; expected: number; high: number };
  /** N, heaviest tooth, middle of the class; 0 where no chamfer tooth cuts (form tap, thread mill). */
  toothLoad: number;
  /** Torque as a share of the torque that breaks the tap. */
  tapShare: { sharp: number; worn: number };
  /** Sharp torque as a share of the spindle's. */
  spindleShare?: number;
  /** `neededRoom`: mm of free hole below the tap's nose that the chips want. */
  chips: { goes: ChipCourse; fits: boolean | 'check'; neededRoom: number };
  /** Whether a stock tap gets that deep, mm; left out for a thread mill. */
  reach?: TapReach;
}

export interface Cycle {
  rpm: number;
  rpmRange: { min: number; max: number };
  /** mm per revolution: the pitch, exactly. */
  feedPerRev: number;
  /** mm per minute at `rpm`. */
  feedPerMinute: number;
  /** Share of the pitch that a floating or reversing holder is fed at; left out where the spindle holds the feed. */
  feedShare?: Range;
  /** Seconds in and out, with the start plane three pitches above the face. */
  seconds: number;
}

export interface HolePlan {
  thread: Thread;
  limits: ThreadLimits | null;
  drill: DrillChoice | null;
  drills: DrillChoice[];
  taps: TapChoice[];
  remedies: Remedy[];
  cycle: Cycle | null;
  warnings: Warning[];
  assumptions: Assumption[];
  /** Full thread that a crossing takes, mm; left out where nothing is said to cross. */
  lostThread?: number;
  /** Tap limits that suit the class, or its bare thread before a coating; empty where no list speaks. */
  tapLimits?: TapLimit[];
  /** Hole sizes a form tap may be given, mm, where a form tap is best. */
  formWindow?: Range;
  /** How to turn it, where the tap is turned by hand and a hand set will do. */
  hand?: HandWork;
}

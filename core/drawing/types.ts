/** A threaded hole as a drawing calls it out, and a whole part of them. */

import type { DrillChoice } from '../drill/drill';
import type { MaterialId } from '../material/material';
import type { Outcome } from '../outcome';
import type { HolePlan, HoleRequest, TapChoice } from '../plan/types';
import type { ColumnKind } from './columns';

export interface Callout {
  /** Holes of this kind; 1 when the line does not say. */
  count: number;
  /** Canonical designation. */
  thread: string;
  /** Full thread, mm. */
  fullThread?: number;
  through: boolean;
  /** The hole before tapping, mm; `at` says where its depth is measured to. */
  hole?: { diameter?: number; depth?: number; at: 'shoulder' | 'point' };
  /** mm and degrees */
  countersink?: { diameter: number; angle: number };
  /** Thickness of the part at this hole, mm: it stands after THRU. */
  thickness?: number;
  /** How far the depths may go, mm, where the line says more than the usual; planned is the figure drawn. */
  limits?: { fullThread?: LengthLimits; hole?: LengthLimits };
  /** What the line says of the hole in its part, and the plan is asked with. */
  fields?: Partial<HoleRequest>;
  /** False where the line forbids chips below or lets the hole run into another. */
  chipsMayFall?: false;
  /** Bolts, screws, studs, nuts or clearance that the line names although it is tapped. */
  fasteners?: string[];
  /** Every word of the line as it stands there, in exactly one of the three: acted on, */
  read: string[];
  /** known to change nothing, */
  harmless: string[];
  /** or not understood: that lowers the verdict and is printed. */
  notRead: string[];
}

/** Of a depth: at least, and at most, mm. */
export interface LengthLimits {
  least?: number;
  deepest?: number;
}

export interface Shop {
  material: MaterialId;
  spindle?: HoleRequest['spindle'];
  /** Thickness of the part where holes go through, mm. */
  thickness?: number;
  /** Taps and drills the shop has, `{ taps: [{ thread, style, chamfer }], drills: [{ name }] }`: preferred among equals. */
  drawer?: unknown;
  /** What the columns of a pasted table are, where a person says so: see `tableOf`. */
  columns?: readonly (ColumnKind | undefined)[];
  /** What differs for single holes, by their index in `DrawingPlan.holes`. */
  holes?: Readonly<Record<number, Partial<Omit<Shop, 'holes'>>>>;
  /** By number of a line as typed, from 1: whether a person joined it to the line before, or parted them. */
  joins?: Readonly<Record<number, boolean>>;
  /** Numbers of lines, as typed, that name a bolt or a screw and are tapped holes all the same: a person says so. */
  tapped?: readonly number[];
}

export type HoleVerdict = 'ready' | 'caution' | 'impossible' | 'unread';

/** What a line without a threaded hole was recognised as. */
export type Apart = 'clearance' | 'title' | 'note';

export interface PlannedHole {
  /** As typed; lines that belong together stand in one, a line break between them. */
  line: string;
  /** Numbers of its lines as typed, counted from 1. */
  lines: number[];
  /** Tool number of its row, where a table names one. */
  tool?: string;
  /** Kept, shown apart, never on the sheet; its verdict is `unread`. */
  apart?: Apart;
  callout: Outcome<Callout>;
  plan?: Outcome<HolePlan>;
  /** What was asked of the planner for it. */
  request?: HoleRequest;
  verdict: HoleVerdict;
}

/** Something only the designer can settle. `hole`: index among the planned holes. */
export interface Question {
  hole: number;
  code: QuestionCode;
  numbers: Record<string, number>;
}

export interface DrawingPlan {
  holes: PlannedHole[];
  /** Fewest taps that keep every hole at its best or next verdict; `holes` are indexes. */
  taps: { choice: TapChoice; holes: number[]; owned?: boolean }[];
  drills: { drill: DrillChoice; holes: number[]; owned?: boolean }[];
  questions: Question[];
}

export const CALLOUT_PROBLEM_CODES = [
  'empty-line',
  'no-thread',
  'count-absurd',
  /** Two threads on one line. data: first, second. */
  'two-threads',
  /** A bolt, screw, stud, nut or clearance is named and nothing says TAP. data: words. */
  'no-tapped-hole',
  /** An insert whose own hole is not planned here: solid, keyed, pressed in; or in a thread without one. data: thread. */
  'insert-hole-unknown',
] as const;

export const CALLOUT_NOTE_CODES = [
  /** Words that were left over. data: text. */
  'not-read',
  /** No depth and no THRU: taken as through. */
  'through-assumed',
  /** No depth that could be read, but a number that could not: planned as through, to be asked. */
  'depth-unclear',
  /** A depth of an inch thread read as mm, or of a metric one as inches. data: typed. */
  'depth-in-other-unit',
  /** A counterbore or spotface, which the plan leaves to you. data: text. */
  'counterbore-not-planned',
  /** A countersink without its angle. numbers: angle. */
  'countersink-angle-assumed',
  /** The figure drawn cannot be reached, its least by the tolerance can. numbers: drawn, planned. */
  'planned-at-least',
  /** The hole drawn is too shallow for its thread, its deepest by the tolerance is not. numbers: drawn, planned. */
  'planned-at-deepest',
  /** As before, and nothing says how deep it may go. numbers: drawn. */
  'planned-deeper',
  /** The tolerance of a depth. numbers: least, deepest (mm), or one of them. */
  'thread-depth-range',
  'hole-depth-range',
  /** TYP: it stands for every like hole; the count is what the line says. */
  'typical',
] as const;

export const QUESTION_CODES = [
  'hole-too-shallow',
  'thread-deeper-than-hole',
  'thread-longer-than-part',
  'no-room-below',
  'spindle-too-small',
  'too-hard-to-tap',
  'strip-strength',
  'drill-outside-class',
  /** The line holds a number that could not be read, and no depth that could. */
  'depth-not-clear',
  /** The face slopes, and no tap starts there before it is made flat. */
  'face-not-square',
  /** A wire insert goes in: which, and how long? */
  'insert-which',
  /** A bolt, screw, stud, nut or clearance is named on a line that is tapped. */
  'tapped-or-clearance',
  /** A line without a hole names a process or a duty that may touch every hole. numbers: line. */
  'note-touches-all',
  /** The line below gives a depth that belongs to no hole of its own. numbers: line. */
  'depth-on-next-line',
] as const;

export type CalloutProblemCode = (typeof CALLOUT_PROBLEM_CODES)[number];
export type CalloutNoteCode = (typeof CALLOUT_NOTE_CODES)[number];
export type QuestionCode = (typeof QUESTION_CODES)[number];

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
  /** What differs for single holes, by line number counted from 0 among the lines that hold anything. */
  holes?: Readonly<Record<number, Partial<Omit<Shop, 'holes'>>>>;
}

export type HoleVerdict = 'ready' | 'caution' | 'impossible' | 'unread';

export interface PlannedHole {
  line: string;
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
] as const;

export type CalloutProblemCode = (typeof CALLOUT_PROBLEM_CODES)[number];
export type CalloutNoteCode = (typeof CALLOUT_NOTE_CODES)[number];
export type QuestionCode = (typeof QUESTION_CODES)[number];

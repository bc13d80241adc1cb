/**
 * What every calculator is made of. Its form stands at once; what reckons and answers is an engine
 * that loads at the first touch.
 */

import type { ComponentType } from 'preact';
import type { Problem } from '../../core/outcome';
import type { AddressField, Values } from '../state/address';
import type { Unit } from '../words/format';

/** How what is typed in a field is read: decides its reading back, and what a turn of the units does. */
export type Kind = 'thread' | 'length' | 'torque';

/** Fields that a callout in the thread's field fills. */
export interface CalloutPlaces<Name extends string> {
  /** Full thread; of a through hole its thickness where the thread goes all the way. */
  full?: Name;
  /** Depth of the drilled hole, to the shoulder. */
  hole?: Name;
  thickness?: Name;
  /** `blind` or `through`. */
  kind?: Name;
}

/** A calculator's inputs. */
export interface Inputs<Name extends string> {
  fields: readonly AddressField<Name | 'units'>[];
  kinds: Partial<Record<Name, Kind>>;
  callout?: CalloutPlaces<Name>;
}

export type ValuesOf<Name extends string> = Values<Name | 'units'>;

/** Why a field keeps the form from an answer. */
export interface FieldProblem<Name extends string> {
  field: Name;
  problem: Problem;
  /** Nothing was entered yet. */
  missing: boolean;
  /** It lies in how several inputs sit together, which typing one of them may yet mend. */
  whole?: boolean;
}

/** One attempt at an answer. */
export interface Attempt<Name extends string, Answer> {
  answer: Answer | null;
  problems: FieldProblem<Name>[];
  /** Input that makes sense but lies outside what the method can say: not the reader's mistake. */
  refusal?: Problem;
}

export interface ResultProps<Answer> {
  answer: Answer;
  unit: Unit;
  /** Slugs of the lessons that exist. */
  lessons: readonly string[];
}

/** What reckons and answers. */
export interface Engine<Name extends string, Answer> {
  attempt: (values: ValuesOf<Name>, unit: Unit) => Attempt<Name, Answer>;
  Result: ComponentType<ResultProps<Answer>>;
  /** The answer for a screen reader, and its subject for the page's title. */
  spoken: (answer: Answer, unit: Unit) => string;
  subject: (answer: Answer) => string;
  /** What is wrong with a field and what to type instead. */
  complaint: (field: Name, problem: Problem, unit: Unit) => string;
  /** What a callout typed where the thread goes puts into the fields; null where the text is none. */
  fromCallout: (
    text: string,
    unit: Unit,
    places: CalloutPlaces<Name>,
  ) => { thread: string; kept: string; others: Partial<Record<Name, string>> } | null;
  /** How a field was understood, read back under it. */
  reading: (kind: Kind, text: string, unit: Unit) => string;
  /** Which system's chamfer classes go with a thread as typed. */
  system: (text: string) => 'metric' | 'inch';
}

/** The words a calculator brings to the frame that all of them share. */
export interface CalculatorWords<Name extends string> {
  labels: Record<Name, string>;
  /** What the form asks, for those who do not see it. */
  form: string;
  submit: string;
  /** The worked example in a sentence. */
  example: string;
  /** An input that is still missing: what to do, and in two words what is wanted. */
  missing: Partial<Record<Name, { ask: string; need: string }>>;
  /** Complaints that only this calculator has, by problem code. */
  problems?: Record<string, string>;
  /** Refusals of the method, by problem code. */
  refusals?: Record<string, { title: string; text: string }>;
}

export const UNITS_FIELD: AddressField<'units'> = {
  name: 'units',
  initial: '',
  choices: ['mm', 'in'],
};

/** What every calculator is made of. Pure: its state knows no page. */

import type { Note, Problem } from '../../core/outcome';
import type { AddressField, Values } from '../state/address';
import type { Unit } from '../words';

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
  notes: Note[];
  /** Input that makes sense but lies outside what the method can say: not the reader's mistake. */
  refusal?: Problem;
}

/** A calculator's inputs and how they become an answer; its words are in its `messages.ts`. */
export interface Calculator<Name extends string, Answer> {
  fields: readonly AddressField<Name | 'units'>[];
  /** Inputs that are lengths: restated when the reader turns the page to the other unit. */
  lengths: readonly Name[];
  attempt: (values: Values<Name | 'units'>, unit: Unit) => Attempt<Name, Answer>;
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

/** From what was typed to a plan, or to what is still wrong or missing. Pure. */

import { planHole } from '../../core';
import type { Note, Problem } from '../../core/outcome';
import type { HolePlan } from '../../core/plan/types';
import { checkRequest } from '../../core/plan/request';
import type { Unit } from '../words';
import type { InputName, Inputs } from './inputs';
import { withCallout, type Filled } from './fromCallout';
import { readInputs, type FieldProblem, type Reading } from './request';

/** One attempt at an answer: what was read, and the plan when there is one. */
export interface Attempt extends Reading {
  /** The form's values, those of a callout in the thread's field in their places. */
  values: Inputs;
  /** The callout in the thread's field. */
  callout: Filled | null;
  plan: HolePlan | null;
  notes: Note[];
}

/** The core's name for an input, and the form's. */
const FIELD_OF: Record<string, InputName> = {
  thread: 'thread',
  fullThread: 'depth',
  thickness: 'thickness',
  clearBelow: 'below',
  limit: 'limit',
  hole: 'hole',
  material: 'material',
  drive: 'drive',
  maxRpm: 'rpm',
  torque: 'torque',
  acceleration: 'acceleration',
  drillPoint: 'point',
  stockedDrills: 'drills',
  tapWeb: 'web',
  externalCentre: 'centre',
  coating: 'coat-max',
  tool: 'substrate',
  measured: 'measured',
  learned: 'learned',
  name: 'own',
  group: 'material',
  like: 'material',
  kc11: 'kc',
  mc: 'mc',
  hardness: 'hardness',
  entry: 'entry',
  crossing: 'crossing',
  counterbore: 'bore-diameter',
  cored: 'cored',
  later: 'later',
  duty: 'duty',
};

/** Where a complaint goes when the core's field is several inputs. */
const FIELD_OF_CODE: Record<string, InputName> = {
  'crossing-width-out-of-range': 'crossing-width',
  'crossing-from-out-of-range': 'crossing-from',
  'crossing-cut-unknown': 'crossing-cut',
  'counterbore-depth-out-of-range': 'bore-depth',
};

function fieldOf(problem: Problem, values: Inputs): InputName {
  const field = FIELD_OF_CODE[problem.code] ?? FIELD_OF[problem.field ?? 'thread'] ?? 'thread';
  return field === 'depth' && values.hole === 'through' ? 'partial' : field;
}

/** A refusal of the core, laid at the field it speaks of. */
function atFields(problems: readonly Problem[], values: Inputs): FieldProblem[] {
  return problems.map((problem) => ({
    field: fieldOf(problem, values),
    problem,
    missing: false,
    whole: true,
  }));
}

/** Reads the form and plans the hole; what cannot be planned yet is at least checked. */
export function attempt(typed: Inputs, unit: Unit): Attempt {
  const whole = withCallout(typed, unit);
  const { values } = whole;
  const reading = { ...readInputs(values, unit), ...whole };
  const { request, problems } = reading;
  if (!request) {
    const said = problems.map(({ field }) => field);
    const senseless = atFields(checkRequest(reading.draft), values).filter(
      ({ field }) => !said.includes(field),
    );
    return { ...reading, problems: [...problems, ...senseless], plan: null, notes: [] };
  }
  const outcome = planHole(request);
  if (outcome.ok) return { ...reading, plan: outcome.value, notes: outcome.notes };
  const refused = atFields(outcome.problems, values);
  return { ...reading, request: null, problems: refused, plan: null, notes: [] };
}

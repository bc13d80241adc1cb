/** Kept holes, planned anew: nothing but inputs is kept, so that no answer grows old unseen. */

import { planPart } from '../../core';
import type { DrawingPlan } from '../../core/drawing/types';
import type { HolePlan, HoleRequest } from '../../core/plan/types';
import { FIELDS, type Inputs } from '../planner/inputs';
import { attempt } from '../planner/state';
import { spoken } from '../result/AnswerLine';
import { initialValues } from '../state/address';
import { answerSentence } from '../words';
import type { Job, KeptHole } from './shape';

export interface PlannedKept {
  values: Inputs;
  plan: HolePlan | null;
  request: HoleRequest | null;
  /** The answer's sentence in mm; empty where the inputs cannot be planned. */
  text: string;
  /** True where this version of the site answers differently than when the hole was kept. */
  changed: boolean;
}

export function valuesOf({ inputs }: KeptHole): Inputs {
  return { ...initialValues(FIELDS), ...inputs };
}

const unitOf = (values: Inputs) => (values.units === 'in' ? 'in' : 'mm');

export function plannedHole(hole: KeptHole): PlannedKept {
  const values = valuesOf(hole);
  const { plan, request } = attempt(values, unitOf(values));
  const text = plan && request ? spoken(answerSentence(plan, request, 'mm')) : '';
  const changed = hole.answer !== undefined && hole.answer.text !== text;
  return { values, plan, request, text, changed };
}

/** A hole to keep: what was typed and the answer that stood there. */
export function holeToKeep(inputs: Partial<Inputs>, version: string): KeptHole {
  const typed = Object.fromEntries(
    FIELDS.flatMap(({ name, initial }) => {
      const value = inputs[name];
      return value === undefined || value === initial ? [] : [[name, value.slice(0, 500)]];
    }),
  );
  const bare: KeptHole = { inputs: typed };
  const { text } = plannedHole(bare);
  return text === '' ? bare : { ...bare, answer: { version, text: text.slice(0, 2000) } };
}

/** The whole job, its holes sharing tools; holes that cannot be planned are left out of the sheet. */
export function plannedJob(job: Job): DrawingPlan {
  return planPart(
    job.holes.flatMap((hole) => {
      const { request, values } = plannedHole(hole);
      const count = Math.max(1, Math.round(Number(values.holes)) || 1);
      return request ? [{ request, count }] : [];
    }),
  );
}

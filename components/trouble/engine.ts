/** What plans the hole whose numbers shall speak too: loads once a hole is typed. */

import type { ChamferClass } from '../../core/chamfer/chamfer';
import type { ChamferSystem } from '../../core/chamfer/classes';
import { planFacts, type PlanFact } from '../../core/diagnose/plan-facts';
import type { TapStyle } from '../../core/tap/tap';
import { inchSystem } from '../../core/thread/inch-system';
import { readPlain } from '../fields/readNumber';
import type { Inputs } from '../planner/inputs';
import { fieldProblemText } from '../planner/problems';
import { attempt } from '../planner/state';
import type { Unit } from '../words/format';
import type { FinderValues } from './inputs';
import { TROUBLE } from '../words/en/trouble';

export interface OwnPlan {
  /** Empty while the hole cannot be planned. */
  facts: PlanFact[];
  designation: string;
  /** Whose chamfer classes its taps have. */
  chamfers: ChamferSystem;
  /** What keeps it from being planned. */
  problems: { field: string; text: string }[];
}

const RPM = ['rpm', 'rev/min', '1/min'];

export function ownPlan(values: FinderValues, unit: Unit): OwnPlan {
  const { plan, request, problems } = attempt(values as Inputs, unit);
  const ran = values.ran.trim() === '' ? undefined : readPlain(values.ran, RPM);
  const told: { field: string; text: string }[] = problems.map(({ field, problem }) => ({
    field,
    text: fieldProblemText(field, problem, unit),
  }));
  if (ran === null || (ran !== undefined && ran <= 0)) {
    told.push({
      field: 'ran',
      text: TROUBLE.notSpeed,
    });
  }
  if (!plan || !request) return { facts: [], designation: '', chamfers: 'metric', problems: told };
  const used = {
    ...(values.tap === '' ? {} : { style: values.tap as TapStyle }),
    ...(values.chamfer === '' ? {} : { chamfer: values.chamfer as ChamferClass }),
    ...(ran && ran > 0 ? { rpm: ran } : {}),
  };
  return {
    facts: planFacts(plan, request, used),
    designation: plan.thread.designation,
    chamfers: inchSystem(plan.thread) ? 'inch' : 'metric',
    problems: told,
  };
}

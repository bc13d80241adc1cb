/** A whole part kept among the jobs of this device, hole by hole. */

import type { DrawingPlan } from '../../core/drawing/types';
import { requestInputs } from '../address/request';
import { holeToKeep } from '../jobs/planned';
import { keepChange, newJob, openJobs } from '../jobs/store';
import { keptText } from '../jobs/useJobs';
import { browserStore } from '../state/shelf';
import type { Unit } from '../words';
import type { PartInputs } from './inputs';
import { TEXT } from '../words/en/part';

/** Keeps it as a new job; returns what to say of it. */
export function keepPart(
  drawing: DrawingPlan,
  values: PartInputs,
  unit: Unit,
  version: string,
): string {
  const store = browserStore();
  const job = newJob(openJobs(store).contents.jobs, values);
  const holes = drawing.holes.flatMap(({ request, callout }) =>
    request && callout.ok
      ? [holeToKeep(requestInputs(request, unit, callout.value.count), version)]
      : [],
  );
  return keptText(keepChange(store, { kind: 'job', job: { ...job, holes } }), TEXT.kept);
}

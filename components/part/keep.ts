/** A whole part kept among the jobs of this device, hole by hole. */

import type { DrawingPlan } from '../../core/drawing/types';
import { holeToKeep } from '../jobs/planned';
import { inputsOf } from '../jobs/shape';
import { keepChange, newJob, openJobs } from '../jobs/store';
import { jobStore, keptText } from '../jobs/useJobs';
import type { Unit } from '../words';
import { hrefOf } from './hrefOf';
import type { PartInputs } from './inputs';
import { TEXT } from '../words/en/part';

/** Keeps it as a new job; returns what to say of it. */
export function keepPart(
  drawing: DrawingPlan,
  values: PartInputs,
  unit: Unit,
  version: string,
): string {
  const store = jobStore();
  const job = newJob(openJobs(store).contents.jobs, values);
  const holes = drawing.holes.flatMap((_, index) => {
    const href = hrefOf(drawing, index, unit);
    return href === null ? [] : [holeToKeep(inputsOf(href), version)];
  });
  return keptText(keepChange(store, { kind: 'job', job: { ...job, holes } }), TEXT.kept);
}

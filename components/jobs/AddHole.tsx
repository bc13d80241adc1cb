/** A hole that was sent here by the planner's address: kept in a job of choice. */

import { useState } from 'preact/hooks';
import { SelectField } from '../fields/SelectField';
import { TEXT } from '../words/en/jobs';
import { holeToKeep, plannedHole } from './planned';
import { jobTitle } from './JobView';
import { inputsOf } from './shape';
import { newJob } from './store';
import type { JobsState } from './useJobs';

export interface AddHoleProps {
  query: string;
  jobs: JobsState;
  version: string;
  onDone: () => void;
}

export function AddHole({ query, jobs, version, onDone }: AddHoleProps) {
  const kept = jobs.contents.jobs;
  const inputs = inputsOf(query);
  const same = kept.find(
    ({ job, part }) => job === (inputs.job ?? '') && part === (inputs.part ?? ''),
  );
  const [chosen, setChosen] = useState<string | null>(null);
  const id = chosen ?? same?.id ?? 'new';
  const hole = holeToKeep(inputs, version);
  const { text, plan } = plannedHole(hole);
  const keep = () => {
    const job = kept.find((each) => each.id === id) ?? newJob(kept, inputs);
    const seen = kept.some((each) => each.id === id) ? { seen: job.revision } : {};
    const next = { ...job, holes: [...job.holes, hole] };
    if (jobs.change({ kind: 'job', job: next, ...seen })) onDone();
  };
  return (
    <section class="job-add" aria-labelledby="add-heading">
      <h2 id="add-heading">{TEXT.add}</h2>
      <p>
        <strong>{plan?.thread.designation ?? inputs.thread}</strong> {text || TEXT.noAnswer}
      </p>
      <SelectField
        name="add-to"
        label={TEXT.addTo}
        value={id}
        onInput={setChosen}
        choices={[
          { value: 'new', label: TEXT.newJob },
          ...kept.map((job) => ({ value: job.id, label: jobTitle(job) })),
        ]}
      />
      <p class="actions">
        <button type="button" class="button" onClick={keep}>
          {TEXT.keep}
        </button>
      </p>
    </section>
  );
}

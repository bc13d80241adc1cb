/** One job: its head, its holes with today's answer, its sheet. */

import { useMemo, useState } from 'preact/hooks';
import { cardAddress } from '../planner/examples';
import { FIELDS } from '../planner/inputs';
import { EXAMPLE } from '../part/examples';
import { Sheet } from '../part/Sheet';
import { Fold } from '../fields/Fold';
import { TextField } from '../fields/TextField';
import { Sign } from '../result/Sign';
import { writeAddress } from '../state/address';
import type { Unit } from '../words';
import { FIELDS_OF_JOB, TEXT } from '../words/en/jobs';
import { plannedHole, plannedJob } from './planned';
import type { Job } from './shape';

export interface JobViewProps {
  job: Job;
  unit: Unit;
  /** Says whether it was kept. Missing for the example, which cannot be changed. */
  onChange?: ((job: Job) => boolean) | undefined;
  onRemove?: (() => void) | undefined;
  onCopy?: (() => void) | undefined;
  onPrint?: (() => void) | undefined;
  /** Draws the sheet whether it was opened or not. */
  printing: boolean;
  made: string;
}

const HEAD = ['job', 'part', 'operation', 'machine'] as const;

export function jobTitle(job: Job): string {
  return [job.job, job.part].filter((text) => text !== '').join(' · ') || TEXT.unnamed;
}

function Holes({ job, onChange }: Pick<JobViewProps, 'job' | 'onChange'>) {
  const holes = useMemo(() => job.holes.map((hole) => plannedHole(hole)), [job.holes]);
  return (
    <ol class="job-holes">
      {holes.map(({ values, plan, text, changed }, at) => (
        <li key={`${at} ${values.thread}`}>
          <p>
            <strong>
              {values.holes !== '' && `${values.holes} × `}
              {plan?.thread.designation ?? values.thread}
            </strong>{' '}
            {text || TEXT.noAnswer}
          </p>
          {changed && (
            <p class="job-changed">
              <Sign level="amber" /> {TEXT.changed} “{job.holes[at]?.answer?.text}” (
              {job.holes[at]?.answer?.version})
            </p>
          )}
          <p class="actions no-print">
            <a href={`/plan/${writeAddress(values, FIELDS)}`}>{TEXT.openHole}</a>
            <a href={cardAddress(values)}>{TEXT.card}</a>
            {onChange && (
              <button
                type="button"
                class="link-button"
                aria-label={`${TEXT.removeHole}: ${values.thread}`}
                onClick={() =>
                  onChange({ ...job, holes: job.holes.filter((_, index) => index !== at) })
                }
              >
                {TEXT.removeHole}
              </button>
            )}
          </p>
        </li>
      ))}
    </ol>
  );
}

function Remove({ onRemove }: { onRemove: () => void }) {
  const [asking, setAsking] = useState(false);
  if (!asking) {
    return (
      <button type="button" class="link-button" onClick={() => setAsking(true)}>
        {TEXT.remove}
      </button>
    );
  }
  return (
    <span class="job-ask" role="group" aria-label={TEXT.removeAsk}>
      <span>{TEXT.removeAsk}</span>
      <button type="button" class="button plain" onClick={onRemove}>
        {TEXT.removeSure}
      </button>
      <button type="button" class="link-button" onClick={() => setAsking(false)}>
        {TEXT.cancel}
      </button>
    </span>
  );
}

function Head({ job, onChange }: { job: Job; onChange: (job: Job) => boolean }) {
  const [typed, setTyped] = useState<Partial<Record<(typeof HEAD)[number], string>>>({});
  return (
    <div class="row">
      {HEAD.map((name) => (
        <TextField
          key={name}
          name={`${name}-${job.id}`}
          label={FIELDS_OF_JOB[name]}
          value={typed[name] ?? job[name]}
          onInput={(value) => setTyped({ ...typed, [name]: value })}
          onSettle={() => {
            // What could not be kept stays in its field.
            if (onChange({ ...job, ...typed })) setTyped({});
          }}
        />
      ))}
    </div>
  );
}

export function JobView(props: JobViewProps) {
  const { job, unit, onChange, onRemove, onCopy, onPrint, printing, made } = props;
  const drawing = useMemo(() => plannedJob(job), [job]);
  const values = { ...EXAMPLE, ...Object.fromEntries(HEAD.map((name) => [name, job[name]])) };
  const sheet = drawing.holes.length > 0 && (
    <Sheet drawing={drawing} values={values} unit={unit} example={!onChange} made={made} />
  );
  return (
    <section class="job" aria-labelledby={`title-${job.id}`}>
      <div class="no-print">
        <h2 id={`title-${job.id}`}>{jobTitle(job)}</h2>
        {onChange && <Head job={job} onChange={onChange} />}
        <Holes job={job} onChange={onChange} />
        {onChange && (
          <p class="actions">
            <button type="button" class="button plain" onClick={onPrint}>
              {TEXT.print}
            </button>
            <button type="button" class="link-button" onClick={onCopy}>
              {TEXT.copy}
            </button>
            {onRemove && <Remove onRemove={onRemove} />}
          </p>
        )}
      </div>
      {printing ? (
        <div class="job-print">{sheet}</div>
      ) : onChange ? (
        <div class="no-print">
          <Fold summary={TEXT.sheet} drawn="at-opening">
            {sheet}
          </Fold>
        </div>
      ) : (
        sheet
      )}
    </section>
  );
}

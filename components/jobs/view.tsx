/** The jobs kept on this device: to print, to change, to carry off and to bring in. */

import { useEffect, useState } from 'preact/hooks';
import { FileButton } from '../fields/FileButton';
import { Clear } from '../state/Clear';
import { Keeping } from '../state/Keeping';
import { saveFile } from '../state/saveFile';
import { useUnit } from '../state/units';
import { useEngine } from '../planner/useEngine';
import { Notice } from '../result/Notice';
import { TEXT } from '../words/en/jobs';
import { saveJobs } from './saveJobs';
import { EMPTY, readContents, writeContents } from './shape';
import { freshId, newJob } from './store';
import type * as engineModule from './engine';
import { useJobs, type JobsState } from './useJobs';
import { MADE } from '../words/en/made';
import { LANGUAGE } from '../words/en/site';
import { say } from '../words/say';

export interface JobsProps {
  version: string;
  /** Id of the example, which the page holds as plain HTML. */
  example: string;
}

const loadEngine = () => import('./engine');

interface FilesProps {
  jobs: JobsState;
  engine: typeof engineModule | null;
  onPrintAll: () => void;
}

function Files({ jobs, engine, onPrintAll }: FilesProps) {
  const kept = jobs.contents.jobs;
  const open = (text: string) => {
    const read = readContents(text);
    if (read.state === 'damaged') jobs.say(TEXT.notOurs);
    else if (read.state === 'newer') jobs.say(TEXT.newerFile);
    else jobs.change({ kind: 'add', contents: read.contents }, TEXT.opened);
  };
  return (
    <p class="actions no-print">
      {kept.length > 0 && (
        <>
          <button type="button" class="button" onClick={() => saveJobs(jobs.contents)}>
            {TEXT.save}
          </button>
          <button
            type="button"
            class="button plain"
            onClick={() =>
              engine &&
              saveFile('tapped-hole-jobs.csv', engine.jobsCsv(kept), 'text/csv;charset=utf-8')
            }
          >
            {TEXT.saveCsv}
          </button>
          <button type="button" class="button plain" onClick={onPrintAll}>
            {TEXT.printAll}
          </button>
        </>
      )}
      <FileButton
        name="jobs-file"
        label={TEXT.open}
        accept=".json,application/json"
        onText={open}
        onFailure={() => jobs.say(TEXT.notOpened)}
      />
      <button
        type="button"
        class="link-button"
        onClick={() => jobs.change({ kind: 'job', job: newJob(kept) })}
      >
        {TEXT.newEmpty}
      </button>
    </p>
  );
}

/** Nothing where nothing is kept. */
function ClearJobs({ jobs }: { jobs: JobsState }) {
  const { contents } = jobs;
  if (writeContents(contents) === writeContents(EMPTY)) return null;
  return (
    <div class="job-clear no-print">
      <Clear
        label={TEXT.clear}
        ask={TEXT.clearAsk}
        onSave={() => saveJobs(contents)}
        onClear={jobs.clear}
      />
    </div>
  );
}

/** The planner's query this page was sent, until it is kept. */
function useSent(): [query: string, done: () => void] {
  const [query, setQuery] = useState('');
  useEffect(
    () => setQuery(new URLSearchParams(location.search).has('thread') ? location.search : ''),
    [],
  );
  const done = () => {
    history.replaceState(null, '', location.pathname);
    setQuery('');
  };
  return [query, done];
}

/** Prints one job's sheet or all of them: the sheets are drawn first, then the printer is asked. */
function usePrinting(): [printing: string | null, print: (id: string) => void] {
  const [printing, setPrinting] = useState<string | null>(null);
  useEffect(() => {
    if (printing === null) return undefined;
    const after = () => setPrinting(null);
    window.addEventListener('afterprint', after);
    window.print();
    return () => window.removeEventListener('afterprint', after);
  }, [printing]);
  return [printing, setPrinting];
}

export function Jobs({ version, example }: JobsProps) {
  const jobs = useJobs();
  const unit = useUnit();
  const [query, done] = useSent();
  const [printing, print] = usePrinting();
  const [made, setMade] = useState('');
  const kept = jobs.contents.jobs;
  const { engine, failed } = useEngine(loadEngine, kept.length > 0 || query !== '');
  useEffect(() => {
    const day = new Date().toLocaleDateString('sv-SE');
    setMade(say(MADE, { day, site: LANGUAGE.site, version }));
  }, [version]);
  useEffect(() => {
    const found = document.getElementById(example);
    if (found) found.hidden = kept.length > 0 || query !== '';
  }, [example, kept.length, query]);

  return (
    <>
      <Keeping kept={jobs} name="tapped-hole-jobs" onSave={saveJobs} />
      {engine && query !== '' && (
        <engine.AddHole query={query} jobs={jobs} version={version} onDone={done} />
      )}
      <Files jobs={jobs} engine={engine} onPrintAll={() => print('all')} />
      <p role="status" class="job-said no-print">
        {jobs.said}
      </p>
      {jobs.ready && kept.length === 0 && <p class="no-print">{TEXT.none}</p>}
      {failed && !engine && (
        <Notice level="stop" title={TEXT.notLoaded}>
          <p>{TEXT.notLoadedText}</p>
        </Notice>
      )}
      {engine &&
        kept.map((job) => (
          <engine.JobView
            key={job.id}
            job={job}
            unit={unit}
            made={made}
            printing={printing === 'all' || printing === job.id}
            onChange={(next) => jobs.change({ kind: 'job', job: next, seen: job.revision })}
            onRemove={() => jobs.change({ kind: 'remove', id: job.id }, TEXT.removed)}
            onCopy={() =>
              jobs.change({
                kind: 'job',
                job: { ...job, id: freshId(kept.map(({ id }) => id)), revision: 0 },
              })
            }
            onPrint={() => print(job.id)}
          />
        ))}
      <ClearJobs jobs={jobs} />
    </>
  );
}

/** A whole part: paste every hole on the left, read how each stands on the right. */

import { useCallback, useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { ErrorSummary } from '../fields/ErrorSummary';
import { FieldLink } from '../fields/FieldLink';
import { addressText } from '../calculators/addressText';
import { comeTo } from '../result/comeTo';
import { Notice } from '../result/Notice';
import { Announcer } from '../state/Announcer';
import { usePageTitle } from '../state/usePageTitle';
import { EXAMPLE } from './examples';
import { Files } from './Files';
import { initialValues } from '../state/address';
import { PART_FIELDS, readChanges } from './inputs';
import { LABELS, TEXT } from '../words/en/part';
import { problemText } from './problemText';
import { readLines } from './lines';
import { PartForm } from './PartForm';
import { usePart, type PartState } from './usePart';
import { MADE } from '../words/en/made';
import { LANGUAGE } from '../words/en/site';
import { say } from '../words/say';

export interface PartProps {
  version: string;
  /** Id of the worked example, which the page holds as plain HTML. */
  example: string;
}

function Waiting({ part }: { part: PartState }) {
  const problems = part.attempt?.problems ?? [];
  return (
    <div class="waiting">
      <p class="answer quiet">{part.attempt ? TEXT.noAnswer : TEXT.loading}</p>
      {problems.length > 0 && (
        <>
          <h2>{TEXT.waiting}</h2>
          <ul>
            {problems.map((problem) => (
              <li key={problem.field}>
                <FieldLink field={problem.field}>{problemText(problem, part.unit)}</FieldLink>
              </li>
            ))}
          </ul>
        </>
      )}
    </div>
  );
}

/** The day, which only a browser knows. */
function useMade(version: string): string {
  const [made, setMade] = useState('');
  useEffect(() => {
    const day = new Date().toLocaleDateString('sv-SE');
    setMade(say(MADE, { day, site: LANGUAGE.site, version }));
  }, [version]);
  return made;
}

function Answer({ part, version }: { part: PartState; version: string }) {
  const { engine, failed, attempt, values, unit, stale, change, settle, say: onSay } = part;
  const table = Boolean(attempt?.table);
  const made = useMade(version);
  const onSettle = useCallback(() => settle('changes'), [settle]);
  const changing = useMemo(
    () => ({
      changes: readChanges(values.changes),
      said: readLines(values.lines),
      table,
      unit,
      onChange: change,
      onSettle,
      onSay,
    }),
    [values.changes, values.lines, table, unit, change, onSettle, onSay],
  );
  if (failed && !engine) {
    return (
      <Notice level="stop" title={TEXT.notLoaded}>
        <p>{TEXT.notLoadedText}</p>
      </Notice>
    );
  }
  if (!engine || !attempt?.drawing) return <Waiting part={part} />;
  return (
    <div class={stale ? 'part-answer stale' : 'part-answer'} aria-busy={stale}>
      {stale && <p class="part-working">{TEXT.working}</p>}
      <engine.PartResult
        drawing={attempt.drawing}
        values={values}
        unit={unit}
        example={false}
        made={made}
        change={changing}
      />
    </div>
  );
}

/** What stands before the site's name in the page's title. */
function titleOf({ values, refusals, shown, started }: PartState): string {
  const error = refusals > 0 && shown.length > 0 ? TEXT.errorTitle : '';
  return error + (started && values.part !== '' ? `${values.part} · ` : '');
}

export function Part({ version, example }: PartProps) {
  const part = usePart();
  const { engine, attempt, notes, refusals, shown, started, stale, unit } = part;
  const box = useRef<HTMLElement>(null);
  usePageTitle(titleOf(part));
  useEffect(() => {
    const found = document.getElementById(example);
    if (found) found.hidden = started;
  }, [example, started]);

  const send = (event: Event) => {
    event.preventDefault();
    if (part.submit()) comeTo(box.current);
  };
  const drawing = !stale && started ? attempt?.drawing : null;
  return (
    <>
      <form
        class="planner-form"
        noValidate
        autocomplete="off"
        aria-label={TEXT.form}
        onSubmit={send}
        onFocusCapture={part.touch}
      >
        {notes.length > 0 && (
          <Notice level="amber" title={TEXT.address}>
            {notes.map((note) => (
              <p key={note.name}>
                {addressText(note, (LABELS as Record<string, string>)[note.name])}
              </p>
            ))}
          </Notice>
        )}
        {refusals > 0 && shown.length > 0 && (
          <ErrorSummary
            heading={TEXT.errors}
            problems={shown.map((problem) => ({
              field: problem.field,
              text: problemText(problem, unit),
            }))}
            attempt={refusals}
          />
        )}
        <PartForm part={part} />
        <p class="actions">
          <button type="submit" class="button">
            {TEXT.submit}
          </button>
          <button
            type="button"
            class="link-button"
            onClick={() => part.put(started ? initialValues(PART_FIELDS) : EXAMPLE)}
          >
            {started ? TEXT.clear : TEXT.takeExample}
          </button>
        </p>
        <Files part={part} version={version} />
      </form>
      {started && (
        <section class="planner-answer" aria-label={TEXT.answer} tabIndex={-1} ref={box}>
          <Answer part={part} version={version} />
        </section>
      )}
      <Announcer text={drawing && engine ? engine.spoken(engine.answerParts(drawing)) : ''} />
    </>
  );
}

/** The planner: type the hole on the left, read the answer on the right. */

import { useEffect, useMemo, useRef } from 'preact/hooks';
import { ErrorSummary } from '../fields/ErrorSummary';
import { comeTo } from '../result/comeTo';
import { Notice } from '../result/Notice';
import { Announcer } from '../state/Announcer';
import { usePageTitle } from '../state/usePageTitle';
import { IN_ENGLISH } from '../words/elsewhere';
import { cardAddress, EXAMPLE } from './examples';
import { addressNoteText } from './addressNote';
import { TEXT } from '../words/en/planner';
import { MoreFields } from './MoreFields';
import { PartFields } from './PartFields';
import { PlannerForm } from './PlannerForm';
import type { Attempt } from './state';
import { useForm, type Engine, type PlannerState } from './useForm';
import { Waiting } from './Waiting';

export interface PlannerProps {
  /** Slugs of the lessons that exist. */
  lessons: readonly string[];
  /** Where else to go from a blank form. */
  doors?: readonly { href: string; label: string; text: string }[];
  /** Id of the worked example, which the page holds as plain HTML: it goes at the first input. */
  example: string;
}

interface AnswerProps {
  planner: PlannerState;
  lessons: readonly string[];
}

interface PlanProps extends Pick<PlannerState, 'asked'> {
  engine: Engine;
  attempt: Attempt;
  lessons: readonly string[];
}

function Plan({ engine, attempt, asked, lessons }: PlanProps) {
  const { plan, request, notes, thread } = attempt;
  if (!plan || !request) return null;
  const known = thread.ok ? thread.notes.map(({ code }) => code) : [];
  return (
    <engine.PlanResult
      plan={plan}
      request={request}
      notes={notes.filter(({ code }) => !known.includes(code))}
      unit={asked.unit}
      lessons={lessons}
      notRead={attempt.callout?.notRead}
      card={cardAddress(asked.values)}
    />
  );
}

const loadEngine = () => import('./engine');

function Answer({ planner, lessons }: AnswerProps) {
  const { engine, attempt, failed, asked } = planner;
  // Kept as it is while only the form is drawn anew: comparing a whole plan with itself is felt at each key.
  const plan = useMemo(
    () => engine && attempt && <Plan {...{ engine, attempt, asked, lessons }} />,
    [engine, attempt, asked, lessons],
  );
  if (failed && !engine) {
    return (
      <Notice level="stop" title={TEXT.notLoaded}>
        <p>{TEXT.notLoadedText}</p>
      </Notice>
    );
  }
  if (!engine || !attempt?.plan || !attempt.request) return <Waiting planner={planner} />;
  return plan;
}

/** What the blank form offers besides itself. */
function Doors({
  planner,
  doors = NO_DOORS,
}: { planner: PlannerState } & Pick<PlannerProps, 'doors'>) {
  return (
    <>
      <p class="actions">
        <button type="button" class="link-button" onClick={() => planner.put(EXAMPLE)}>
          {TEXT.takeExample}
        </button>
      </p>
      <ul class="doors">
        {doors.map(({ href, label, text }) => (
          <li key={href}>
            <a href={href} hreflang={IN_ENGLISH}>
              {label}
            </a>{' '}
            {text}
          </li>
        ))}
      </ul>
    </>
  );
}

const NO_DOORS: NonNullable<PlannerProps['doors']> = [];

/** What stands before the site's name in the page's title. */
function titleOf({ started, attempt, refusals, shown }: PlannerState): string {
  const error = refusals > 0 && shown.length > 0 ? TEXT.errorTitle : '';
  return error + (started && attempt?.plan ? `${attempt.plan.thread.designation} · ` : '');
}

function useExampleGone(id: string, gone: boolean): void {
  useEffect(() => {
    const example = document.getElementById(id);
    if (example) example.hidden = gone;
  }, [id, gone]);
}

/** The answer for a screen reader; empty while there is none. */
function spokenAnswer({ engine, started, attempt, asked }: PlannerState): string {
  if (!engine || !started || !attempt?.plan || !attempt.request) return '';
  return engine.spoken(engine.answerSentence(attempt.plan, attempt.request, asked.unit));
}

function Form({ planner, doors, onSend }: FormProps) {
  const { notes, refusals, shown, started, form } = planner;
  return (
    <form
      class="planner-form"
      noValidate
      autocomplete="off"
      aria-label={TEXT.form}
      onSubmit={onSend}
      onFocusCapture={planner.touch}
    >
      {notes.length > 0 && (
        <Notice level="amber" title={TEXT.address}>
          {notes.map((note) => (
            <p key={note.name}>{addressNoteText(note)}</p>
          ))}
        </Notice>
      )}
      {refusals > 0 && shown.length > 0 && (
        <ErrorSummary heading={TEXT.errors} problems={shown} attempt={refusals} />
      )}
      <PlannerForm form={form} />
      <p class="actions">
        <button type="submit" class="button">
          {TEXT.submit}
        </button>
        {started && (
          <button type="button" class="link-button" onClick={planner.clear}>
            {TEXT.clear}
          </button>
        )}
      </p>
      <PartFields form={form} />
      <MoreFields form={form} />
      {!started && <Doors planner={planner} {...(doors ? { doors } : {})} />}
    </form>
  );
}

interface FormProps extends Pick<PlannerProps, 'doors'> {
  planner: PlannerState;
  onSend: (event: Event) => void;
}

export function Planner({ lessons, doors, example }: PlannerProps) {
  const planner = useForm(loadEngine);
  const answer = useRef<HTMLElement>(null);
  usePageTitle(titleOf(planner));
  useExampleGone(example, planner.started);

  const send = (event: Event) => {
    event.preventDefault();
    if (planner.submit()) comeTo(answer.current);
  };

  return (
    <>
      <Form planner={planner} onSend={send} {...(doors ? { doors } : {})} />
      {planner.started && (
        <section class="planner-answer" aria-label={TEXT.answer} tabIndex={-1} ref={answer}>
          <Answer planner={planner} lessons={lessons} />
        </section>
      )}
      <Announcer text={spokenAnswer(planner)} />
    </>
  );
}

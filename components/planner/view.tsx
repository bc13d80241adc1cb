/** The planner: type the hole on the left, read the answer on the right. */

import { useEffect, useRef } from 'preact/hooks';
import { ErrorSummary } from '../fields/ErrorSummary';
import { FieldLink } from '../fields/FieldLink';
import { spoken } from '../result/AnswerLine';
import { Notice } from '../result/Notice';
import { writeAddress } from '../state/address';
import { Announcer } from '../state/Announcer';
import { answerSentence } from '../words';
import { EXAMPLE, EXAMPLE_CARD } from './examples';
import { FIELDS, type Inputs } from './inputs';
import { addressNoteText, NEEDED, TEXT } from './messages';
import { MoreFields } from './MoreFields';
import { PlannerForm } from './PlannerForm';
import { PlanResult } from './PlanResult';
import { attempt } from './state';
import { useForm, type PlannerState } from './useForm';

export interface PlannerProps {
  /** Slugs of the lessons that exist. */
  lessons: readonly string[];
  /** Where else to go from a blank form. */
  doors?: readonly { href: string; label: string; text: string }[];
}

interface AnswerProps {
  planner: PlannerState;
  lessons: readonly string[];
}

const cardAddress = (values: Inputs): string => `/plan/card/${writeAddress(values, FIELDS)}`;

function Example({ planner, lessons }: AnswerProps) {
  const { plan, request } = attempt(EXAMPLE, 'mm');
  if (!plan || !request) return null;
  return (
    <div class="example">
      <div class="example-mark">
        <p>
          <strong>{TEXT.example}</strong> {TEXT.exampleText}{' '}
          <span class="needs-script">
            {TEXT.exampleGoes}{' '}
            <button type="button" class="link-button" onClick={() => planner.put(EXAMPLE)}>
              {TEXT.takeExample}
            </button>
          </span>
        </p>
      </div>
      <PlanResult
        plan={plan}
        request={request}
        notes={[]}
        unit={planner.unit}
        lessons={lessons}
        card={cardAddress({ ...EXAMPLE, ...EXAMPLE_CARD })}
      />
    </div>
  );
}

/** The old answer is gone; what is wanted for the next one stands in its place. */
function Waiting({ planner }: { planner: PlannerState }) {
  const { attempt: current, shown } = planner;
  const needed = current.problems.filter(({ missing }) => missing).map(({ field }) => field);
  const wrong = shown.filter(({ field }) => !needed.includes(field));
  return (
    <div class="waiting">
      <p class="answer quiet">{TEXT.blocked}</p>
      {needed.length > 0 && (
        <>
          <h2>{TEXT.waitingFor}</h2>
          <ul>
            {needed.map((field) => (
              <li key={field}>
                <FieldLink field={field}>{NEEDED[field] ?? field}</FieldLink>
              </li>
            ))}
          </ul>
        </>
      )}
      {wrong.length > 0 && (
        <>
          <h2>{TEXT.mend}</h2>
          <ul>
            {wrong.map(({ field, text }) => (
              <li key={field}>
                <FieldLink field={field}>{text}</FieldLink>
              </li>
            ))}
          </ul>
        </>
      )}
    </div>
  );
}

function Answer({ planner, lessons }: AnswerProps) {
  const { started, unit, form } = planner;
  const { plan, request, notes, thread } = planner.attempt;
  if (!started) return <Example planner={planner} lessons={lessons} />;
  if (!plan || !request) return <Waiting planner={planner} />;
  const known = thread.ok ? thread.notes.map(({ code }) => code) : [];
  return (
    <PlanResult
      plan={plan}
      request={request}
      notes={notes.filter(({ code }) => !known.includes(code))}
      unit={unit}
      lessons={lessons}
      card={cardAddress(form.values)}
    />
  );
}

/** The plan in the page's title: a bookmark and a printed sheet say which hole they are. */
function usePageTitle({ started, attempt: { plan }, refusals, shown }: PlannerState): void {
  const site = useRef<string | null>(null);
  useEffect(() => {
    site.current ??= document.title;
    const error = refusals > 0 && shown.length > 0 ? TEXT.errorTitle : '';
    const hole = started && plan ? `${plan.thread.designation} · ` : '';
    document.title = error + hole + site.current;
  });
}

export function Planner({ lessons, doors }: PlannerProps) {
  const planner = useForm();
  const answer = useRef<HTMLElement>(null);
  usePageTitle(planner);
  const { plan, request } = planner.attempt;

  const send = (event: Event) => {
    event.preventDefault();
    const box = answer.current;
    // On a narrow screen the answer is below the form: bring it into view.
    if (planner.submit() && box && box.getBoundingClientRect().top > window.innerHeight * 0.6) {
      box.focus({ preventScroll: true });
      box.scrollIntoView();
    }
  };

  return (
    <div class="planner">
      <form
        class="planner-form"
        noValidate
        autocomplete="off"
        aria-label={TEXT.form}
        onSubmit={send}
      >
        {planner.notes.length > 0 && (
          <Notice level="amber" title={TEXT.address}>
            {planner.notes.map((note) => (
              <p key={note.name}>{addressNoteText(note)}</p>
            ))}
          </Notice>
        )}
        {planner.refusals > 0 && planner.shown.length > 0 && (
          <ErrorSummary heading={TEXT.errors} problems={planner.shown} attempt={planner.refusals} />
        )}
        <PlannerForm form={planner.form} />
        <p class="actions">
          <button type="submit" class="button">
            {TEXT.submit}
          </button>
          {planner.started && (
            <button type="button" class="link-button" onClick={planner.clear}>
              {TEXT.clear}
            </button>
          )}
        </p>
        <MoreFields form={planner.form} />
        {!planner.started && doors && (
          <ul class="doors">
            {doors.map(({ href, label, text }) => (
              <li key={href}>
                <a href={href}>{label}</a> {text}
              </li>
            ))}
          </ul>
        )}
      </form>
      <section class="planner-answer" aria-label="Answer" tabIndex={-1} ref={answer}>
        <Answer planner={planner} lessons={lessons} />
      </section>
      <Announcer
        text={
          planner.started && plan && request
            ? spoken(answerSentence(plan, request, planner.unit))
            : ''
        }
      />
    </div>
  );
}

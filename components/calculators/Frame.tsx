/** The page of a calculator: its form on the left, the answer on the right, an example until it is used. */

import type { ComponentChildren, ComponentType } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { ErrorSummary } from '../fields/ErrorSummary';
import { FieldLink } from '../fields/FieldLink';
import { Notice } from '../result/Notice';
import type { Values } from '../state/address';
import { Announcer } from '../state/Announcer';
import type { Unit } from '../words';
import type { Calculator, CalculatorWords } from './calculator';
import { addressText, TEXT } from './messages';
import type { CalculatorState } from './useCalculator';

export interface ResultProps<Answer> {
  answer: Answer;
  unit: Unit;
  lessons: readonly string[];
}

export interface FrameProps<Name extends string, Answer> {
  calculator: Calculator<Name, Answer>;
  words: CalculatorWords<Name>;
  state: CalculatorState<Name, Answer>;
  example: Values<Name | 'units'>;
  /** The fields. */
  children: ComponentChildren;
  Result: ComponentType<ResultProps<Answer>>;
  /** Slugs of the lessons that exist. */
  lessons: readonly string[];
  /** The answer for a screen reader, and its subject for the page's title. */
  spoken: (answer: Answer, unit: Unit) => string;
  subject: (answer: Answer) => string;
}

function Example<Name extends string, Answer>(props: FrameProps<Name, Answer>) {
  const { calculator, words, state, example, Result, lessons } = props;
  const { answer } = calculator.attempt(example, 'mm');
  if (answer === null) return null;
  return (
    <div class="example">
      <div class="example-mark">
        <p>
          <strong>{TEXT.example}</strong> {words.example} {TEXT.exampleEnd}{' '}
          <button
            type="button"
            class="link-button needs-script"
            onClick={() => state.put({ ...example, units: 'mm' })}
          >
            {TEXT.takeExample}
          </button>
        </p>
      </div>
      <Result answer={answer} unit={state.unit} lessons={lessons} />
    </div>
  );
}

/** The old answer is gone; what is wanted for the next one stands in its place. */
function Waiting<Name extends string, Answer>({ words, state }: FrameProps<Name, Answer>) {
  const { attempt, shown } = state;
  const needed = attempt.problems.filter(({ missing }) => missing).map(({ field }) => field);
  const wrong = shown.filter(({ field }) => !needed.includes(field));
  return (
    <div class="waiting">
      <p class="answer quiet">{TEXT.noAnswer}</p>
      {needed.length > 0 && (
        <>
          <h2>{TEXT.waitingFor}</h2>
          <ul>
            {needed.map((field) => (
              <li key={field}>
                <FieldLink field={field}>
                  {words.missing[field]?.need ?? words.labels[field]}
                </FieldLink>
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

function Answer<Name extends string, Answered>(props: FrameProps<Name, Answered>) {
  const { state, words, Result, lessons } = props;
  const { answer, refusal } = state.attempt;
  if (!state.started) return <Example {...props} />;
  if (refusal) {
    const said = words.refusals?.[refusal.code];
    return (
      <Notice level="stop" title={said?.title ?? refusal.code}>
        <p>{said?.text}</p>
      </Notice>
    );
  }
  if (answer === null) return <Waiting {...props} />;
  return <Result answer={answer} unit={state.unit} lessons={lessons} />;
}

/** What was worked out, in the page's title: a bookmark and a printed sheet say which hole they are. */
function usePageTitle<Name extends string, Answer>(props: FrameProps<Name, Answer>): void {
  const { state, subject } = props;
  const site = useRef<string | null>(null);
  useEffect(() => {
    site.current ??= document.title;
    const { answer } = state.attempt;
    const error = state.refusals > 0 && state.shown.length > 0 ? TEXT.errorTitle : '';
    const about = state.started && answer !== null ? `${subject(answer)} · ` : '';
    document.title = error + about + site.current;
  });
}

export function Frame<Name extends string, Answered>(props: FrameProps<Name, Answered>) {
  const { words, state, spoken } = props;
  const box = useRef<HTMLElement>(null);
  usePageTitle(props);
  const { answer } = state.attempt;

  const send = (event: Event) => {
    event.preventDefault();
    const found = box.current;
    // On a narrow screen the answer is below the form: bring it into view.
    if (state.submit() && found && found.getBoundingClientRect().top > window.innerHeight * 0.6) {
      found.focus({ preventScroll: true });
      found.scrollIntoView();
    }
  };

  return (
    <div class="planner">
      <form
        class="planner-form"
        noValidate
        autocomplete="off"
        aria-label={words.form}
        onSubmit={send}
      >
        {state.notes.length > 0 && (
          <Notice level="amber" title={TEXT.address}>
            {state.notes.map((note) => (
              <p key={note.name}>
                {addressText(note, (words.labels as Record<string, string>)[note.name])}
              </p>
            ))}
          </Notice>
        )}
        {state.refusals > 0 && state.shown.length > 0 && (
          <ErrorSummary heading={TEXT.errors} problems={state.shown} attempt={state.refusals} />
        )}
        {props.children}
        <p class="actions">
          <button type="submit" class="button">
            {words.submit}
          </button>
          {state.started && (
            <button type="button" class="link-button" onClick={state.clear}>
              {TEXT.clear}
            </button>
          )}
        </p>
      </form>
      <section class="planner-answer" aria-label={TEXT.answer} tabIndex={-1} ref={box}>
        <Answer {...props} />
      </section>
      <Announcer text={state.started && answer !== null ? spoken(answer, state.unit) : ''} />
    </div>
  );
}

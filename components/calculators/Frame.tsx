/** The live part of a calculator's page: its form, and the answer in the place of the worked example. */

import type { ComponentChildren } from 'preact';
import { useEffect, useMemo, useRef } from 'preact/hooks';
import { ErrorSummary } from '../fields/ErrorSummary';
import { FieldLink } from '../fields/FieldLink';
import { comeTo } from '../result/comeTo';
import { Notice } from '../result/Notice';
import { Announcer } from '../state/Announcer';
import { usePageTitle } from '../state/usePageTitle';
import type { CalculatorWords, ValuesOf } from './calculator';
import { addressText } from './addressText';
import { TEXT } from '../words/en/calculators/shared';
import type { CalculatorState } from './useCalculator';

export interface FrameProps<Name extends string, Answer> {
  words: CalculatorWords<Name>;
  state: CalculatorState<Name, Answer>;
  example: ValuesOf<Name>;
  /** Slugs of the lessons that exist. */
  lessons: readonly string[];
  /** The fields. */
  children: ComponentChildren;
}

/** Props of every calculator. */
export interface CalculatorProps {
  /** Slugs of the lessons that exist. */
  lessons: readonly string[];
}

/** Id of the worked example, which the page holds as plain HTML: it goes at the first input. */
export const EXAMPLE_ID = 'example';

interface PartProps<Name extends string, Answer> {
  words: CalculatorWords<Name>;
  state: CalculatorState<Name, Answer>;
}

function LinkList<Name extends string>(props: {
  heading: string;
  items: readonly { field: Name; text: string }[];
}) {
  if (props.items.length === 0) return null;
  return (
    <>
      <h2>{props.heading}</h2>
      <ul>
        {props.items.map(({ field, text }) => (
          <li key={field}>
            <FieldLink field={field}>{text}</FieldLink>
          </li>
        ))}
      </ul>
    </>
  );
}

/** The old answer is gone; what is wanted for the next one stands in its place. */
function Waiting<Name extends string, Answer>({ words, state }: PartProps<Name, Answer>) {
  const { attempt, shown } = state;
  const needed = (attempt?.problems ?? []).filter(({ missing }) => missing);
  const names = needed.map(({ field }) => field);
  return (
    <div class="waiting">
      <p class="answer quiet">{attempt ? TEXT.noAnswer : TEXT.loading}</p>
      <LinkList
        heading={TEXT.waitingFor}
        items={names.map((field) => ({
          field,
          text: words.missing[field]?.need ?? words.labels[field],
        }))}
      />
      <LinkList heading={TEXT.mend} items={shown.filter(({ field }) => !names.includes(field))} />
    </div>
  );
}

function Answer<Name extends string, Answered>(props: FrameProps<Name, Answered>) {
  const { state, words, lessons } = props;
  const { engine, attempt, failed, unit } = state;
  // Kept as it is while only the form is drawn anew.
  const answered = useMemo(
    () =>
      engine && attempt && attempt.answer !== null ? (
        <engine.Result answer={attempt.answer} unit={unit} lessons={lessons} />
      ) : null,
    [engine, attempt, unit, lessons],
  );
  if (failed && !engine) {
    return (
      <Notice level="stop" title={TEXT.notLoaded}>
        <p>{TEXT.notLoadedText}</p>
      </Notice>
    );
  }
  if (attempt?.refusal) {
    const said = words.refusals?.[attempt.refusal.code];
    return (
      <Notice level="stop" title={said?.title ?? attempt.refusal.code}>
        <p>{said?.text}</p>
      </Notice>
    );
  }
  return answered ?? <Waiting words={words} state={state} />;
}

/** What stands before the site's name in the page's title. */
function titleOf<Name extends string, Answer>(state: CalculatorState<Name, Answer>): string {
  const { engine, attempt, started, refusals, shown } = state;
  const error = refusals > 0 && shown.length > 0 ? TEXT.errorTitle : '';
  const answer = started ? (attempt?.answer ?? null) : null;
  return error + (engine && answer !== null ? `${engine.subject(answer)} · ` : '');
}

/** Takes the worked example out of the page, not only out of sight: an answer may use the same ids. */
function useExampleGone(gone: boolean): void {
  useEffect(() => {
    const example = document.getElementById(EXAMPLE_ID);
    if (!example || !gone) return undefined;
    const kept = document.createDocumentFragment();
    kept.append(...example.childNodes);
    example.hidden = true;
    return () => {
      example.append(kept);
      example.hidden = false;
    };
  }, [gone]);
}

/** The answer for a screen reader; empty while there is none. */
function spokenAnswer<Name extends string, Answer>(state: CalculatorState<Name, Answer>): string {
  const { engine, attempt, started, unit } = state;
  if (!engine || !started || !attempt || attempt.answer === null) return '';
  return engine.spoken(attempt.answer, unit);
}

export function Frame<Name extends string, Answered>(props: FrameProps<Name, Answered>) {
  const { words, state, example } = props;
  const { notes, refusals, shown, started } = state;
  const box = useRef<HTMLElement>(null);
  usePageTitle(titleOf(state));
  useExampleGone(started);

  const send = (event: Event) => {
    event.preventDefault();
    if (state.submit()) comeTo(box.current);
  };

  return (
    <>
      <form
        class="planner-form"
        noValidate
        autocomplete="off"
        aria-label={words.form}
        onSubmit={send}
        onFocusCapture={state.touch}
      >
        {notes.length > 0 && (
          <Notice level="amber" title={TEXT.address}>
            {notes.map((note) => (
              <p key={note.name}>
                {addressText(note, (words.labels as Record<string, string>)[note.name])}
              </p>
            ))}
          </Notice>
        )}
        {refusals > 0 && shown.length > 0 && (
          <ErrorSummary heading={TEXT.errors} problems={shown} attempt={refusals} />
        )}
        {props.children}
        <p class="actions">
          <button type="submit" class="button">
            {words.submit}
          </button>
          <button
            type="button"
            class="link-button"
            onClick={() => (started ? state.clear() : state.put(example))}
          >
            {started ? TEXT.clear : TEXT.takeExample}
          </button>
        </p>
      </form>
      {started && (
        <section class="planner-answer" aria-label={TEXT.answer} tabIndex={-1} ref={box}>
          <Answer {...props} />
        </section>
      )}
      <Announcer text={spokenAnswer(state)} />
    </>
  );
}

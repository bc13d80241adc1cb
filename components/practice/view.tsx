/** A row of exercises: what to practise, one at a time, and how it went. */

import { useMemo, useState } from 'preact/hooks';
import { EXERCISE_KINDS, LEVELS } from '../../core/practice/types';
import { ChoiceField } from '../fields/ChoiceField';
import { Fold } from '../fields/Fold';
import { SelectField } from '../fields/SelectField';
import { TextField } from '../fields/TextField';
import { useEngine } from '../planner/useEngine';
import { useAddress } from '../state/useAddress';
import { KIND_WORDS, PRACTICE } from '../words/en/practice';
import { fill } from '../words/template';
import { useExampleGone } from './useExampleGone';
import { PRACTICE_FIELDS, practiceHref, readAt, readKinds, readLevel, readSeed } from './inputs';

/** Seeds for a fresh row: short enough to say across a room. */
const FRESH = 9999;

const loadEngine = () => import('./engine');

/** `example`: id of the exercise that the page holds as plain HTML until this one is made. */
export function Practice({ example }: { example: string }) {
  const { values, read, set, settle } = useAddress(PRACTICE_FIELDS, () => {});
  const { engine, failed } = useEngine(loadEngine, read);
  useExampleGone(example, engine !== null);
  const [answers, setAnswers] = useState<boolean[]>([]);
  const [moved, setMoved] = useState<'harder' | 'easier' | null>(null);
  const seed = readSeed(values.seed);
  const kinds = readKinds(values.kinds);
  const level = readLevel(values.level);
  const at = readAt(values.at);
  const wanted = kinds[(at - 1) % kinds.length]!;
  const number = (seed ?? 1) * 64 + at - 1;
  const exercise = useMemo(
    () => engine?.makeExercise(wanted, number, level),
    [engine, wanted, number, level],
  );
  // The first answer to an exercise counts; what follows is learning.
  const answered = answers.length >= at;
  const start = (changes: Partial<typeof values>) => {
    setAnswers([]);
    setMoved(null);
    set({ at: '1', ...changes });
  };
  const next = () => {
    if (!engine) return;
    const after = engine.levelAfter(level, answers);
    setMoved(after > level ? 'harder' : after < level ? 'easier' : null);
    set({ at: String(at + 1), level: String(after) });
    settle();
  };
  return (
    <div class="practice">
      <form class="practice-row needs-script" onSubmit={(event) => event.preventDefault()}>
        <SelectField
          name="kinds"
          label={PRACTICE.kind}
          value={kinds.length === EXERCISE_KINDS.length ? '' : values.kinds}
          empty={PRACTICE.all}
          choices={EXERCISE_KINDS.map((kind) => ({ value: kind, label: KIND_WORDS[kind].name }))}
          onInput={(chosen) => start({ kinds: chosen })}
        />
        <ChoiceField
          name="level"
          label={PRACTICE.level}
          value={String(level)}
          choices={LEVELS.map((each) => ({ value: String(each), label: PRACTICE.levels[each] }))}
          onInput={(chosen) => start({ level: chosen })}
        />
        <TextField
          name="seed"
          label={PRACTICE.seed}
          hint={PRACTICE.seedHint}
          value={values.seed}
          digits
          problem={seed === null ? PRACTICE.seedBad : undefined}
          onInput={(typed) => start({ seed: typed })}
          onSettle={settle}
        />
      </form>
      {failed && !engine && <p role="alert">{PRACTICE.failed}</p>}
      {engine && exercise && (
        <section class="practice-now" aria-labelledby="exercise-heading">
          <h2 id="exercise-heading">{KIND_WORDS[exercise.kind].name}</h2>
          <p class="quiet">{fill(PRACTICE.place, { at }, 'mm')}</p>
          {moved && <p role="status">{PRACTICE[moved]}</p>}
          <engine.Asked
            key={JSON.stringify([exercise.kind, exercise.seed, level])}
            exercise={exercise}
            onAnswered={(right) => {
              if (answers.length < at) setAnswers([...answers, right]);
            }}
          />
          <Fold summary={PRACTICE.hint} key={`hint-${at}`}>
            <p>{KIND_WORDS[exercise.kind].hint}</p>
          </Fold>
          <p class="actions needs-script">
            <button type="button" class={answered ? 'button' : 'button plain'} onClick={next}>
              {PRACTICE.next}
            </button>
            <button
              type="button"
              class="button plain"
              onClick={() => start({ seed: String(1 + Math.floor(Math.random() * FRESH)) })}
            >
              {PRACTICE.fresh}
            </button>
          </p>
          <p role="status">
            {answers.length > 0 &&
              fill(
                PRACTICE.score,
                { right: answers.filter(Boolean).length, done: answers.length },
                'mm',
              )}
          </p>
        </section>
      )}
      <p>
        <a href={practiceHref('/practice/sheet/', values)}>{PRACTICE.sheet}</a> ·{' '}
        <a href={practiceHref('/practice/sheet/', { ...values, key: 'yes' })}>
          {PRACTICE.sheetKey}
        </a>
      </p>
    </div>
  );
}

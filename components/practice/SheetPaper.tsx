/** A row of exercises on paper: black on white, with room to write, and the answers on a sheet of their own. */

import { makeSheet } from '../../core/practice/make';
import type { Exercise } from '../../core/practice/types';
import { length, type Unit } from '../words';
import { KIND_WORDS, PRACTICE, SHEET } from '../words/en/practice';
import { fill } from '../words/template';
import { readCount, readKinds, readLevel, readSeed, type PracticeInputs } from './inputs';
import { saidExercise, type SaidExercise } from './said';

const LETTERS = 'ABCDEFGH';

function Question({ exercise, said }: { exercise: Exercise; said: SaidExercise }) {
  return (
    <li>
      <p>
        <strong>{KIND_WORDS[exercise.kind].name.replace(/([^?])$/, '$1.')}</strong> {said.question}
      </p>
      {said.type === 'choice' && (
        <ul class="sheet-options">
          {said.options.map(({ text }, index) => (
            <li key={text}>
              <span class="sheet-box" aria-hidden="true" /> {LETTERS[index]}) {text}
            </li>
          ))}
        </ul>
      )}
      {said.type === 'order' && (
        <ul class="sheet-options">
          {said.start.map((step, index) => (
            <li key={step}>
              <span class="sheet-box" aria-hidden="true" /> {LETTERS[index]}){' '}
              {said.steps[step]?.text}
            </li>
          ))}
        </ul>
      )}
      {said.type === 'length' && <p class="sheet-line">{SHEET.answer}:</p>}
    </li>
  );
}

/** The right answer, as it stands on the sheet. */
export function answerOf(said: SaidExercise, unit: Unit): { answer: string; working: string } {
  if (said.type === 'length') {
    return {
      answer: `${length(said.answer, unit)} (${length(said.answer, unit === 'mm' ? 'in' : 'mm')})`,
      working: said.working,
    };
  }
  if (said.type === 'order') {
    const order = said.steps.map((_, step) => LETTERS[said.start.indexOf(step)]);
    return { answer: order.join(' '), working: said.steps.map(({ why }) => why).join(' ') };
  }
  const at = said.options.findIndex(({ right }) => right);
  const option = said.options[at];
  return { answer: `${LETTERS[at]}) ${option?.text}`, working: option?.why ?? '' };
}

function Answers({ list }: { list: { exercise: Exercise; said: SaidExercise }[] }) {
  return (
    <section class="sheet-key" aria-labelledby="key-heading">
      <h2 id="key-heading">{SHEET.key}</h2>
      <ol>
        {list.map(({ exercise, said }) => {
          const unit = exercise.given['system'] === 'unified' ? 'in' : 'mm';
          const { answer, working } = answerOf(said, unit);
          return (
            <li key={exercise.seed}>
              <strong>{answer}</strong> {working}
            </li>
          );
        })}
      </ol>
    </section>
  );
}

/** Plain: what a sheet holds, for the server and the browser alike. */
export function SheetPaper({ values }: { values: PracticeInputs }) {
  const seed = readSeed(values.seed) ?? 1;
  const level = readLevel(values.level);
  const list = makeSheet(seed, readKinds(values.kinds), readCount(values.count), level).map(
    (exercise) => ({ exercise, said: saidExercise(exercise) }),
  );
  return (
    <article class="sheet">
      <header class="sheet-top">
        <p>{fill(SHEET.row, { seed, level: PRACTICE.levels[level] }, 'mm')}</p>
        <p class="sheet-blanks">
          {SHEET.name}: <span class="sheet-blank" /> {SHEET.date}: <span class="sheet-blank" />
        </p>
      </header>
      <ol class="sheet-list">
        {list.map(({ exercise, said }) => (
          <Question key={exercise.seed} exercise={exercise} said={said} />
        ))}
      </ol>
      {values.key === 'yes' && <Answers list={list} />}
      <p class="quiet">{SHEET.caution}</p>
    </article>
  );
}

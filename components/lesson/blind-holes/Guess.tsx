import { useState } from 'preact/hooks';
import { Complaint } from '../../fields/Complaint';
import { readLength } from '../../fields/readLength';
import type { Unit } from '../../words';
import { EXPLORE } from '../../words/en/explore';
import { LESSON } from '../../words/en/lesson';
import { Answer } from '../Verdict';

interface Props {
  name: string;
  question: string;
  /** For whoever would rather read it, or has no script. */
  answer: string;
  unit: Unit;
  onGuess: (mm: number) => void;
}

/** Asks for a depth before the controls come. */
export function Guess({ name, question, answer, unit, onGuess }: Props) {
  const [typed, setTyped] = useState('');
  const [wrong, setWrong] = useState(false);
  return (
    <form
      class="check guess"
      novalidate
      onSubmit={(event) => {
        event.preventDefault();
        const mm = readLength(typed, unit)?.mm;
        if (mm !== undefined && mm > 0) onGuess(mm);
        else setWrong(true);
      }}
    >
      <p class="question" id={`${name}-question`}>
        {question}
      </p>
      <div class={`field number-field needs-script${wrong ? ' wrong' : ''}`}>
        <label for={`${name}-guess`}>
          {EXPLORE.guessField}
          <span class="unseen">, {unit}</span>
        </label>
        <p class="hint" id={`${name}-guess-hint`}>
          {EXPLORE.guessFirst}
        </p>
        <div class="box">
          <input
            id={`${name}-guess`}
            type="text"
            autocomplete="off"
            spellcheck={false}
            value={typed}
            aria-invalid={wrong ? 'true' : undefined}
            aria-describedby={`${name}-question ${name}-guess-hint${wrong ? ` ${name}-problem` : ''}`}
            onInput={(event) => {
              setTyped(event.currentTarget.value);
              setWrong(false);
            }}
          />
          <span class="unit" aria-hidden="true">
            {unit}
          </span>
        </div>
        {wrong && <Complaint id={`${name}-problem`} text={EXPLORE.guessRange} />}
      </div>
      <div class="check-row">
        <button class="button needs-script">{LESSON.guess}</button>
        <Answer>
          <p>{answer}</p>
        </Answer>
      </div>
    </form>
  );
}

import { useState } from 'preact/hooks';
import { Complaint } from '../fields/Complaint';
import { LESSON } from '../words/en/lesson';
import { Answer } from './Verdict';

interface Props {
  name: string;
  question: string;
  /** For whoever would rather read it, or has no script. */
  answer: string;
  label: string;
  /** Behind the number, and said in the label. */
  unit: string;
  /** The number meant; null where there is none, or none that could be. */
  read: (text: string) => number | null;
  /** What to type instead. */
  complaint: string;
  onGuess: (value: number) => void;
}

/** Asks for a number before the controls come. */
export function Guess(props: Props) {
  const { name, question, answer, label, unit, read, complaint, onGuess } = props;
  const [typed, setTyped] = useState('');
  const [wrong, setWrong] = useState(false);
  return (
    <form
      class="check guess"
      novalidate
      onSubmit={(event) => {
        event.preventDefault();
        const meant = read(typed);
        if (meant !== null && meant > 0) onGuess(meant);
        else setWrong(true);
      }}
    >
      <p class="question" id={`${name}-question`}>
        {question}
      </p>
      <div class={`field number-field needs-script${wrong ? ' wrong' : ''}`}>
        <label for={`${name}-guess`}>
          {label}
          <span class="unseen">, {unit}</span>
        </label>
        <p class="hint" id={`${name}-guess-hint`}>
          {LESSON.guessFirst}
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
        {wrong && <Complaint id={`${name}-problem`} text={complaint} />}
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

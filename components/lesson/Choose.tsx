import { useState } from 'preact/hooks';
import { LESSON } from '../words/en/lesson';
import { useLive } from './live';
import { Answer, Verdict, type Said } from './Verdict';

export interface Option {
  text: string;
  right?: boolean;
  /** Why it is right, or what is wrong with it. */
  why: string;
}

export interface ChooseProps {
  /** Unique on the page. */
  name: string;
  question: string;
  options: Option[];
  /** A guess before the teaching: nobody is told “not that”. */
  guess?: boolean;
  /** Hears of every answer that is given. */
  onAnswered?: (right: boolean) => void;
}

/** One question, one right option, a reason for each. */
export function Choose({ name, question, options, guess = false, onAnswered }: ChooseProps) {
  const live = useLive();
  const [picked, setPicked] = useState<number | null>(null);
  const [said, setSaid] = useState<Said | null>(null);
  const answer = options.find(({ right }) => right);

  const check = (event: Event) => {
    event.preventDefault();
    const option = picked === null ? undefined : options[picked];
    if (!option) return setSaid({ right: false, opening: LESSON.chooseFirst, text: '' });
    const opening = guess && !option.right ? `${LESSON.guessed} “${option.text}”.` : undefined;
    setSaid({ right: option.right === true, text: option.why, ...(opening && { opening }) });
    onAnswered?.(option.right === true);
  };

  return (
    <form class={guess ? 'check guess' : 'check'} onSubmit={check} novalidate>
      <fieldset>
        <legend>{question}</legend>
        {options.map(({ text }, index) => (
          <label class="option" key={text}>
            <input
              type="radio"
              name={name}
              value={index}
              checked={picked === index}
              onChange={() => {
                setPicked(index);
                setSaid(null);
              }}
            />
            <span>{text}</span>
          </label>
        ))}
      </fieldset>
      <Verdict said={said} />
      <div class="check-row">
        {live && <button class="button">{guess ? LESSON.guess : LESSON.check}</button>}
        <Answer>
          <p>
            <strong>{answer?.text}</strong>
          </p>
          {options.map(({ text, why, right }) => (
            <p key={text}>{right ? why : `“${text}”: ${why}`}</p>
          ))}
        </Answer>
      </div>
    </form>
  );
}

import { useState } from 'preact/hooks';
import { useUnit } from '../state/units';
import type { Unit } from '../words';
import { LESSON } from '../words/en/lesson';
import { decimals } from '../words/format';
import { fill } from '../words/template';
import { useLive } from './live';
import { readAnswer, writeLength, type Measure } from './number';
import { Answer, Verdict, type Said } from './Verdict';

/** A wrong number that has a known cause. */
export interface Slip {
  value: number;
  why: string;
}

export interface CalculateProps {
  name: string;
  question: string;
  measure: Measure;
  /** mm for a length. */
  answer: number;
  tolerance: number;
  /** What a bare number counts: `threads`. Empty for a length. */
  counts?: string;
  slips: Slip[];
  working: string;
  /** Hears of every answer that is given. */
  onAnswered?: (right: boolean) => void;
}

const near = (given: number, value: number, tolerance: number) =>
  Math.abs(given - value) <= tolerance + 1e-9;

/** What to say to a typed answer. */
export function judgeAnswer(typed: string, props: CalculateProps, unit: Unit): Said {
  const given = readAnswer(typed, props.measure, unit);
  if (given === null) return { right: false, opening: LESSON.typeNumber, text: '' };
  if (near(given, props.answer, props.tolerance)) return { right: true, text: props.working };
  const slip = props.slips.find(({ value }) => near(given, value, props.tolerance));
  return { right: false, text: slip?.why ?? LESSON.wrongNumber };
}

function shown(value: number, props: CalculateProps, unit: Unit): string {
  const { measure, counts, tolerance } = props;
  return measure === 'length'
    ? writeLength(value, tolerance, unit)
    : `${decimals(value, 2)} ${counts ?? ''}`.trim();
}

/** A question answered with a number, in either unit and with either decimal mark. */
export function Calculate(props: CalculateProps) {
  const live = useLive();
  const [typed, setTyped] = useState('');
  const [said, setSaid] = useState<Said | null>(null);
  const unit = useUnit();
  const suffix = props.measure === 'length' ? unit : (props.counts ?? '');
  const hint = fill(LESSON.within, { tolerance: shown(props.tolerance, props, unit) }, unit);

  return (
    <form
      class="check"
      novalidate
      onSubmit={(event) => {
        event.preventDefault();
        const judged = judgeAnswer(typed, props, unit);
        setSaid(judged);
        if (judged.opening !== LESSON.typeNumber) props.onAnswered?.(judged.right);
      }}
    >
      <p class="question" id={`${props.name}-question`}>
        {props.question}
      </p>
      <div class="field number-field">
        <label for={`${props.name}-field`}>
          {LESSON.yourAnswer}
          {suffix && `, ${suffix}`}
        </label>
        <p class="hint" id={`${props.name}-hint`}>
          {hint} {props.measure === 'length' && LESSON.eitherUnit}
        </p>
        <div class="box">
          <input
            id={`${props.name}-field`}
            type="text"
            autocomplete="off"
            spellcheck={false}
            value={typed}
            aria-describedby={`${props.name}-question ${props.name}-hint`}
            onInput={(event) => {
              setTyped(event.currentTarget.value);
              setSaid(null);
            }}
          />
          {suffix && (
            <span class="unit" aria-hidden="true">
              {suffix}
            </span>
          )}
        </div>
      </div>
      <Verdict said={said} />
      <div class="check-row">
        {live && <button class="button">{LESSON.check}</button>}
        <Answer>
          <p>
            <strong>{shown(props.answer, props, unit)}</strong>
          </p>
          <p>{props.working}</p>
        </Answer>
      </div>
    </form>
  );
}

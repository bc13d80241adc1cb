import { useState } from 'preact/hooks';
import { Complaint } from '../fields/Complaint';
import { readLength } from '../fields/readLength';
import { readPlain } from '../fields/readNumber';
import type { Unit } from '../words';
import { LESSON } from '../words/en/lesson';
import { decimals, length, lengthNumber } from '../words/format';
import { fill } from '../words/template';

interface Limits {
  name: string;
  label: string;
  /** Null while what stands in the box is no number within the limits. */
  value: number | null;
  /** Why these limits is said in `hint`. */
  min: number;
  max: number;
  /** For one press of a button. */
  step: number;
  hint: string;
  onChange: (value: number | null) => void;
}

interface StepperProps extends Limits {
  /** Behind the number, and said in the label. */
  unit: string;
  read: (text: string) => number | null;
  write: (value: number) => string;
  /** A limit with its unit, for the complaint. */
  say: (value: number) => string;
}

/** A length in mm, shown and typed in the page's unit. */
export function LengthStepper({ unit, ...limits }: Limits & { unit: Unit }) {
  return (
    <Stepper
      {...limits}
      unit={unit}
      read={(text) => readLength(text, unit)?.mm ?? null}
      write={(mm) => lengthNumber(mm, unit)}
      say={(mm) => length(mm, unit)}
    />
  );
}

/** A bare number of something: degrees, threads. */
export function CountStepper({ unit, ...limits }: Limits & { unit: string }) {
  const tail = unit === '°' ? unit : ` ${unit}`;
  return (
    <Stepper
      {...limits}
      unit={unit}
      read={(text) => readPlain(text, ['°', 'degrees', 'thread', 'threads', 'turn', 'turns'])}
      write={(value) => decimals(value, 2)}
      say={(value) => decimals(value, 2) + tail}
    />
  );
}

/** A number between limits: typed, or moved by buttons a gloved finger can hit. Nothing is dragged. */
function Stepper(props: StepperProps) {
  const { name, label, unit, value, min, max, step, onChange } = props;
  const [typed, setTyped] = useState<string | null>(null);
  const id = `${name}-box`;

  const read = (text: string): number | null => {
    const meant = props.read(text);
    return meant !== null && meant >= min && meant <= max ? meant : null;
  };
  // What was typed stands as typed for as long as it means the value; a value that came another way
  // (a button, another thread, the other unit) is written out.
  const asTyped = typed !== null && read(typed) === value;
  const shown = asTyped ? typed : value === null ? '' : props.write(value);
  const type = (text: string) => {
    setTyped(text);
    onChange(read(text));
  };
  const press = (by: number) => {
    setTyped(null);
    onChange(Math.min(max, Math.max(min, (value ?? (by > 0 ? min : max)) + by)));
  };

  const range = fill(LESSON.between, { min: props.say(min), max: props.say(max) }, 'mm');
  const bad = value === null && shown.trim() !== '';
  return (
    <div class={`field stepper${bad ? ' wrong' : ''}`}>
      <label for={id}>
        {label}
        <span class="unseen">, {unit}</span>
      </label>
      <p class="hint" id={`${id}-hint`}>
        {props.hint}
      </p>
      <div class="stepper-row">
        <button
          type="button"
          class="move"
          aria-label={`${LESSON.less}: ${label}`}
          onClick={() => press(-step)}
        >
          <span aria-hidden="true">−</span>
        </button>
        <div class="box">
          <input
            id={id}
            type="text"
            autocomplete="off"
            spellcheck={false}
            value={shown}
            aria-invalid={bad ? 'true' : undefined}
            aria-describedby={`${id}-hint${bad ? ` ${id}-problem` : ''}`}
            onInput={(event) => type(event.currentTarget.value)}
          />
          <span class="unit" aria-hidden="true">
            {unit}
          </span>
        </div>
        <button
          type="button"
          class="move"
          aria-label={`${LESSON.more}: ${label}`}
          onClick={() => press(step)}
        >
          <span aria-hidden="true">+</span>
        </button>
      </div>
      {bad && <Complaint id={`${id}-problem`} text={range} />}
    </div>
  );
}

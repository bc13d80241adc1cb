import { useState } from 'preact/hooks';
import { Complaint } from '../fields/Complaint';
import { readLength } from '../fields/readLength';
import type { Unit } from '../words';
import { LESSON } from '../words/en/lesson';
import { length, lengthNumber } from '../words/format';
import { fill } from '../words/template';

export interface StepperProps {
  name: string;
  label: string;
  unit: Unit;
  /** mm; null while what stands in the box is no length within the limits. */
  value: number | null;
  /** mm: why these limits is said in `hint`. */
  min: number;
  max: number;
  /** mm for one press of a button. */
  step: number;
  hint: string;
  onChange: (mm: number | null) => void;
}

/** A length between limits: typed, or moved by buttons a gloved finger can hit. Nothing is dragged. */
export function Stepper(props: StepperProps) {
  const { name, label, unit, value, min, max, step, onChange } = props;
  const [typed, setTyped] = useState<string | null>(null);
  const id = `${name}-box`;

  const read = (text: string): number | null => {
    const mm = readLength(text, unit)?.mm;
    return mm !== undefined && mm >= min && mm <= max ? mm : null;
  };
  // What was typed stands as typed for as long as it means the value; a value that came another way
  // (a button, another thread, the other unit) is written out.
  const asTyped = typed !== null && read(typed) === value;
  const shown = asTyped ? typed : value === null ? '' : lengthNumber(value, unit);
  const type = (text: string) => {
    setTyped(text);
    onChange(read(text));
  };
  const press = (by: number) => {
    setTyped(null);
    onChange(Math.min(max, Math.max(min, (value ?? (by > 0 ? min : max)) + by)));
  };

  const range = fill(LESSON.between, { min: length(min, unit), max: length(max, unit) }, unit);
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

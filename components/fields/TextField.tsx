/** One typed line: a thread, a length, a torque. Text always, so that what was typed stays typed. */

import { FIELDS } from '../words/en/fields';
import { Complaint } from './Complaint';
import { describedBy, fieldId, type FieldProps } from './field';

export interface TextFieldProps extends FieldProps {
  /** Shown behind the box and said in the label. */
  unit?: string;
  /** How the text was understood; shown under the box. */
  reading?: string;
  large?: boolean;
  /** A number pad will do: not for fields that take fractions or letters. */
  digits?: boolean;
}

export function TextField(props: TextFieldProps) {
  const { name, label, value, unit, reading, problem, hint } = props;
  const id = fieldId(name);
  return (
    <div class={`field${props.large ? ' large' : ''}${problem ? ' wrong' : ''}`}>
      <label for={id}>
        {label}
        {unit && <span class="unseen">, {unit}</span>}
        {props.optional && <span class="optional"> {FIELDS.optional}</span>}
      </label>
      {hint && (
        <p class="hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      <div class="box">
        <input
          id={id}
          name={name}
          type="text"
          value={value}
          inputMode={props.digits ? 'decimal' : undefined}
          autocomplete="off"
          autocapitalize="off"
          spellcheck={false}
          aria-invalid={problem ? 'true' : undefined}
          aria-describedby={describedBy(name, { hint, reading, problem })}
          onInput={(event) => props.onInput(event.currentTarget.value)}
          onChange={() => props.onSettle?.()}
        />
        {unit && (
          <span class="unit" aria-hidden="true">
            {unit}
          </span>
        )}
      </div>
      {problem ? (
        <Complaint id={`${id}-problem`} text={problem} />
      ) : (
        reading !== undefined && (
          <p class="reading" id={`${id}-reading`}>
            {reading}
          </p>
        )
      )}
    </div>
  );
}

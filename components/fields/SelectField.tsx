/** A long list to choose one from, in the browser's own control. */

import { FIELDS } from '../words/en/fields';
import { Complaint } from './Complaint';
import type { Choice } from './ChoiceField';
import { describedBy, fieldId, type FieldProps } from './field';

export interface SelectFieldProps extends FieldProps {
  /** The line that stands for nothing chosen yet; leave out where there is always a choice. */
  empty?: string;
  choices?: readonly Choice[];
  groups?: readonly { label: string; choices: readonly Choice[] }[];
}

function Options({ choices, value }: { choices: readonly Choice[]; value: string }) {
  return (
    <>
      {choices.map((choice) => (
        <option key={choice.value} value={choice.value} selected={choice.value === value}>
          {choice.label}
        </option>
      ))}
    </>
  );
}

export function SelectField(props: SelectFieldProps) {
  const { name, label, value, problem, hint } = props;
  const id = fieldId(name);
  return (
    <div class={`field${problem ? ' wrong' : ''}`}>
      <label for={id}>
        {label}
        {props.optional && <span class="optional"> {FIELDS.optional}</span>}
      </label>
      {hint && (
        <p class="hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      <div class="box">
        <select
          id={id}
          name={name}
          autocomplete="off"
          aria-invalid={problem ? 'true' : undefined}
          aria-describedby={describedBy(name, { hint, problem })}
          onChange={(event) => {
            props.onInput(event.currentTarget.value);
            props.onSettle?.();
          }}
        >
          {props.empty !== undefined && (
            <option value="" selected={value === ''}>
              {props.empty}
            </option>
          )}
          {props.choices && <Options choices={props.choices} value={value} />}
          {props.groups?.map((group) => (
            <optgroup key={group.label} label={group.label}>
              <Options choices={group.choices} value={value} />
            </optgroup>
          ))}
        </select>
      </div>
      {problem && <Complaint id={`${id}-problem`} text={problem} />}
    </div>
  );
}

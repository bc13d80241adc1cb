/** A short list to choose one from, as tiles large enough for a gloved finger. */

import { Complaint } from './Complaint';
import { describedBy, fieldId, type FieldProps } from './field';

export interface Choice {
  value: string;
  label: string;
}

export interface ChoiceFieldProps extends FieldProps {
  choices: readonly Choice[];
}

export function ChoiceField(props: ChoiceFieldProps) {
  const { name, label, value, choices, problem, hint } = props;
  const id = fieldId(name);
  return (
    <fieldset
      class={`field${problem ? ' wrong' : ''}`}
      aria-describedby={describedBy(name, { hint, problem })}
    >
      <legend>{label}</legend>
      {hint && (
        <p class="hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      <div class="tiles">
        {choices.map((choice, index) => (
          <label class="tile" key={choice.value}>
            <input
              type="radio"
              id={index === 0 ? id : fieldId(`${name}-${choice.value}`)}
              name={name}
              value={choice.value}
              checked={value === choice.value}
              autocomplete="off"
              onChange={() => {
                props.onInput(choice.value);
                props.onSettle?.();
              }}
            />
            <span>{choice.label}</span>
          </label>
        ))}
      </div>
      {problem && <Complaint id={`${id}-problem`} text={problem} />}
    </fieldset>
  );
}

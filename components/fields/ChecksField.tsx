/** Several of a short list: the drills in the drawer, a yes or no. */

import { Complaint } from './Complaint';
import type { Choice } from './ChoiceField';
import { describedBy, fieldId } from './field';

export interface ChecksFieldProps {
  name: string;
  label: string;
  choices: readonly Choice[];
  chosen: readonly string[];
  onChoose: (chosen: string[]) => void;
  hint?: string;
  problem?: string;
}

export function ChecksField(props: ChecksFieldProps) {
  const { name, label, choices, chosen, problem, hint } = props;
  const id = fieldId(name);
  const toggled = (value: string, on: boolean): string[] =>
    choices.map((choice) => choice.value).filter((v) => (v === value ? on : chosen.includes(v)));
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
              type="checkbox"
              id={index === 0 ? id : fieldId(`${name}-${choice.value}`)}
              name={name}
              value={choice.value}
              checked={chosen.includes(choice.value)}
              autocomplete="off"
              onChange={(event) =>
                props.onChoose(toggled(choice.value, event.currentTarget.checked))
              }
            />
            <span>{choice.label}</span>
          </label>
        ))}
      </div>
      {problem && <Complaint id={`${id}-problem`} text={problem} />}
    </fieldset>
  );
}

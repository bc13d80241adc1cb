/** Several typed or pasted lines. */

import { Complaint } from './Complaint';
import { describedBy, fieldId, type FieldProps } from './field';

export interface TextAreaProps extends FieldProps {
  rows: number;
}

export function TextArea(props: TextAreaProps) {
  const { name, label, value, rows, problem, hint } = props;
  const id = fieldId(name);
  return (
    <div class={`field${problem ? ' wrong' : ''}`}>
      <label for={id}>{label}</label>
      {hint && (
        <p class="hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      <div class="box lines">
        <textarea
          id={id}
          name={name}
          rows={rows}
          value={value}
          autocomplete="off"
          autocapitalize="off"
          spellcheck={false}
          aria-invalid={problem ? 'true' : undefined}
          aria-describedby={describedBy(name, { hint, problem })}
          onInput={(event) => props.onInput(event.currentTarget.value)}
          onChange={() => props.onSettle?.()}
        />
      </div>
      {problem && <Complaint id={`${id}-problem`} text={problem} />}
    </div>
  );
}

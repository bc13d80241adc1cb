/** One box to tick: yes, or nothing said. */

import { ChecksField } from '../fields/ChecksField';
import { LABELS } from '../words/en/planner';
import type { InputName } from './inputs';
import type { FormState } from './PlannerForm';

export function YesField({
  form,
  name,
  label,
}: {
  form: FormState;
  name: InputName;
  label: string;
}) {
  return (
    <ChecksField
      name={name}
      label={LABELS[name]}
      choices={[{ value: 'yes', label }]}
      chosen={form.values[name] === 'yes' ? ['yes'] : []}
      onChoose={(chosen) => {
        form.set(name, chosen[0] ?? '');
        form.settle(name);
      }}
    />
  );
}

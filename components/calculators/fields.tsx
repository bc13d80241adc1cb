/** The fields that several calculators ask: thread, material, lengths, choices. */

import { CHAMFER_CLASSES } from '../../core/chamfer/chamfer';
import { chamferOf } from '../../core/chamfer/classes';
import { ChoiceField, type Choice } from '../fields/ChoiceField';
import { SelectField } from '../fields/SelectField';
import { TextField } from '../fields/TextField';
import { UnitOffer } from '../state/UnitOffer';
import { chamferText, materialGroups, materialName } from '../words/names';
import { TEXT } from '../words/en/calculators/shared';
import type { FormOf } from './useCalculator';

interface Props<Name extends string> {
  form: FormOf<Name>;
  name: Name;
  hint?: string;
  optional?: boolean;
}

/** What every field is given by the form. */
export function bind<Name extends string>(form: FormOf<Name>, name: Name) {
  return {
    name,
    label: form.label(name),
    value: form.values[name],
    onInput: (value: string) => form.set(name, value),
    onSettle: () => form.settle(name),
    problem: form.problem(name),
  };
}

/** A thread, large, with its reading under it. */
export function ThreadField<Name extends string>({ form, name }: Props<Name>) {
  const reading = form.reading(name);
  return (
    <>
      <TextField {...bind(form, name)} large reading={reading} />
      <UnitOffer
        typed={reading === '' ? '' : form.values[name]}
        field={name}
        likely={form.system(name) === 'metric' ? 'mm' : 'in'}
        unit={form.unit}
      />
    </>
  );
}

/** A length with its unit behind it and both units under it. */
export function LengthField<Name extends string>(props: Props<Name> & { empty?: string }) {
  const { form, name, hint, optional } = props;
  return (
    <TextField
      {...bind(form, name)}
      unit={form.unit}
      digits={form.unit === 'mm'}
      reading={form.reading(name) || props.empty || ''}
      hint={hint}
      optional={optional}
    />
  );
}

export function MaterialField<Name extends string>({ form, name, optional }: Props<Name>) {
  return (
    <SelectField
      {...bind(form, name)}
      empty={optional ? TEXT.anyMaterial : TEXT.chooseMaterial}
      optional={optional}
      groups={materialGroups.map(({ label, ids }) => ({
        label,
        choices: ids.map((value) => ({ value, label: materialName(value) })),
      }))}
    />
  );
}

export function Tiles<Name extends string>(props: Props<Name> & { choices: readonly Choice[] }) {
  const { form, name, choices, hint } = props;
  return <ChoiceField {...bind(form, name)} choices={choices} hint={hint} />;
}

/** The chamfer classes of a system, count of threads first. */
export function chamferChoices(system: 'metric' | 'inch', spiralPoint = false): Choice[] {
  return CHAMFER_CLASSES.map((value) => ({
    value,
    label: chamferText(
      chamferOf(value, system, spiralPoint),
      system === 'metric' ? 'metric' : 'unified',
    ),
  }));
}

/** The fields that several calculators ask: thread, material, lengths, choices. */

import { CHAMFER_CLASSES } from '../../core/chamfer/chamfer';
import { chamferOf } from '../../core/chamfer/classes';
import { readThread } from '../../core/thread/read';
import { ChoiceField, type Choice } from '../fields/ChoiceField';
import { readLength } from '../fields/readLength';
import { SelectField } from '../fields/SelectField';
import { TextField } from '../fields/TextField';
import { chamferText, materialGroups, materialName, noteText, readingText } from '../words';
import { bothUnits, TEXT } from './messages';
import type { FormOf } from './useCalculator';

interface Props<Name extends string> {
  form: FormOf<Name>;
  name: Name;
  hint?: string;
}

/** What every field is given by the form. */
export function bind<Name extends string>(form: FormOf<Name>, name: Name) {
  const complaint = form.problem(name);
  return {
    name,
    label: form.label(name),
    value: (form.values as Record<Name, string>)[name],
    onInput: (value: string) => form.set(name, value),
    onSettle: () => form.settle(name),
    ...(complaint ? { problem: complaint } : {}),
  };
}

/** A thread, large, with its reading under it. */
export function ThreadField<Name extends string>({ form, name }: Props<Name>) {
  const bound = bind(form, name);
  const reading = readThread(bound.value);
  const read = reading.ok
    ? [
        `Read as ${readingText(reading.value)}.`,
        ...reading.notes.map((note) => noteText(note, form.unit)),
      ].join(' ')
    : '';
  return <TextField {...bound} large reading={bound.value.trim() === '' ? '' : read} />;
}

/** A length with its unit behind it and both units under it. */
export function LengthField<Name extends string>(
  props: Props<Name> & { empty?: string; optional?: boolean },
) {
  const { form, name, hint, optional } = props;
  const bound = bind(form, name);
  const read = readLength(bound.value, form.unit);
  const both = read && read.unit !== 'µm' ? bothUnits(read.mm, read.unit) : '';
  return (
    <TextField
      {...bound}
      unit={form.unit}
      digits={form.unit === 'mm'}
      reading={bound.value.trim() === '' ? (props.empty ?? '') : both}
      {...(hint === undefined ? {} : { hint })}
      {...(optional ? { optional } : {})}
    />
  );
}

export function MaterialField<Name extends string>(props: Props<Name> & { optional?: boolean }) {
  const { form, name, optional } = props;
  return (
    <SelectField
      {...bind(form, name)}
      empty={optional ? TEXT.anyMaterial : TEXT.chooseMaterial}
      {...(optional ? { optional } : {})}
      groups={materialGroups.map(({ label, ids }) => ({
        label,
        choices: ids.map((value) => ({ value, label: materialName(value) })),
      }))}
    />
  );
}

export function Tiles<Name extends string>(props: Props<Name> & { choices: readonly Choice[] }) {
  const { form, name, choices, hint } = props;
  return (
    <ChoiceField
      {...bind(form, name)}
      choices={choices}
      {...(hint === undefined ? {} : { hint })}
    />
  );
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

/** Which system's chamfer classes go with what was typed; metric until it can be read. */
export function systemTyped(text: string): 'metric' | 'inch' {
  const reading = readThread(text);
  return reading.ok && reading.value.system === 'unified' ? 'inch' : 'metric';
}

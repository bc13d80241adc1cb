/**
 * A calculator's form between keyboard, address and core: computes at every keystroke, complains
 * only when a field was left changed or the form was sent.
 */

import { useMemo, useState } from 'preact/hooks';
import { restateLength } from '../fields/readLength';
import { initialValues, type AddressNote, type Values } from '../state/address';
import { useAddress } from '../state/useAddress';
import { openInUnit, useUnit, useUnitChosen } from '../state/units';
import type { Unit } from '../words';
import type { Attempt, Calculator, CalculatorWords } from './calculator';
import { fieldText } from './messages';

export interface FormOf<Name extends string> {
  values: Values<Name | 'units'>;
  unit: Unit;
  set: (name: Name, value: string) => void;
  settle: (name: Name) => void;
  problem: (name: Name) => string | undefined;
  label: (name: Name) => string;
}

export interface CalculatorState<Name extends string, Answer> {
  notes: readonly AddressNote[];
  unit: Unit;
  started: boolean;
  attempt: Attempt<Name, Answer>;
  form: FormOf<Name>;
  /** Problems that are shown now, field by field. */
  shown: { field: Name; text: string }[];
  /** Counts the times the form was sent in vain. */
  refusals: number;
  submit: () => boolean;
  put: (values: Values<Name | 'units'>) => void;
  clear: () => void;
}

/** `calculator` and `words` must be constants of their module. */
export function useCalculator<Name extends string, Answer>(
  calculator: Calculator<Name, Answer>,
  words: CalculatorWords<Name>,
): CalculatorState<Name, Answer> {
  type All = Name | 'units';
  const { fields, lengths, attempt: workOut } = calculator;
  const [complaining, setComplaining] = useState<ReadonlySet<string>>(new Set());
  const [editing, setEditing] = useState<Name | null>(null);
  const [refusals, setRefusals] = useState(0);
  const unit = useUnit();
  const changed = (values: Values<All>) =>
    fields.filter(({ name, initial }) => name !== 'units' && values[name] !== initial);

  const address = useAddress<All>(fields, (arrived) => {
    openInUnit(arrived.units, changed(arrived).length > 0);
    // What came filled in from the address is spoken of at once.
    setComplaining(new Set(changed(arrived).map(({ name }) => name)));
    setEditing(null);
    setRefusals(0);
  });
  const { values } = address;
  const started = changed(values).length > 0;

  useUnitChosen((next) => {
    if (!started) return;
    const from = next === 'mm' ? 'in' : 'mm';
    const restated = lengths.map((name) => [name, restateLength(values[name], from, next)]);
    address.set({ ...Object.fromEntries(restated), units: next } as Partial<Values<All>>);
    address.settle();
  });

  const attempt = useMemo(() => workOut(values, unit), [workOut, values, unit]);
  const shown = attempt.problems
    .filter(
      ({ field, whole }) =>
        complaining.has(field) && field !== editing && !(whole && editing !== null),
    )
    .map(({ field, problem }) => ({ field, text: fieldText(words, field, problem, unit) }));

  const put = (next: Values<All>) => {
    address.set(next);
    address.settle();
    setComplaining(new Set());
    setEditing(null);
    setRefusals(0);
  };

  return {
    notes: address.notes,
    unit,
    started,
    attempt,
    shown,
    refusals,
    form: {
      values,
      unit,
      set: (name, value) => {
        setEditing(name);
        const units = unit === 'in' ? 'in' : '';
        address.set({ [name]: value, units } as Partial<Values<All>>);
      },
      settle: (name) => {
        setEditing(null);
        setComplaining((before) => new Set(before).add(name));
        address.settle();
      },
      problem: (name) => shown.find(({ field }) => field === name)?.text,
      label: (name) => words.labels[name],
    },
    submit: () => {
      setEditing(null);
      setComplaining(new Set(fields.map(({ name }) => name)));
      address.settle();
      const refused = attempt.problems.length > 0;
      if (refused) setRefusals((count) => count + 1);
      return !refused;
    },
    put,
    clear: () => put(initialValues(fields)),
  };
}

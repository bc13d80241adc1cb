/**
 * A calculator's form between keyboard, address and engine: computes at every keystroke, complains
 * only when a field was left changed or the form was sent.
 */

import { useEffect, useMemo, useState } from 'preact/hooks';
import { restateLength } from '../fields/readLength';
import { useEngine } from '../planner/useEngine';
import { initialValues, type AddressNote } from '../state/address';
import { useAddress } from '../state/useAddress';
import { usePainted } from '../state/usePainted';
import { openInUnit, useUnit, useUnitChosen } from '../state/units';
import type { Unit } from '../words/format';
import { withCallout } from './withCallout';
import type { Attempt, CalculatorWords, Engine, Inputs, ValuesOf } from './calculator';

/** What the fields need of the form. */
export interface FormOf<Name extends string> {
  values: ValuesOf<Name>;
  unit: Unit;
  set: (name: Name, value: string) => void;
  settle: (name: Name) => void;
  label: (name: Name) => string;
  /** The complaint to show at a field, if it is time to complain. */
  problem: (name: Name) => string | undefined;
  /** How a field was understood. */
  reading: (name: Name) => string;
  /** Which system's chamfer classes go with the thread in a field. */
  system: (name: Name) => 'metric' | 'inch';
}

export interface CalculatorState<Name extends string, Answer> {
  /** What reckons; null until it has loaded. */
  engine: Engine<Name, Answer> | null;
  failed: boolean;
  notes: readonly AddressNote[];
  /** Which the attempt was made in. */
  unit: Unit;
  started: boolean;
  /** Null while nothing can be reckoned yet. At what stood in the form one picture ago. */
  attempt: Attempt<Name, Answer> | null;
  form: FormOf<Name>;
  /** Problems that are shown now, field by field. */
  shown: { field: Name; text: string }[];
  /** Counts the times the form was sent in vain. */
  refusals: number;
  submit: () => boolean;
  /** Fills the whole form at once with values written in mm. */
  put: (values: ValuesOf<Name>) => void;
  clear: () => void;
  /** The reader has come to the form: what reckons will be wanted. */
  touch: () => void;
}

/** Everything typed as a bare length, said in its own unit once the page reads another. */
function restated<Name extends string>(
  { fields, kinds }: Inputs<Name>,
  values: ValuesOf<Name>,
  from: Unit,
  to: Unit,
): ValuesOf<Name> {
  const text = (name: Name | 'units') =>
    name !== 'units' && kinds[name] === 'length'
      ? restateLength(values[name], from, to)
      : values[name];
  const all = Object.fromEntries(fields.map(({ name }) => [name, text(name)])) as ValuesOf<Name>;
  return { ...all, units: to === 'in' ? 'in' : '' };
}

/** `inputs`, `words` and `load` must be constants of their module. */
export function useCalculator<Name extends string, Answer>(
  inputs: Inputs<Name>,
  words: CalculatorWords<Name>,
  load: () => Promise<Engine<Name, Answer>>,
): CalculatorState<Name, Answer> {
  const { fields, kinds } = inputs;
  const [complaining, setComplaining] = useState<ReadonlySet<string>>(new Set());
  const [editing, setEditing] = useState<Name | null>(null);
  const [refusals, setRefusals] = useState(0);
  const [touched, setTouched] = useState(false);
  const [sentEarly, setSentEarly] = useState(false);
  const unit = useUnit();
  const changed = (values: ValuesOf<Name>) =>
    fields.flatMap(({ name, initial }) =>
      name !== 'units' && values[name] !== initial ? [name] : [],
    );
  const quiet = (fresh: ReadonlySet<string>) => {
    setComplaining(fresh);
    setEditing(null);
    setRefusals(0);
  };

  const address = useAddress<Name | 'units'>(fields, (arrived) => {
    openInUnit(arrived.units, changed(arrived).length > 0);
    // What came filled in from the address is spoken of at once.
    quiet(new Set(changed(arrived)));
  });
  const { values } = address;
  const started = changed(values).length > 0;
  const { engine, failed } = useEngine(load, started || touched);

  useUnitChosen((next) => {
    if (!started) return;
    address.set(restated(inputs, values, next === 'mm' ? 'in' : 'mm', next));
    address.settle();
  });

  const read = useMemo(
    () => (engine ? withCallout(inputs, engine, values, unit) : { values, read: null }),
    [inputs, engine, values, unit],
  );
  const asked = usePainted(useMemo(() => ({ values: read.values, unit }), [read, unit]));
  const attempt = useMemo(() => engine?.attempt(asked.values, asked.unit) ?? null, [engine, asked]);
  const current = asked.values === read.values && asked.unit === unit;
  // While a field is being typed in, nothing is said about it, nor about how it sits with others.
  const shown = (attempt?.problems ?? [])
    .filter(
      ({ field, whole }) =>
        complaining.has(field) && field !== editing && !(whole && editing !== null),
    )
    .map(({ field, problem }) => ({
      field,
      text: engine?.complaint(field, problem, asked.unit) ?? '',
    }));

  // A form that was sent while the engine was still loading is judged when it comes.
  useEffect(() => {
    if (!sentEarly || attempt === null) return;
    setSentEarly(false);
    if (attempt.problems.length > 0) setRefusals((count) => count + 1);
  }, [sentEarly, attempt]);

  const put = (next: ValuesOf<Name>) => {
    address.set(restated(inputs, next, 'mm', unit));
    address.settle();
    quiet(new Set());
  };

  return {
    engine,
    failed,
    notes: address.notes,
    unit: asked.unit,
    started,
    attempt,
    shown,
    refusals,
    form: {
      values: read.read ? { ...read.values, ...read.read.typed } : values,
      unit,
      set: (name, value) => {
        setEditing(name);
        const units = unit === 'in' ? 'in' : '';
        address.set({ [name]: value, units } as Partial<ValuesOf<Name>>);
      },
      settle: (name) => {
        setEditing(null);
        setComplaining((before) => new Set(before).add(name));
        const callout = read.read;
        if (callout?.name === name && callout.filled[name] !== values[name]) {
          address.set(callout.filled);
        }
        address.settle();
      },
      label: (name) => words.labels[name],
      problem: (name) => shown.find(({ field }) => field === name)?.text,
      reading: (name) => {
        const kind = kinds[name];
        return (kind && engine?.reading(kind, values[name], unit)) ?? '';
      },
      system: (name) => engine?.system(values[name]) ?? 'metric',
    },
    submit: () => {
      setEditing(null);
      setComplaining(new Set(fields.map(({ name }) => name)));
      address.settle();
      setTouched(true);
      const latest = current ? attempt : (engine?.attempt(read.values, unit) ?? null);
      if (latest === null) setSentEarly(true);
      else if (latest.problems.length > 0) setRefusals((count) => count + 1);
      return latest?.problems.length === 0;
    },
    put,
    clear: () => put(initialValues(fields)),
    touch: () => setTouched(true),
  };
}

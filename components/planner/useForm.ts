/**
 * The planner's form between keyboard, address and core: computes at every keystroke, complains
 * only when a field was left changed or the form was sent.
 */

import { useEffect, useMemo, useState } from 'preact/hooks';
import { restateLength } from '../fields/readLength';
import { initialValues, type AddressNote } from '../state/address';
import { useAddress } from '../state/useAddress';
import { openInUnit, useUnit, useUnitChosen } from '../state/units';
import type { Unit } from '../words';
import { baseUnit, FIELDS, isLength, isStarted, type InputName, type Inputs } from './inputs';
import type * as engineModule from './engine';
import type { Attempt } from './state';
import { useEngine } from './useEngine';
import type { FormState } from './PlannerForm';

/** What `./engine` offers; a page may bring more along with it. */
export type Engine = typeof engineModule;

const ALL: ReadonlySet<InputName> = new Set(FIELDS.map(({ name }) => name));
const NONE: ReadonlySet<InputName> = new Set();

/** Everything typed as a bare length, said in its own unit once the page reads another. */
function restated(values: Inputs, from: Unit, to: Unit): Partial<Inputs> {
  const changes: Partial<Inputs> = { units: to === 'in' ? 'in' : '' };
  for (const { name } of FIELDS) {
    if (isLength(name)) {
      changes[name] = restateLength(values[name], baseUnit(name, from), baseUnit(name, to));
    }
  }
  return changes;
}

/** Fields that came filled in from the address: what is wrong in them is said at once. */
function filled(values: Inputs): ReadonlySet<InputName> {
  return new Set(FIELDS.flatMap(({ name, initial }) => (values[name] === initial ? [] : [name])));
}

export interface PlannerState<E extends Engine = Engine> {
  /** What reckons; null until it has loaded. */
  engine: E | null;
  /** It could not be loaded. */
  failed: boolean;
  notes: readonly AddressNote[];
  unit: Unit;
  started: boolean;
  /** Null while nothing can be reckoned yet. */
  attempt: Attempt | null;
  form: FormState;
  /** Problems that are shown now, field by field. */
  shown: { field: InputName; text: string }[];
  /** Counts the times the form was sent in vain. */
  refusals: number;
  /** The form was sent. True when there is an answer to look at. */
  submit: () => boolean;
  /** Fills the whole form at once with values written in mm. */
  put: (values: Inputs) => void;
  clear: () => void;
  /** The reader has come to the form: what reckons will be wanted. */
  touch: () => void;
}

/** `load` brings what reckons; it must be one constant function. */
export function useForm<E extends Engine>(load: () => Promise<E>): PlannerState<E> {
  const [complaining, setComplaining] = useState(NONE);
  const [editing, setEditing] = useState<InputName | null>(null);
  const [refusals, setRefusals] = useState(0);
  const [touched, setTouched] = useState(false);
  const [sent, setSent] = useState(false);
  const unit = useUnit();

  const {
    values,
    notes,
    set: write,
    settle: rest,
  } = useAddress(FIELDS, (arrived) => {
    openInUnit(arrived.units, isStarted(arrived));
    setComplaining(filled(arrived));
    setEditing(null);
    setRefusals(0);
  });
  const started = isStarted(values);
  const { engine, failed } = useEngine(load, started || touched);

  useUnitChosen((next) => {
    if (!started) return;
    write(restated(values, next === 'mm' ? 'in' : 'mm', next));
    rest();
  });

  const result = useMemo(() => engine?.attempt(values, unit) ?? null, [engine, values, unit]);
  // Sent before there was anything to judge it with: it is judged when there is.
  useEffect(() => {
    if (!sent || !result) return;
    setSent(false);
    if (result.problems.length > 0) setRefusals((count) => count + 1);
  }, [sent, result]);

  // While a field is being typed in, nothing is said about it, nor about how it sits with others.
  const shown = (result?.problems ?? [])
    .filter(
      ({ field, whole }) =>
        complaining.has(field) && field !== editing && !(whole && editing !== null),
    )
    .map(({ field, problem }) => ({
      field,
      text: engine?.fieldProblemText(field, problem, unit) ?? '',
    }));

  const put = (next: Inputs) => {
    write({ ...next, ...restated(next, 'mm', unit) });
    rest();
    setComplaining(NONE);
    setEditing(null);
    setRefusals(0);
  };

  return {
    engine,
    failed,
    notes,
    unit,
    started,
    attempt: result,
    shown,
    refusals,
    form: {
      values,
      unit,
      system: result?.thread.ok ? result.thread.value.system : 'metric',
      set: (name, value) => {
        setEditing(name);
        write({ [name]: value, units: unit === 'in' ? 'in' : '' } as Partial<Inputs>);
      },
      settle: (name) => {
        setEditing(null);
        setComplaining((before) => new Set(before).add(name));
        rest();
      },
      problem: (name) => shown.find(({ field }) => field === name)?.text,
      reading: (name) => (engine && result ? engine.readingOf(name, values, unit, result) : ''),
    },
    submit: () => {
      setEditing(null);
      setComplaining(ALL);
      rest();
      setTouched(true);
      setSent(true);
      return result !== null && result.problems.length === 0;
    },
    put,
    clear: () => put(initialValues(FIELDS)),
    touch: () => setTouched(true),
  };
}

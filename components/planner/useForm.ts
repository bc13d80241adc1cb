/**
 * The planner's form between keyboard, address and core: computes at every keystroke, complains
 * only when a field was left changed or the form was sent.
 */

import { useMemo, useState } from 'preact/hooks';
import { restateLength } from '../fields/readLength';
import { initialValues, type AddressNote } from '../state/address';
import { useAddress } from '../state/useAddress';
import { openInUnit, useUnit, useUnitChosen } from '../state/units';
import type { Unit } from '../words';
import { baseUnit, FIELDS, isLength, isStarted, type InputName, type Inputs } from './inputs';
import { fieldProblemText } from './messages';
import { readingOf } from './reading';
import { attempt, type Attempt } from './state';
import type { FormState } from './PlannerForm';

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

export interface PlannerState {
  notes: readonly AddressNote[];
  unit: Unit;
  started: boolean;
  attempt: Attempt;
  form: FormState;
  /** Problems that are shown now, field by field. */
  shown: { field: InputName; text: string }[];
  /** Counts the times the form was sent in vain. */
  refusals: number;
  submit: () => boolean;
  /** Fills the whole form at once with values written in mm. */
  put: (values: Inputs) => void;
  clear: () => void;
}

export function useForm(): PlannerState {
  const [complaining, setComplaining] = useState(NONE);
  const [editing, setEditing] = useState<InputName | null>(null);
  const [refusals, setRefusals] = useState(0);
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

  useUnitChosen((next) => {
    if (!started) return;
    write(restated(values, next === 'mm' ? 'in' : 'mm', next));
    rest();
  });

  const result = useMemo(() => attempt(values, unit), [values, unit]);
  // While a field is being typed in, nothing is said about it, nor about how it sits with others.
  const shown = result.problems
    .filter(
      ({ field, whole }) =>
        complaining.has(field) && field !== editing && !(whole && editing !== null),
    )
    .map(({ field, problem }) => ({ field, text: fieldProblemText(field, problem, unit) }));

  const put = (next: Inputs) => {
    write({ ...next, ...restated(next, 'mm', unit) });
    rest();
    setComplaining(NONE);
    setEditing(null);
    setRefusals(0);
  };

  return {
    notes,
    unit,
    started,
    attempt: result,
    shown,
    refusals,
    form: {
      values,
      unit,
      system: result.thread.ok ? result.thread.value.system : 'metric',
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
      reading: (name) => readingOf(name, values, unit, result),
    },
    submit: () => {
      setEditing(null);
      setComplaining(ALL);
      rest();
      const refused = result.problems.length > 0;
      if (refused) setRefusals((count) => count + 1);
      return !refused;
    },
    put,
    clear: () => put(initialValues(FIELDS)),
  };
}

/** The planner's form between keyboard, address and core: computes at every keystroke. */

import { useEffect, useMemo, useState } from 'preact/hooks';
import { inchSystem } from '../../core/thread/inch-system';
import { restateLength } from '../fields/readLength';
import { initialValues, type AddressNote } from '../state/address';
import { useAddress } from '../state/useAddress';
import { usePainted } from '../state/usePainted';
import { openInUnit, useUnit, useUnitChosen } from '../state/units';
import type { Unit } from '../words';
import type * as engineModule from './engine';
import { baseUnit, FIELDS, isLength, isStarted, type InputName, type Inputs } from './inputs';
import type { FormState } from './PlannerForm';
import type { Attempt } from './state';
import { useComplaints } from './useComplaints';
import { useEngine } from './useEngine';

/** What `./engine` offers; a page may bring more along with it. */
export type Engine = typeof engineModule;

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

export interface PlannerState<E extends Engine = Engine> {
  /** What reckons; null until it has loaded. */
  engine: E | null;
  /** It could not be loaded. */
  failed: boolean;
  notes: readonly AddressNote[];
  started: boolean;
  /** Null while nothing can be reckoned yet. */
  attempt: Attempt | null;
  /** What the attempt was made with, one picture behind the form. */
  asked: { values: Inputs; unit: Unit };
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

/** The values in the address and the unit they are read in, kept in step. */
function useInputs(onArrive: (values: Inputs) => void) {
  const unit = useUnit();
  const { values, notes, set, settle } = useAddress(FIELDS, (arrived) => {
    openInUnit(arrived.units, isStarted(arrived));
    onArrive(arrived);
  });
  const started = isStarted(values);
  useUnitChosen((next) => {
    if (!started) return;
    set(restated(values, next === 'mm' ? 'in' : 'mm', next));
    settle();
  });
  return { unit, values, notes, set, settle, started };
}

/** `load` brings what reckons; it must be one constant function. */
export function useForm<E extends Engine>(load: () => Promise<E>): PlannerState<E> {
  const complaints = useComplaints();
  const { refused } = complaints;
  const [touched, setTouched] = useState(false);
  const [sent, setSent] = useState(false);
  // Said as long as the thread that came of it stands.
  const [callout, setCallout] = useState({ thread: '', said: '' });
  const [unread, setUnread] = useState(false);
  const { unit, values, notes, set, settle, started } = useInputs(complaints.arrived);
  const { engine, failed } = useEngine(load, started || touched);
  const asked = usePainted(useMemo(() => ({ values, unit }), [values, unit]));
  const result = useMemo(() => engine?.attempt(asked.values, asked.unit) ?? null, [engine, asked]);
  const current = asked.values === values && asked.unit === unit;

  // Sent before there was anything to judge it with: it is judged when there is.
  useEffect(() => {
    if (!sent || !result || !current) return;
    setSent(false);
    if (result.problems.length > 0) refused();
  }, [sent, result, current, refused]);

  const shown = (result?.problems ?? []).filter(complaints.due).map(({ field, problem }) => ({
    field,
    text: engine?.fieldProblemText(field, problem, asked.unit) ?? '',
  }));
  /** A whole callout in the thread's field fills the others. */
  const takeCallout = () => {
    setUnread(engine === null);
    const read = engine?.fromCallout(values.thread, unit);
    if (!read || read.thread === values.thread) return;
    set({ ...read.changes, units: unit === 'in' ? 'in' : '' });
    setCallout(read);
  };
  // Left before there was anything to read it with: it is read when there is.
  useEffect(() => {
    if (!unread || !engine) return;
    takeCallout();
    settle();
  });
  const put = (next: Inputs) => {
    set({ ...next, ...restated(next, 'mm', unit) });
    settle();
    complaints.arrived(initialValues(FIELDS));
  };

  // What a callout says counts before its field is left: the other fields show it at once.
  const whole = useMemo(
    () => engine?.withCallout(values, unit).values ?? values,
    [engine, values, unit],
  );

  return {
    engine,
    failed,
    notes,
    started,
    attempt: result,
    asked,
    shown,
    refusals: complaints.refusals,
    form: {
      values: whole === values ? values : { ...whole, thread: values.thread },
      unit,
      system: result?.thread.ok ? result.thread.value.system : 'metric',
      chamfers: result?.thread.ok && inchSystem(result.thread.value) ? 'inch' : 'metric',
      set: (name, value) => {
        complaints.typing(name);
        const changes =
          (name === 'designation' ? engine?.designationChanges(value) : undefined) ??
          ({ [name]: value } as Partial<Inputs>);
        set({ ...changes, units: unit === 'in' ? 'in' : '' });
      },
      settle: (name) => {
        complaints.left(name);
        if (name === 'thread') takeCallout();
        settle();
      },
      problem: (name) => shown.find(({ field }) => field === name)?.text,
      reading: (name) => {
        if (!engine || !result) return '';
        const read = engine.readingOf(name, result.values, asked.unit, result);
        const filled =
          name === 'thread' &&
          result.callout === null &&
          callout.said !== '' &&
          callout.thread === values.thread;
        return filled ? callout.said : read;
      },
    },
    submit: () => {
      complaints.sent();
      settle();
      setTouched(true);
      setSent(true);
      return (current ? result : engine?.attempt(values, unit))?.problems.length === 0;
    },
    put,
    clear: () => put(initialValues(FIELDS)),
    touch: () => setTouched(true),
  };
}

/** The part's form between keyboard, address, file and core. */

import { useCallback, useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { ColumnKind } from '../../core/drawing/columns';
import { restateLength } from '../fields/readLength';
import { useEngine } from '../planner/useEngine';
import { initialValues, type AddressNote } from '../state/address';
import { openInUnit, useUnit, useUnitChosen } from '../state/units';
import { useAddress } from '../state/useAddress';
import type { Unit } from '../words/format';
import type * as engineModule from './engine';
import {
  followLines,
  HEAD_NAMES,
  linesOf,
  PART_FIELDS,
  PART_NAMES,
  readChanges,
  readColumns,
  sameTable,
  writeChanges,
  writeColumns,
  type ChangeName,
  type PartInputs,
  type PartName,
} from './inputs';
import { followSaid, readLines, sayOf, writeLines, type Said } from './lines';
import type { PartAttempt } from './state';

const loadEngine = () => import('./engine');

/** A long list is planned once the typing rests: each keystroke would be felt. */
const MANY = 25;
const REST = 80;

const PLANNED = PART_NAMES.filter((name) => !(HEAD_NAMES as readonly PartName[]).includes(name));

export interface PartState {
  engine: typeof engineModule | null;
  failed: boolean;
  values: PartInputs;
  notes: readonly AddressNote[];
  unit: Unit;
  started: boolean;
  attempt: PartAttempt | null;
  /** True while the answer on the page belongs to what stood in the form before. */
  stale: boolean;
  /** Fields to complain about now. */
  shown: PartAttempt['problems'];
  refusals: number;
  set: (name: PartName, value: string) => void;
  settle: (name: PartName) => void;
  change: (number: number, name: ChangeName, value: string) => void;
  /** Says of a line, by its number as typed, that it is joined, parted or tapped; or takes it back. */
  say: (line: number, word: Said, holds: boolean) => void;
  /** Says what a column of the table is, counted from 0. */
  setColumn: (at: number, kind: ColumnKind) => void;
  put: (values: PartInputs) => void;
  submit: () => boolean;
  touch: () => void;
}

/** Lengths typed bare, said in their own unit once the page reads another. */
function restated(values: PartInputs, from: Unit, to: Unit): Partial<PartInputs> {
  const changes = Object.fromEntries(
    Object.entries(readChanges(values.changes)).map(([number, each]) => [
      number,
      each.thickness === undefined
        ? each
        : { ...each, thickness: restateLength(each.thickness, from, to) },
    ]),
  );
  return {
    units: to === 'in' ? 'in' : '',
    thickness: restateLength(values.thickness, from, to),
    changes: writeChanges(changes),
  };
}

/** What the plan depends on, once the typing rests if the list is long. */
function useRested(values: PartInputs): { rested: PartInputs; stale: boolean } {
  const key = PLANNED.map((name) => values[name]).join('\u0000');
  const [rested, setRested] = useState({ key, values });
  const many = linesOf(values.holes).length > MANY;
  useEffect(() => {
    if (rested.key === key) return undefined;
    const timer = window.setTimeout(() => setRested({ key, values }), many ? REST : 0);
    return () => window.clearTimeout(timer);
  }, [key, many, rested.key, values]);
  return { rested: rested.values, stale: rested.key !== key };
}

/** What was said of single holes and lines, after the list was edited. */
function followHoles(
  { holes, changes, lines }: Pick<PartInputs, 'holes' | 'changes' | 'lines'>,
  next: string,
): Partial<PartInputs> {
  return {
    ...(changes !== '' && {
      changes: writeChanges(followLines(readChanges(changes), holes, next)),
    }),
    ...(lines !== '' && { lines: writeLines(followSaid(readLines(lines), holes, next)) }),
  };
}

export function usePart(): PartState {
  const [complaining, setComplaining] = useState<ReadonlySet<PartName>>(new Set());
  const [refusals, setRefusals] = useState(0);
  const [touched, setTouched] = useState(false);
  const unit = useUnit();
  const {
    values,
    notes,
    set: write,
    settle: rest,
  } = useAddress(PART_FIELDS, (arrived) => {
    openInUnit(arrived.units, arrived.holes !== '');
    setComplaining(new Set(arrived.holes === '' ? [] : PART_NAMES));
    setRefusals(0);
  });
  const started = PLANNED.some(
    (name) => name !== 'units' && values[name] !== (name === 'drive' ? 'synchronous' : ''),
  );
  const { engine, failed } = useEngine(loadEngine, started || touched);
  const { rested, stale } = useRested(values);
  const drawer = useMemo(() => engine?.shopDrawer(), [engine]);
  const attempt = useMemo(
    () => engine?.attempt(rested, unit, drawer) ?? null,
    [engine, rested, unit, drawer],
  );

  useUnitChosen((next) => {
    if (!started) return;
    write(restated(values, next === 'mm' ? 'in' : 'mm', next));
    rest();
  });

  const latest = useRef(values);
  latest.current = values;
  const units = unit === 'in' ? 'in' : '';
  const set = useCallback(
    (name: PartName, value: string) => {
      const { holes, changes, lines } = latest.current;
      const followed = name === 'holes' ? followHoles({ holes, changes, lines }, value) : {};
      const another = name === 'holes' && !sameTable(holes, value) ? { columns: '' } : {};
      const grouped = name === 'designation' ? engine?.designationChanges(value) : undefined;
      write({ ...followed, ...another, [name]: value, ...grouped, units });
    },
    [write, units, engine],
  );
  const change = useCallback(
    (number: number, name: ChangeName, value: string) => {
      const changes = readChanges(latest.current.changes);
      const next = { ...changes, [number]: { ...changes[number], [name]: value } };
      write({ changes: writeChanges(next), units });
    },
    [write, units],
  );

  const say = useCallback(
    (line: number, word: Said, holds: boolean) => {
      const said = sayOf(readLines(latest.current.lines), line, word, holds);
      write({ lines: writeLines(said), units });
      rest();
    },
    [write, rest, units],
  );
  const setColumn = useCallback(
    (at: number, kind: ColumnKind) => {
      const columns = readColumns(latest.current.columns);
      const next = Array.from({ length: Math.max(columns.length, at + 1) }, (_, each) =>
        each === at ? kind : columns[each],
      );
      write({ columns: writeColumns(next), units });
      rest();
    },
    [write, rest, units],
  );

  const settle = useCallback(
    (name: PartName) => {
      setComplaining((before) => new Set(before).add(name));
      rest();
    },
    [rest],
  );

  const shown = (attempt?.problems ?? []).filter(({ field }) => complaining.has(field));
  return {
    engine,
    failed,
    values,
    notes,
    unit,
    started,
    attempt,
    stale,
    shown,
    refusals,
    set,
    change,
    say,
    setColumn,
    settle,
    put: (next) => {
      const all = { ...initialValues(PART_FIELDS), ...next };
      const from: Unit = all.units === 'in' ? 'in' : 'mm';
      write(from === unit ? all : { ...all, ...restated(all, from, unit) });
      rest();
      setComplaining(new Set(all.holes === '' ? [] : PART_NAMES));
      setRefusals(0);
    },
    submit: () => {
      setTouched(true);
      setComplaining(new Set(PART_NAMES));
      rest();
      const problems = attempt?.problems.length ?? 0;
      if (problems > 0) setRefusals((count) => count + 1);
      return attempt !== null && problems === 0;
    },
    touch: () => setTouched(true),
  };
}

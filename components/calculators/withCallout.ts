/** A callout in a calculator's thread field counts at each keystroke, before the field is left. */

import type { Unit } from '../words/format';
import type { Engine, Inputs, ValuesOf } from './calculator';

export interface ReadCallout<Name extends string> {
  name: Name;
  /** What the thread's field holds now. */
  typed: Partial<ValuesOf<Name>>;
  /** What all fields hold once the thread's is left. */
  filled: Partial<ValuesOf<Name>>;
}

/** The values with those of a callout in their places, the thread alone in its own. */
export function withCallout<Name extends string, Answer>(
  { kinds, callout = {} }: Inputs<Name>,
  engine: Pick<Engine<Name, Answer>, 'fromCallout'>,
  values: ValuesOf<Name>,
  unit: Unit,
): { values: ValuesOf<Name>; read: ReadCallout<Name> | null } {
  const name = (Object.keys(kinds) as Name[]).find((each) => kinds[each] === 'thread');
  const read = name === undefined ? null : engine.fromCallout(values[name], unit, callout);
  if (name === undefined || !read) return { values, read: null };
  const others = read.others as Partial<ValuesOf<Name>>;
  const of = (thread: string) => ({ [name]: thread }) as Partial<ValuesOf<Name>>;
  return {
    values: { ...values, ...others, ...of(read.thread) },
    read: { name, typed: of(values[name]), filled: { ...others, ...of(read.kept) } },
  };
}

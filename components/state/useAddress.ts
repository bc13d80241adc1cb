/**
 * Keeps a form's values in the address bar. One edit is one entry of the history: its first
 * keystroke adds the entry, the rest rewrite it, so Back undoes a field and not a letter.
 */

import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import {
  initialValues,
  readAddress,
  writeAddress,
  type AddressField,
  type AddressNote,
  type Values,
} from './address';

/** Browsers refuse a page that rewrites its address at every keystroke of fast typing. */
const REWRITE_DELAY = 250;

export interface AddressState<Name extends string> {
  values: Values<Name>;
  notes: AddressNote[];
  /** False on the server and until the address has been read. */
  read: boolean;
  /** Counts the times values came from the address rather than from the keyboard. */
  arrivals: number;
  set: (changes: Partial<Values<Name>>) => void;
  /** Ends the edit: the next change adds an entry of its own. */
  settle: () => void;
}

interface Held<Name extends string> {
  values: Values<Name>;
  notes: AddressNote[];
  arrivals: number;
}

/** `fields` must be one constant list. */
export function useAddress<Name extends string>(
  fields: readonly AddressField<Name>[],
): AddressState<Name> {
  const [held, setHeld] = useState<Held<Name>>(() => ({
    values: initialValues(fields),
    notes: [],
    arrivals: 0,
  }));
  const latest = useRef(held.values);
  const editing = useRef(false);
  const timer = useRef<number | undefined>(undefined);

  const rewrite = useCallback(() => {
    window.clearTimeout(timer.current);
    timer.current = undefined;
    const search = writeAddress(latest.current, fields);
    history.replaceState(null, '', location.pathname + search + location.hash);
  }, [fields]);

  useEffect(() => {
    const arrive = () => {
      window.clearTimeout(timer.current);
      timer.current = undefined;
      editing.current = false;
      const { values, notes } = readAddress(location.search, fields);
      latest.current = values;
      setHeld((before) => ({ values, notes, arrivals: before.arrivals + 1 }));
    };
    arrive();
    window.addEventListener('popstate', arrive);
    return () => window.removeEventListener('popstate', arrive);
  }, [fields]);

  const set = useCallback(
    (changes: Partial<Values<Name>>) => {
      latest.current = { ...latest.current, ...changes };
      setHeld((before) => ({ ...before, values: latest.current }));
      if (editing.current) {
        window.clearTimeout(timer.current);
        timer.current = window.setTimeout(rewrite, REWRITE_DELAY);
      } else {
        editing.current = true;
        history.pushState(null, '', location.pathname + writeAddress(latest.current, fields));
      }
    },
    [fields, rewrite],
  );

  const settle = useCallback(() => {
    if (timer.current !== undefined) rewrite();
    editing.current = false;
  }, [rewrite]);

  return { ...held, read: held.arrivals > 0, set, settle };
}

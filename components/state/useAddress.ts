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
  set: (changes: Partial<Values<Name>>) => void;
  /** Ends the edit: the next change adds an entry of its own. */
  settle: () => void;
}

interface Held<Name extends string> {
  values: Values<Name>;
  notes: AddressNote[];
  read: boolean;
}

/**
 * `fields` must be one constant list. `onArrive` hears the values whenever they come from the
 * address: on loading and when the reader goes back or forward.
 */
export function useAddress<Name extends string>(
  fields: readonly AddressField<Name>[],
  onArrive: (values: Values<Name>) => void,
): AddressState<Name> {
  const [held, setHeld] = useState<Held<Name>>(() => ({
    values: initialValues(fields),
    notes: [],
    read: false,
  }));
  const latest = useRef(held.values);
  const editing = useRef(false);
  const timer = useRef<number | undefined>(undefined);
  const arrived = useRef(onArrive);
  arrived.current = onArrive;

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
      setHeld({ values, notes, read: true });
      arrived.current(values);
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

  return { ...held, set, settle };
}

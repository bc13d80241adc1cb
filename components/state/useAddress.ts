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

/**
 * Longest query that every server takes. What is longer stays with this entry of the history: it
 * survives Back and a reload, but not a bookmark, and the page offers a file for it.
 */
const LONGEST = 4000;

/** Whether these values can be kept in an address. */
export function fitsAddress<Name extends string>(
  values: Values<Name>,
  fields: readonly AddressField<Name>[],
): boolean {
  return writeAddress(values, fields).length <= LONGEST;
}

/** The state and query that an entry of the history is given. */
function entryOf<Name extends string>(
  values: Values<Name>,
  fields: readonly AddressField<Name>[],
): { state: { typed: string } | null; search: string } {
  const search = writeAddress(values, fields);
  return search.length <= LONGEST
    ? { state: null, search }
    : { state: { typed: search }, search: '' };
}

/** What was typed on this entry: from its address, or from the entry itself where that was too long. */
function searchOf(): string {
  const state: unknown = history.state;
  const typed = typeof state === 'object' && state !== null && 'typed' in state && state.typed;
  return location.search === '' && typeof typed === 'string' ? typed : location.search;
}

/** Browsers refuse a page that rewrites its address at every keystroke; a slow one feels each of them. */
const REWRITE_DELAY = 600;

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
    const { state, search } = entryOf(latest.current, fields);
    history.replaceState(state, '', location.pathname + search + location.hash);
  }, [fields]);

  useEffect(() => {
    const arrive = () => {
      window.clearTimeout(timer.current);
      timer.current = undefined;
      editing.current = false;
      const { values, notes } = readAddress(searchOf(), fields);
      latest.current = values;
      setHeld({ values, notes, read: true });
      arrived.current(values);
    };
    // Leaving or reloading in the middle of a word: what was typed goes along.
    const leave = () => {
      if (timer.current !== undefined) rewrite();
    };
    arrive();
    window.addEventListener('popstate', arrive);
    window.addEventListener('pagehide', leave);
    return () => {
      window.removeEventListener('popstate', arrive);
      window.removeEventListener('pagehide', leave);
    };
  }, [fields, rewrite]);

  const set = useCallback(
    (changes: Partial<Values<Name>>) => {
      latest.current = { ...latest.current, ...changes };
      setHeld((before) => ({ ...before, values: latest.current }));
      if (editing.current) {
        window.clearTimeout(timer.current);
        timer.current = window.setTimeout(rewrite, REWRITE_DELAY);
      } else {
        editing.current = true;
        const { state, search } = entryOf(latest.current, fields);
        history.pushState(state, '', location.pathname + search);
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

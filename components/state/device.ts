/**
 * What this device keeps between visits: one entry, versioned and checked on reading.
 * A full, blocked or unreadable store never breaks a page: it only forgets. Text that cannot be
 * read is set aside under another key, never dropped. Each save rereads first, so that two open
 * tabs change only what they mean to change.
 */

const KEY = 'tapped-hole-handbook';
const ASIDE = `${KEY}-set-aside`;
const VERSION = 1;

export interface Kept {
  version: typeof VERSION;
  /** Unit of length the reader chose. */
  unit?: 'mm' | 'in';
  /** Torques read on machines; `readings.ts` knows their shape and leaves alone what it cannot read. */
  readings?: unknown[];
}

export type Store = Pick<Storage, 'getItem' | 'setItem'>;

function isKept(data: unknown): data is Kept {
  if (typeof data !== 'object' || data === null) return false;
  const { version, unit, readings } = data as Record<string, unknown>;
  const unitKnown = unit === undefined || unit === 'mm' || unit === 'in';
  const listed = readings === undefined || Array.isArray(readings);
  return version === VERSION && unitKnown && listed;
}

function parse(text: string): Kept | null {
  try {
    const data: unknown = JSON.parse(text);
    return isKept(data) ? data : null;
  } catch {
    return null;
  }
}

/** What is kept; an empty record when there is nothing, or nothing readable. */
export function readKept(store: Store): Kept {
  try {
    const text = store.getItem(KEY);
    if (text === null) return { version: VERSION };
    const kept = parse(text);
    if (kept) return kept;
    if (store.getItem(ASIDE) === null) store.setItem(ASIDE, text);
  } catch {
    // A blocked store throws on touch; the page goes on without memory.
  }
  return { version: VERSION };
}

/** Keeps a change. False when the device would not take it. */
export function keep(store: Store, change: Partial<Omit<Kept, 'version'>>): boolean {
  try {
    store.setItem(KEY, JSON.stringify({ ...readKept(store), ...change }));
    return true;
  } catch {
    return false;
  }
}

/** The browser's store, or null where even asking for it is forbidden. */
export function deviceStore(): Store | null {
  try {
    return window.localStorage;
  } catch {
    return null;
  }
}

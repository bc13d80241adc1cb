/**
 * The one way to keep something in the browser's store. A shelf is one kind of thing under one key: read,
 * changed and written back in one go, so that two tabs change only what they mean to. What cannot be read
 * is set aside under a key of its own, never dropped; a store written by a later version is not touched at
 * all. A store that is full or blocked never breaks a page: the outcome says so.
 */

export type Store = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

export type ShelfRead<Contents> =
  | { state: 'read'; contents: Contents }
  /** Not ours, or broken. */
  | { state: 'damaged' }
  /** Written by a later version. */
  | { state: 'newer' };

export interface Shelf<Contents> {
  key: string;
  empty: Contents;
  read: (text: string) => ShelfRead<Contents>;
  write: (contents: Contents) => string;
}

/** `full`: no room; `blocked`: the browser keeps nothing here; `newer`: a later version wrote it. */
export type Unkept = 'full' | 'blocked' | 'newer';

export type Outcome = 'kept' | Unkept;

export interface OnShelf<Contents> {
  contents: Contents;
  condition: 'good' | Unkept;
  /** Texts that could not be read, oldest first. */
  aside: string[];
}

/** What was set aside, oldest first. The key without a number is the one an earlier version used. */
function setAsides(store: Store, key: string): { key: string; text: string }[] {
  const found: { key: string; text: string }[] = [];
  const older = store.getItem(`${key}-set-aside`);
  if (older !== null) found.push({ key: `${key}-set-aside`, text: older });
  for (let number = 1; ; number += 1) {
    const text = store.getItem(`${key}-set-aside-${number}`);
    if (text === null) return found;
    found.push({ key: `${key}-set-aside-${number}`, text });
  }
}

/** Sets a text aside; false when there is no room for it. */
function setAside(store: Store, key: string, text: string): boolean {
  if (setAsides(store, key).some((each) => each.text === text)) return true;
  let number = 1;
  while (store.getItem(`${key}-set-aside-${number}`) !== null) number += 1;
  try {
    store.setItem(`${key}-set-aside-${number}`, text);
    return true;
  } catch {
    return false;
  }
}

/** What is kept, and how the store stands. Never throws. */
export function openShelf<Contents>(
  store: Store | null,
  { key, empty, read }: Shelf<Contents>,
): OnShelf<Contents> {
  const blocked: OnShelf<Contents> = { contents: empty, condition: 'blocked', aside: [] };
  if (!store) return blocked;
  try {
    const text = store.getItem(key);
    const found = text === null ? null : read(text);
    // Without room to set it aside it stays where it is, and nothing is written over it.
    const stuck = found?.state === 'damaged' && !setAside(store, key, text!);
    if (found?.state === 'damaged' && !stuck) store.removeItem(key);
    return {
      contents: found?.state === 'read' ? found.contents : empty,
      condition: stuck ? 'full' : found?.state === 'newer' ? 'newer' : 'good',
      aside: [...setAsides(store, key).map((each) => each.text), ...(stuck ? [text!] : [])],
    };
  } catch {
    return blocked;
  }
}

/** Changes what is kept now, whatever another tab has done meanwhile, and says what came of it. */
export function changeShelf<Contents>(
  store: Store | null,
  shelf: Shelf<Contents>,
  change: (contents: Contents) => Contents,
): Outcome {
  const { contents, condition } = openShelf(store, shelf);
  if (!store || condition !== 'good') return condition === 'good' ? 'blocked' : condition;
  const text = shelf.write(change(contents));
  try {
    store.setItem(shelf.key, text);
    return 'kept';
  } catch {
    return 'full';
  }
}

/** Forgets texts that could not be read, once they were offered as a file; one that was not stays. */
export function forgetAside(store: Store, key: string, offered: readonly string[]): void {
  try {
    const held = setAsides(store, key);
    if (!held.every(({ text }) => offered.includes(text))) return;
    for (const each of held.reverse()) store.removeItem(each.key);
    // There was no room to set this one aside.
    if (offered.includes(store.getItem(key) ?? '')) store.removeItem(key);
  } catch {
    // A store that is blocked holds nothing to forget.
  }
}

/** Clears a shelf and what was set aside of it; a later version's is left alone. */
export function clearShelf<Contents>(
  store: Store | null,
  shelf: Shelf<Contents>,
  offered: readonly string[],
): Outcome {
  const { condition } = openShelf(store, shelf);
  if (!store || condition === 'blocked' || condition === 'newer') {
    return condition === 'newer' ? 'newer' : 'blocked';
  }
  forgetAside(store, shelf.key, offered);
  try {
    if (condition === 'good') store.removeItem(shelf.key);
    return 'kept';
  } catch {
    return 'blocked';
  }
}

/** The browser's store, or null where even asking for it is forbidden. */
export function browserStore(): Store | null {
  try {
    return window.localStorage;
  } catch {
    return null;
  }
}

/**
 * One kind of thing in the browser's store: read, changed and written back in one go, so that two tabs
 * change only what they mean to. What cannot be read is set aside under a key of its own, never dropped; a
 * store written by a later version is not touched at all. Nothing here throws.
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

/** `blocked`: the browser keeps nothing here. */
export type Condition = 'good' | 'blocked' | 'newer';

export interface OnShelf<Contents> {
  contents: Contents;
  condition: Condition;
  /** Texts that were set aside, oldest first. */
  aside: string[];
}

export type Outcome = 'kept' | 'full' | 'blocked' | 'newer';

const asideKey = (key: string, number: number): string => `${key}-set-aside-${number}`;

function asideTexts(store: Store, key: string): string[] {
  const texts: string[] = [];
  for (let number = 1; ; number += 1) {
    const text = store.getItem(asideKey(key, number));
    if (text === null) return texts;
    texts.push(text);
  }
}

/** Sets a text aside; false when there is no room for it. */
function setAside(store: Store, key: string, text: string): boolean {
  const held = asideTexts(store, key);
  if (held.includes(text)) return true;
  try {
    store.setItem(asideKey(key, held.length + 1), text);
    return true;
  } catch {
    return false;
  }
}

/** What is kept, and how the store stands. */
export function openShelf<Contents>(
  store: Store | null,
  shelf: Shelf<Contents>,
): OnShelf<Contents> {
  const blocked: OnShelf<Contents> = { contents: shelf.empty, condition: 'blocked', aside: [] };
  if (!store) return blocked;
  try {
    const text = store.getItem(shelf.key);
    const read = text === null ? null : shelf.read(text);
    if (read?.state === 'newer') return { ...blocked, condition: 'newer' };
    if (read?.state === 'damaged') {
      // Without room to set it aside it stays where it is, and nothing is written over it.
      if (!setAside(store, shelf.key, text!)) return { ...blocked, aside: [text!] };
      store.removeItem(shelf.key);
    }
    const contents = read?.state === 'read' ? read.contents : shelf.empty;
    return { contents, condition: 'good', aside: asideTexts(store, shelf.key) };
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
  if (!store || condition !== 'good') return condition === 'newer' ? 'newer' : 'blocked';
  try {
    store.setItem(shelf.key, shelf.write(change(contents)));
    return 'kept';
  } catch {
    return 'full';
  }
}

/** Forgets what was set aside; the reader has been offered it as a file. */
export function forgetAside(store: Store, key: string): void {
  try {
    for (let number = asideTexts(store, key).length; number > 0; number -= 1) {
      store.removeItem(asideKey(key, number));
    }
  } catch {
    // A store that is blocked holds nothing to forget.
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

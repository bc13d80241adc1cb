/** A shelf as a page sees it: read again whenever this tab or another has changed it. */

import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import {
  browserStore,
  changeShelf,
  clearShelf,
  forgetAside,
  openShelf,
  type OnShelf,
  type Outcome,
  type Shelf,
  type Unkept,
} from './shelf';

export interface Shelved<Contents> extends OnShelf<Contents> {
  /** False on the server and until the store has been read. */
  ready: boolean;
  /** What the last change would have made, and why it was not kept; null when it was. */
  unsaved: { why: Unkept; contents: Contents } | null;
  change: (change: (contents: Contents) => Contents) => Outcome;
  forgetAside: () => void;
  clear: () => Outcome;
}

const onlyKept = <Contents>(kept: Contents): Contents => kept;

/** `join` tries again, with each change, what could not be kept before. */
export function useShelf<Contents>(
  shelf: Shelf<Contents>,
  join: (kept: Contents, unsaved: Contents) => Contents = onlyKept,
): Shelved<Contents> {
  const [opened, setOpened] = useState<OnShelf<Contents>>({
    contents: shelf.empty,
    condition: 'good',
    aside: [],
  });
  const [ready, setReady] = useState(false);
  const [unsaved, setUnsaved] = useState<Shelved<Contents>['unsaved']>(null);
  /** As `unsaved`, for a change that comes before the next drawing. */
  const held = useRef(unsaved);
  const hold = useCallback((next: Shelved<Contents>['unsaved']) => {
    held.current = next;
    setUnsaved(next);
  }, []);

  const reread = useCallback(() => setOpened(openShelf(browserStore(), shelf)), [shelf]);
  useEffect(() => {
    reread();
    setReady(true);
    const hear = ({ key }: StorageEvent) => {
      if (key === null || key.startsWith(shelf.key)) reread();
    };
    window.addEventListener('storage', hear);
    return () => window.removeEventListener('storage', hear);
  }, [reread, shelf]);

  const change = useCallback(
    (make: (contents: Contents) => Contents) => {
      const store = browserStore();
      const before = held.current;
      const whole = (kept: Contents) => make(before ? join(kept, before.contents) : kept);
      const why = changeShelf(store, shelf, whole);
      hold(why === 'kept' ? null : { why, contents: whole(openShelf(store, shelf).contents) });
      reread();
      return why;
    },
    [reread, shelf, join, hold],
  );

  return {
    ...opened,
    ready,
    unsaved,
    change,
    forgetAside: () => {
      const store = browserStore();
      if (store) forgetAside(store, shelf.key, opened.aside);
      reread();
    },
    clear: () => {
      const outcome = clearShelf(browserStore(), shelf, opened.aside);
      if (outcome === 'kept') hold(null);
      reread();
      return outcome;
    },
  };
}

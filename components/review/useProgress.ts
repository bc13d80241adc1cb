/**
 * What is kept of the review, as the page sees it. Where the browser will not keep it, this visit's progress
 * stands in the page, the page says so, and it can still be saved to a file.
 */

import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import {
  browserStore,
  changeShelf,
  forgetAside,
  openShelf,
  type OnShelf,
  type Outcome,
} from '../state/shelf';
import { joined } from './progress';
import { EMPTY, KEY, SHELF, type Progress } from './shape';

export interface ProgressState extends OnShelf<Progress> {
  /** False on the server and until the store has been read. */
  ready: boolean;
  /** Why the last change was not kept on the device; null when it was. */
  unsaved: Exclude<Outcome, 'kept'> | null;
  change: (change: (progress: Progress) => Progress) => void;
  forgetAside: () => void;
  clear: () => void;
}

export function useProgress(): ProgressState {
  const [opened, setOpened] = useState<OnShelf<Progress>>({
    contents: EMPTY,
    condition: 'good',
    aside: [],
  });
  const [ready, setReady] = useState(false);
  const [unsaved, setUnsaved] = useState<ProgressState['unsaved']>(null);
  /** This visit's progress where it could not be kept: it then counts, and not what the store says. */
  const held = useRef<Progress | null>(null);

  const reread = useCallback(() => {
    const now = openShelf(browserStore(), SHELF);
    setOpened(held.current ? { ...now, contents: held.current } : now);
  }, []);

  useEffect(() => {
    reread();
    setReady(true);
    const hear = ({ key }: StorageEvent) => {
      if (key === null || key.startsWith(KEY)) reread();
    };
    window.addEventListener('storage', hear);
    return () => window.removeEventListener('storage', hear);
  }, [reread]);

  const change = useCallback(
    (make: (progress: Progress) => Progress) => {
      const store = browserStore();
      // What could not be kept before is tried again with every change, as a whole.
      const before = held.current;
      const whole = (kept: Progress) => make(before ? joined(kept, before) : kept);
      const outcome = changeShelf(store, SHELF, whole);
      held.current = outcome === 'kept' ? null : whole(openShelf(store, SHELF).contents);
      setUnsaved(outcome === 'kept' ? null : outcome);
      reread();
    },
    [reread],
  );

  return {
    ...opened,
    ready,
    unsaved,
    change,
    forgetAside: () => {
      const store = browserStore();
      if (store) forgetAside(store, KEY);
      reread();
    },
    clear: () => {
      held.current = null;
      const store = browserStore();
      try {
        store?.removeItem(KEY);
        if (store) forgetAside(store, KEY);
      } catch {
        // Nothing was kept there.
      }
      setUnsaved(null);
      reread();
    },
  };
}

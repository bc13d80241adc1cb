/** What is kept, as the page sees it: read again whenever this tab or another has changed it. */

import { useCallback, useEffect, useState } from 'preact/hooks';
import { TEXT } from '../words/en/jobs';
import { EMPTY, type Contents } from './shape';
import {
  forgetAside,
  KEY,
  keepChange,
  openJobs,
  type Change,
  type Opened,
  type Store,
} from './store';

export interface JobsState extends Opened {
  /** False on the server and until the store has been read. */
  ready: boolean;
  /** What the last change came to, for beside the buttons. */
  said: string;
  say: (text: string) => void;
  change: (change: Change, done?: string) => boolean;
  forgetAside: () => void;
  clear: () => void;
  read: () => Contents;
}

/** The browser's store, or null where even asking for it is forbidden. */
export function jobStore(): Store | null {
  try {
    return window.localStorage;
  } catch {
    return null;
  }
}

/** What to say of a change that was made, or could not be. */
export function keptText(
  kept: ReturnType<typeof keepChange>,
  done: string,
  twice: string = TEXT.twice,
): string {
  if (kept.ok) return kept.twice ? twice : done;
  return { full: TEXT.full, blocked: TEXT.notSaved, newer: TEXT.notSavedNewer }[kept.why];
}

export function useJobs(): JobsState {
  const [opened, setOpened] = useState<Opened>({ contents: EMPTY, standing: 'good', aside: [] });
  const [ready, setReady] = useState(false);
  const [said, say] = useState('');
  const reread = useCallback(() => setOpened(openJobs(jobStore())), []);
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
    (next: Change, done: string = TEXT.kept) => {
      const kept = keepChange(jobStore(), next);
      say(keptText(kept, done, next.kind === 'drawer' ? TEXT.drawerJoined : TEXT.twice));
      reread();
      return kept.ok;
    },
    [reread],
  );
  return {
    ...opened,
    ready,
    said,
    say,
    change,
    forgetAside: () => {
      const store = jobStore();
      if (store) forgetAside(store);
      reread();
    },
    clear: () => {
      const store = jobStore();
      if (!store) return;
      forgetAside(store);
      store.removeItem(KEY);
      say(TEXT.removed);
      reread();
    },
    read: () => openJobs(jobStore()).contents,
  };
}

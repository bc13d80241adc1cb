/** The jobs as the page sees them, and what the last change came to. */

import { useState } from 'preact/hooks';
import { useShelf, type Shelved } from '../state/useShelf';
import { TEXT } from '../words/en/jobs';
import { KEEPING } from '../words/en/keeping';
import { JOBS, type Contents } from './shape';
import { keepBy, type Change, type Kept } from './store';

export interface JobsState extends Omit<Shelved<Contents>, 'change' | 'clear'> {
  /** What the last change came to, for beside the buttons. */
  said: string;
  say: (text: string) => void;
  change: (change: Change, done?: string) => boolean;
  clear: () => void;
}

/** What to say of a change that was made, or could not be. */
export function keptText(kept: Kept, done: string, twice: string = TEXT.twice): string {
  if (kept.ok) return kept.twice ? twice : done;
  return `${KEEPING.unsaved}. ${KEEPING[kept.why]}`;
}

export function useJobs(): JobsState {
  const shelf = useShelf(JOBS);
  const [said, say] = useState('');
  return {
    ...shelf,
    said,
    say,
    change: (next, done = TEXT.kept) => {
      const kept = keepBy(shelf.change, next);
      say(keptText(kept, done, next.kind === 'drawer' ? TEXT.drawerJoined : TEXT.twice));
      return kept.ok;
    },
    clear: () => {
      const outcome = shelf.clear();
      say(outcome === 'kept' ? TEXT.removed : KEEPING[outcome]);
    },
  };
}

/** The sign beside a word: triangle for caution, bar across a disc for stop, i for a note. */

import type { Level } from '../words';

export function Sign({ level }: { level: Level | 'good' }) {
  return (
    <svg class={`sign ${level}`} viewBox="0 0 24 24" aria-hidden="true" focusable="false">
      {level === 'amber' && (
        <>
          <path d="M12 2 23 22H1Z" fill="currentColor" />
          <path d="M12 9v6M12 17.4v2.2" stroke="var(--sheet)" stroke-width="2.4" />
        </>
      )}
      {level === 'stop' && (
        <>
          <path d="M7.4 1h9.2L23 7.4v9.2L16.6 23H7.4L1 16.6V7.4Z" fill="currentColor" />
          <path d="M6.5 12h11" stroke="var(--sheet)" stroke-width="3.4" />
        </>
      )}
      {level === 'note' && (
        <>
          <circle cx="12" cy="12" r="10" fill="none" stroke="currentColor" stroke-width="2.2" />
          <path d="M12 10.5v7M12 6v2.3" stroke="currentColor" stroke-width="2.4" />
        </>
      )}
      {level === 'good' && (
        <path d="M4 12.5 10 18.5 20.5 6" fill="none" stroke="currentColor" stroke-width="3.4" />
      )}
    </svg>
  );
}

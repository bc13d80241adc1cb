/** Something one step away: opened by a tall line, closed again by the same. */

import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';

export interface FoldProps {
  summary: string;
  /** Opens it when it turns true. Only the reader closes it: never under their fingers. */
  open?: boolean;
  /**
   * Draws the inside only once it is opened, so that long tables cost nothing at each keystroke.
   * Plain HTML from the server always holds it all. Not for parts of an island that is hydrated.
   */
  late?: boolean;
  children: ComponentChildren;
}

const ON_SERVER = typeof document === 'undefined';

export function Fold({ summary, open = false, late = false, children }: FoldProps) {
  const [shown, setShown] = useState(open);
  useEffect(() => {
    if (open) setShown(true);
  }, [open]);
  return (
    <details class="fold" open={shown} onToggle={(event) => setShown(event.currentTarget.open)}>
      <summary>{summary}</summary>
      <div>{(shown || ON_SERVER || !late) && children}</div>
    </details>
  );
}

/** Something one step away: opened by a tall line, closed again by the same. */

import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';

export interface FoldProps {
  summary: string;
  /** Opens it when it turns true. Only the reader closes it: never under their fingers. */
  open?: boolean;
  children: ComponentChildren;
}

export function Fold({ summary, open = false, children }: FoldProps) {
  const [shown, setShown] = useState(open);
  useEffect(() => {
    if (open) setShown(true);
  }, [open]);
  return (
    <details class="fold" open={shown} onToggle={(event) => setShown(event.currentTarget.open)}>
      <summary>{summary}</summary>
      <div>{children}</div>
    </details>
  );
}

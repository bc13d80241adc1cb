/** Something one step away: opened by a tall line, closed again by the same. */

import type { ComponentChildren } from 'preact';

export interface FoldProps {
  summary: string;
  open?: boolean;
  children: ComponentChildren;
}

export function Fold({ summary, open, children }: FoldProps) {
  return (
    <details class="fold" open={open}>
      <summary>{summary}</summary>
      <div>{children}</div>
    </details>
  );
}

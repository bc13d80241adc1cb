/** Something one step away: opened by a tall line, closed again by the same. */

import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';

export interface FoldProps {
  summary: string;
  /** Opens it when it turns true. Only the reader closes it: never under their fingers. */
  open?: boolean;
  /**
   * When the inside is drawn. `at-opening`: only once opened, so that what nobody looks at costs
   * nothing at each keystroke. `at-opening-live`: the same in a browser, while plain HTML from
   * the server holds it all; not for an island that is hydrated, which must find what it draws.
   */
  drawn?: 'at-once' | 'at-opening' | 'at-opening-live';
  children: ComponentChildren;
}

const ON_SERVER = typeof document === 'undefined';

export function Fold({ summary, open = false, drawn = 'at-once', children }: FoldProps) {
  const [shown, setShown] = useState(open);
  const [seen, setSeen] = useState(open);
  const show = (now: boolean) => {
    setShown(now);
    if (now) setSeen(true);
  };
  useEffect(() => {
    if (open) show(true);
  }, [open]);
  const inside = seen || drawn === 'at-once' || (drawn === 'at-opening-live' && ON_SERVER);
  return (
    <details class="fold" open={shown} onToggle={(event) => show(event.currentTarget.open)}>
      <summary>{summary}</summary>
      <div>{inside && children}</div>
    </details>
  );
}

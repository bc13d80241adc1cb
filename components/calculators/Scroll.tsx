/** A table that may be wider than a phone: it scrolls by itself, by keyboard too. */

import type { ComponentChildren } from 'preact';

export function Scroll({ label, children }: { label: string; children: ComponentChildren }) {
  return (
    // A region that scrolls must be reachable by keyboard.
    // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex
    <div class="scroll" tabIndex={0} role="region" aria-label={label}>
      {children}
    </div>
  );
}

/** A link that puts the reader into a field, opening the fold it may lie in. */

import type { ComponentChildren } from 'preact';
import { fieldId } from './field';

function focusField(name: string): void {
  const control = document.getElementById(fieldId(name));
  control?.closest('details')?.setAttribute('open', '');
  control?.focus();
}

export function FieldLink({ field, children }: { field: string; children: ComponentChildren }) {
  return (
    <a
      href={`#${fieldId(field)}`}
      onClick={(event) => {
        // The address keeps the inputs; a fragment would only be one more thing in it.
        event.preventDefault();
        focusField(field);
      }}
    >
      {children}
    </a>
  );
}

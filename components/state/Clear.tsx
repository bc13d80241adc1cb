/** Clearing what is kept: it asks first, and offers the file. */

import { useState } from 'preact/hooks';
import { KEEPING } from '../words/en/keeping';

interface Props {
  label: string;
  /** What goes, in a sentence. */
  ask: string;
  onSave: () => void;
  onClear: () => void;
}

export function Clear({ label, ask, onSave, onClear }: Props) {
  const [asking, setAsking] = useState(false);
  if (!asking) {
    return (
      <button type="button" class="link-button" onClick={() => setAsking(true)}>
        {label}
      </button>
    );
  }
  const clear = () => {
    onClear();
    setAsking(false);
  };
  return (
    <div role="group" aria-label={label}>
      <p>{ask}</p>
      <p class="actions">
        <button type="button" class="button plain" onClick={onSave}>
          {KEEPING.save}
        </button>
        <button type="button" class="button plain" onClick={clear}>
          {KEEPING.clearSure}
        </button>
        <button type="button" class="link-button" onClick={() => setAsking(false)}>
          {KEEPING.leave}
        </button>
      </p>
    </div>
  );
}

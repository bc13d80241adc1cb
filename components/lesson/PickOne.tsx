/** One choice, and what it comes to: the numbers were worked out by the core while the page was built. */

import { useState } from 'preact/hooks';
import { ChoiceField } from '../fields/ChoiceField';
import { ShareBar } from '../result/ShareBar';
import { useUnit } from '../state/units';
import type { Unit } from '../words/format';

export interface Pick {
  value: string;
  label: string;
  /** What it comes to, in either unit. */
  said: Record<Unit, string>;
  share?: { sharp: number; worn: number };
}

export interface PickOneProps {
  name: string;
  label: string;
  picks: readonly Pick[];
}

export function PickOne({ name, label, picks }: PickOneProps) {
  const unit = useUnit();
  const [value, setValue] = useState(picks[0]?.value ?? '');
  const picked = picks.find((each) => each.value === value);
  return (
    <div class="explorer">
      <div class="explorer-controls needs-script">
        <ChoiceField name={name} label={label} value={value} choices={picks} onInput={setValue} />
      </div>
      <div class="told" role="status">
        <p>{picked?.said[unit]}</p>
        {picked?.share && <ShareBar {...picked.share} />}
      </div>
    </div>
  );
}

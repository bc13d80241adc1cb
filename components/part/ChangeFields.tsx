/** What differs for one hole: empty means as the part. */

import { SelectField } from '../fields/SelectField';
import { TextField } from '../fields/TextField';
import { materialGroups, materialName, type Unit } from '../words';
import type { ChangeName, Changes } from './inputs';
import type { Said, SaidOfLines } from './lines';
import { LABELS, TEXT } from '../words/en/part';

export interface ChangeProps {
  changes: Changes;
  unit: Unit;
  onChange: (number: number, name: ChangeName, value: string) => void;
  onSettle: () => void;
  /** What was said of single lines, and how to say more. */
  said: SaidOfLines;
  onSay: (line: number, word: Said, holds: boolean) => void;
  /** The lines are rows of a table, none of which belongs to another. */
  table: boolean;
}

const GROUPS = materialGroups.map(({ label, ids }) => ({
  label,
  choices: ids.map((value) => ({ value, label: materialName(value) })),
}));

export function ChangeFields(props: ChangeProps & { number: number }) {
  const { number, changes, unit, onChange, onSettle } = props;
  const bind = (name: ChangeName) => ({
    name: `${name}-${number}`,
    value: changes[number]?.[name] ?? '',
    onInput: (value: string) => onChange(number, name, value),
    onSettle,
  });
  return (
    <div class="row level">
      <SelectField
        {...bind('material')}
        label={LABELS.material}
        empty={TEXT.sameAsPart}
        groups={GROUPS}
      />
      <TextField
        {...bind('thickness')}
        label={LABELS.thickness}
        unit={unit}
        digits={unit === 'mm'}
      />
      <TextField {...bind('torque')} label={LABELS.torque} unit="N·m" />
    </div>
  );
}

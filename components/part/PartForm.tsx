/** The part's fields: the callouts, what holds for all of them, what stands on the sheet. */

import { Fold } from '../fields/Fold';
import { MachineSelect, spindleInputs } from '../jobs/MachineSelect';
import { SelectField } from '../fields/SelectField';
import { TextArea } from '../fields/TextArea';
import { TextField } from '../fields/TextField';
import { readLength } from '../fields/readLength';
import { readTorque } from '../fields/readTorque';
import { length, torque, type Unit } from '../words/format';
import { driveName, materialGroups, materialName } from '../words/names';
import { DRIVES, HEAD_NAMES, linesOf, type PartName } from './inputs';
import { LABELS, TEXT } from '../words/en/part';
import { problemText } from './problemText';
import type { PartState } from './usePart';

const GROUPS = materialGroups.map(({ label, ids }) => ({
  label,
  choices: ids.map((value) => ({ value, label: materialName(value) })),
}));

function lengthReading(text: string, unit: Unit): string {
  const read = readLength(text, unit);
  if (!read) return '';
  return `${length(read.mm, unit)} = ${length(read.mm, unit === 'mm' ? 'in' : 'mm')}`;
}

function torqueReading(text: string): string {
  const read = readTorque(text);
  return read === null ? '' : torque(read, 'in');
}

export function PartForm({ part }: { part: PartState }) {
  const { values, unit, set, settle, shown } = part;
  const bind = (name: PartName) => {
    const problem = shown.find(({ field }) => field === name);
    return {
      name,
      label: LABELS[name],
      value: values[name],
      onInput: (value: string) => set(name, value),
      onSettle: () => settle(name),
      ...(problem ? { problem: problemText(problem, unit) } : {}),
    };
  };
  const rows = Math.min(14, Math.max(6, linesOf(values.holes).length + 1));
  return (
    <>
      <TextArea {...bind('holes')} hint={TEXT.holesHint} rows={rows} />
      {part.engine && part.attempt?.table && (
        <part.engine.TableColumns table={part.attempt.table} onChoose={part.setColumn} />
      )}
      <SelectField {...bind('material')} empty={TEXT.chooseMaterial} groups={GROUPS} />
      <TextField
        {...bind('designation')}
        optional
        reading={
          part.engine && values.designation.trim() !== ''
            ? part.engine.materialReadText(values.designation, values.material)
            : TEXT.designationLike
        }
      />
      <TextField
        {...bind('thickness')}
        unit={unit}
        digits={unit === 'mm'}
        reading={lengthReading(values.thickness, unit) || TEXT.noThickness}
      />
      <MachineSelect
        value={values.machine}
        onChoose={(machine) => part.put({ ...values, ...spindleInputs(machine) })}
      />
      <div class="row level wide-first">
        <SelectField
          {...bind('drive')}
          choices={DRIVES.map((value) => ({ value, label: driveName(value) }))}
        />
        {values.drive !== 'hand' && (
          <TextField
            {...bind('torque')}
            unit="N·m"
            reading={torqueReading(values.torque) || TEXT.noTorque}
          />
        )}
      </div>
      {values.drive !== 'hand' && <TextField {...bind('rpm')} unit="rev/min" optional digits />}
      <Fold summary={TEXT.head} open={HEAD_NAMES.some((name) => values[name] !== '')}>
        <p class="hint">{TEXT.headHint}</p>
        <div class="row">
          {HEAD_NAMES.map((name) => (
            <TextField key={name} {...bind(name)} />
          ))}
        </div>
      </Fold>
    </>
  );
}

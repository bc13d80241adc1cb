/** The form: the common case in one screen, the rest one step away. */

import type { ChamferSystem } from '../../core/chamfer/classes';
import type { ThreadSystem } from '../../core/thread/thread';
import { ChoiceField } from '../fields/ChoiceField';
import { MachineSelect, spindleInputs } from '../jobs/MachineSelect';
import { SelectField } from '../fields/SelectField';
import { TextField, type TextFieldProps } from '../fields/TextField';
import { UnitOffer } from '../state/UnitOffer';
import type { Unit } from '../words/format';
import { driveName, materialGroups, materialName } from '../words/names';
import type { InputName, Inputs } from './inputs';
import { LABELS, TEXT } from '../words/en/planner';

/** What the fields need of the planner. */
export interface FormState {
  values: Inputs;
  unit: Unit;
  /** Of the thread that was typed; metric until one was. */
  system: ThreadSystem;
  /** Whose chamfer classes that thread’s taps have. */
  chamfers: ChamferSystem;
  set: (name: InputName, value: string) => void;
  settle: (name: InputName) => void;
  /** The complaint to show at a field, if it is time to complain. */
  problem: (name: InputName) => string | undefined;
  /** How a field was understood. */
  reading: (name: InputName) => string;
}

/** The props that every field shares. */
export function bind({ values, set, settle, problem }: FormState, name: InputName) {
  const complaint = problem(name);
  return {
    name,
    label: LABELS[name],
    value: values[name],
    onInput: (value: string) => set(name, value),
    onSettle: () => settle(name),
    ...(complaint ? { problem: complaint } : {}),
  };
}

/** A typed length with its unit behind it and both units under it. */
export function LengthField({
  form,
  name,
  empty,
  ...rest
}: { form: FormState; name: InputName; empty?: string } & Partial<TextFieldProps>) {
  return (
    <TextField
      {...bind(form, name)}
      unit={form.unit}
      digits={form.unit === 'mm'}
      reading={form.reading(name) || empty || ''}
      {...rest}
    />
  );
}

/** Where depths count from, said at the field once it is no longer the face. */
function datumHint({ values }: FormState): Pick<TextFieldProps, 'hint'> {
  return values['bore-diameter'].trim() === '' ? {} : { hint: TEXT.fromFloor };
}

const DRIVES = ['synchronous', 'floating', 'reversing-head', 'hand'] as const;

function BlindFields({ form }: { form: FormState }) {
  return (
    <>
      <div class="row level">
        <LengthField form={form} name="depth" empty={TEXT.usual} />
        <LengthField form={form} name="limit" empty={TEXT.noLimit} {...datumHint(form)} />
      </div>
      <ChoiceField
        {...bind(form, 'at')}
        choices={[
          { value: 'shoulder', label: TEXT.shoulder },
          { value: 'point', label: TEXT.point },
        ]}
      />
    </>
  );
}

function ThroughFields({ form }: { form: FormState }) {
  return (
    <>
      <div class="row level">
        <LengthField form={form} name="thickness" {...datumHint(form)} />
        <LengthField form={form} name="below" empty={TEXT.noBelow} />
      </div>
      <ChoiceField
        {...bind(form, 'fall')}
        choices={[
          { value: 'yes', label: TEXT.yes },
          { value: 'no', label: TEXT.no },
        ]}
      />
    </>
  );
}

function SpindleFields({ form }: { form: FormState }) {
  const byHand = form.values.drive === 'hand';
  return (
    <div class="row level wide-first">
      <SelectField
        {...bind(form, 'drive')}
        choices={DRIVES.map((value) => ({ value, label: driveName(value) }))}
      />
      {!byHand && (
        <TextField
          {...bind(form, 'torque')}
          unit="N·m"
          reading={form.reading('torque') || TEXT.noTorque}
        />
      )}
    </div>
  );
}

export function PlannerForm({ form }: { form: FormState }) {
  const { hole } = form.values;
  return (
    <>
      <TextField
        {...bind(form, 'thread')}
        large
        reading={form.reading('thread') || TEXT.threadLike}
      />
      <UnitOffer
        typed={form.reading('thread') === '' ? '' : form.values.thread}
        field="thread"
        likely={form.system === 'metric' ? 'mm' : 'in'}
        unit={form.unit}
      />
      <ChoiceField
        {...bind(form, 'hole')}
        choices={[
          { value: 'blind', label: TEXT.blind },
          { value: 'through', label: TEXT.through },
        ]}
      />
      {hole === 'through' ? <ThroughFields form={form} /> : <BlindFields form={form} />}
      <SelectField
        {...bind(form, 'material')}
        empty={TEXT.chooseMaterial}
        groups={materialGroups.map(({ label, ids }) => ({
          label,
          choices: ids.map((value) => ({ value, label: materialName(value) })),
        }))}
      />
      <TextField
        {...bind(form, 'designation')}
        optional
        reading={form.reading('designation') || TEXT.designationLike}
      />
      <MachineSelect
        value={form.values.machine}
        onChoose={(machine) => {
          for (const [name, value] of Object.entries(spindleInputs(machine))) {
            form.set(name as InputName, value);
          }
          form.settle('drive');
        }}
      />
      <SpindleFields form={form} />
    </>
  );
}

/** The machines of this shop: choosing one fills in its spindle. Not there where none were entered. */

import { useEffect, useState } from 'preact/hooks';
import { SelectField } from '../fields/SelectField';
import { MACHINES } from '../words/en/jobs';
import type { Machine } from './shape';
import { openJobs } from './store';
import { browserStore } from '../state/shelf';

export interface MachineSelectProps {
  /** Name of the machine that is chosen now. */
  value: string;
  onChoose: (machine: Machine) => void;
}

/** A machine as the texts of a form's spindle fields. */
export function spindleInputs(machine: Machine) {
  return {
    drive: machine.drive,
    torque: machine.torque === undefined ? '' : String(machine.torque),
    rpm: machine.rpm === undefined ? '' : String(machine.rpm),
    machine: machine.name,
  };
}

export function MachineSelect({ value, onChoose }: MachineSelectProps) {
  const [machines, setMachines] = useState<readonly Machine[]>([]);
  useEffect(() => setMachines(openJobs(browserStore()).contents.drawer.machines), []);
  if (machines.length === 0) return null;
  return (
    <SelectField
      name="own-machine"
      label={MACHINES.label}
      empty={MACHINES.choose}
      value={machines.some(({ name }) => name === value) ? value : ''}
      onInput={(name) => {
        const machine = machines.find((each) => each.name === name);
        if (machine) onChoose(machine);
      }}
      choices={machines.map(({ name }) => ({ value: name, label: name }))}
    />
  );
}

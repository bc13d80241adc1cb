/** What this shop read on its own machines: kept here, used here, taken away here. */

import { useMemo, useState } from 'preact/hooks';
import { TextField } from '../../fields/TextField';
import { Notice } from '../../result/Notice';
import { NumberList } from '../../result/NumberList';
import { DEVICE, type Kept } from '../../state/device';
import { NotSaved, SetAside } from '../../state/Keeping';
import { readingsOf, withoutReading, withReading, type KeptReading } from '../../state/readings';
import { saveFile } from '../../state/saveFile';
import type { Outcome } from '../../state/shelf';
import { useShelf, type Shelved } from '../../state/useShelf';
import type { Unit } from '../../words/format';
import { HINTS } from '../../words/en/calculators/torque/messages';
import { learnedByMachine, readingText, today } from './learned';
import { SHOP } from '../../words/en/calculators/torque/shop';
import type { TorqueAnswer } from './state';

interface Props {
  answer: TorqueAnswer;
  unit: Unit;
}

/** The readings of this device, and the shelf they stand on. */
export function useReadings() {
  const shelf = useShelf(DEVICE);
  return {
    shelf,
    kept: useMemo(() => readingsOf(shelf.contents), [shelf.contents]),
    remove: (one: KeptReading) => void shelf.change((all) => withoutReading(all, one)),
  };
}

function Keep({ answer, shelf }: { answer: TorqueAnswer; shelf: Shelved<Kept> }) {
  const [machine, setMachine] = useState('');
  const [problem, setProblem] = useState<string | undefined>();
  const [outcome, setOutcome] = useState<Outcome>();
  const { read } = answer;
  if (!read) return <p>{SHOP.none}</p>;
  const reading = { ...read, machine: machine.trim(), taken: today() };
  const send = (event: Event) => {
    event.preventDefault();
    if (reading.machine === '') return setProblem(SHOP.machineMissing);
    setProblem(undefined);
    setOutcome(shelf.change((all) => withReading(all, reading)));
  };
  return (
    <form noValidate autocomplete="off" onSubmit={send} aria-label={SHOP.form}>
      <TextField
        name="machine"
        label={SHOP.machine}
        hint={SHOP.machineHint}
        value={machine}
        onInput={setMachine}
        problem={problem}
      />
      <p class="actions">
        <button type="submit" class="button plain">
          {SHOP.keep}
        </button>
      </p>
      <p role="status">{outcome === 'kept' ? SHOP.kept : ''}</p>
      {outcome && outcome !== 'kept' && (
        <NotSaved
          why={outcome}
          onSave={() =>
            saveFile(SHOP.fileName, JSON.stringify(reading, null, 2), 'application/json')
          }
        />
      )}
    </form>
  );
}

export function Readings(props: {
  kept: readonly KeptReading[];
  unit: Unit;
  onRemove: (one: KeptReading) => void;
}) {
  const { kept, unit, onRemove } = props;
  return (
    <ul class="readings">
      {kept.map((one) => (
        <li key={one.place}>
          {readingText(one.reading, HINTS.edges, unit)}{' '}
          <button type="button" class="link-button" onClick={() => onRemove(one)}>
            {SHOP.remove}
            <span class="unseen"> {readingText(one.reading, HINTS.edges, unit)}</span>
          </button>
        </li>
      ))}
    </ul>
  );
}

export function Shop({ answer, unit }: Props) {
  const { kept, remove, shelf } = useReadings();
  const { thread, request, load, chamfer, fluid } = answer;
  const tap = { thread: thread.designation, request, style: load.style, chamfer, fluid };
  const learned = learnedByMachine(tap, kept, unit);
  return (
    <section class="shop no-print">
      <h2>{SHOP.heading}</h2>
      <SetAside kept={shelf} name="torque-readings" />
      {learned.map(({ machine, title, rows, used, disagree }) => (
        <div key={machine}>
          <h3>{title}</h3>
          {disagree && (
            <Notice level="amber" title={SHOP.disagree}>
              <p>{SHOP.disagreeText}</p>
            </Notice>
          )}
          <NumberList rows={rows} />
          <Readings kept={used} unit={unit} onRemove={remove} />
        </div>
      ))}
      <Keep answer={answer} shelf={shelf} />
    </section>
  );
}

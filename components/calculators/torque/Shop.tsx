/** What this shop read on its own machines: kept here, used here, taken away here. */

import { useEffect, useState } from 'preact/hooks';
import { TextField } from '../../fields/TextField';
import { Notice } from '../../result/Notice';
import { NumberList } from '../../result/NumberList';
import { deviceStore } from '../../state/device';
import { keepReading, keptReadings, removeReading, type KeptReading } from '../../state/readings';
import { saveFile } from '../../state/saveFile';
import type { Unit } from '../../words/format';
import { HINTS } from '../../words/en/calculators/torque/messages';
import { learnedByMachine, readingText, today } from './learned';
import { SHOP } from '../../words/en/calculators/torque/shop';
import type { TorqueAnswer } from './state';

interface Props {
  answer: TorqueAnswer;
  unit: Unit;
}

export function useReadings() {
  const [kept, setKept] = useState<KeptReading[]>([]);
  const refresh = () => {
    const store = deviceStore();
    setKept(store ? keptReadings(store) : []);
  };
  useEffect(() => {
    refresh();
    // Another tab may have kept or removed one.
    window.addEventListener('storage', refresh);
    return () => window.removeEventListener('storage', refresh);
  }, []);
  return { kept, refresh };
}

function Keep({ answer, onKept }: { answer: TorqueAnswer; onKept: () => void }) {
  const [machine, setMachine] = useState('');
  const [problem, setProblem] = useState<string | undefined>();
  const [said, setSaid] = useState<'kept' | 'not-kept' | null>(null);
  const { read } = answer;
  if (!read) return <p>{SHOP.none}</p>;
  const reading = { ...read, machine: machine.trim(), taken: today() };
  const send = (event: Event) => {
    event.preventDefault();
    if (reading.machine === '') return setProblem(SHOP.machineMissing);
    setProblem(undefined);
    const store = deviceStore();
    const taken = store !== null && keepReading(store, reading);
    setSaid(taken ? 'kept' : 'not-kept');
    if (taken) onKept();
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
      <p role="status">{said === 'kept' ? SHOP.kept : ''}</p>
      {said === 'not-kept' && (
        <Notice level="amber" title={SHOP.notKept}>
          <p>{SHOP.notKeptText}</p>
          <p>
            <button
              type="button"
              class="link-button"
              onClick={() =>
                saveFile(SHOP.fileName, JSON.stringify(reading, null, 2), 'application/json')
              }
            >
              {SHOP.saveFile}
            </button>
          </p>
        </Notice>
      )}
    </form>
  );
}

export function Readings(props: {
  kept: readonly KeptReading[];
  unit: Unit;
  onRemoved: () => void;
}) {
  const { kept, unit, onRemoved } = props;
  const remove = (one: KeptReading) => {
    const store = deviceStore();
    if (store) removeReading(store, one);
    onRemoved();
  };
  return (
    <ul class="readings">
      {kept.map((one) => (
        <li key={one.place}>
          {readingText(one.reading, HINTS.edges, unit)}{' '}
          <button type="button" class="link-button" onClick={() => remove(one)}>
            {SHOP.remove}
            <span class="unseen"> {readingText(one.reading, HINTS.edges, unit)}</span>
          </button>
        </li>
      ))}
    </ul>
  );
}

export function Shop({ answer, unit }: Props) {
  const { kept, refresh } = useReadings();
  const { thread, request, load, chamfer, fluid } = answer;
  const tap = { thread: thread.designation, request, style: load.style, chamfer, fluid };
  const learned = learnedByMachine(tap, kept, unit);
  return (
    <section class="shop no-print">
      <h2>{SHOP.heading}</h2>
      {learned.map(({ machine, title, rows, used, disagree }) => (
        <div key={machine}>
          <h3>{title}</h3>
          {disagree && (
            <Notice level="amber" title={SHOP.disagree}>
              <p>{SHOP.disagreeText}</p>
            </Notice>
          )}
          <NumberList rows={rows} />
          <Readings kept={used} unit={unit} onRemoved={refresh} />
        </div>
      ))}
      <Keep answer={answer} onKept={refresh} />
    </section>
  );
}

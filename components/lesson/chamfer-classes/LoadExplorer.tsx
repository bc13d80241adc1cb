import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import type { MaterialId } from '../../../core/material/material';
import { inchToMm } from '../../../core/units';
import { torqueChart } from '../../chart/torqueModel';
import { ChoiceField } from '../../fields/ChoiceField';
import { readPlain } from '../../fields/readNumber';
import { useUnit } from '../../state/units';
import { LOAD } from '../../words/en/chamfers';
import { MATERIALS_SHORT } from '../../words/en/names';
import { fill } from '../../words/template';
import { Guess } from '../Guess';
import { LateChart } from '../LateChart';
import { useArrival } from '../useArrival';
import { CountStepper, LengthStepper } from '../Stepper';
import {
  loadChart,
  loadShare,
  thicknessLimits,
  THREADS,
  type LoadCase,
  type LoadTrial,
} from './load';

export type LoadControl = 'threads' | 'thickness' | 'material';

export interface LoadExplorerProps {
  name: string;
  load: LoadCase;
  start: LoadTrial;
  controls: LoadControl[];
  /** Where a guess is asked for first: what is left of the load between two chamfers. */
  guess?: { question: string; from: number; to: number };
  /** The first case, drawn while the page is built. */
  children?: ComponentChildren;
}

interface ControlsProps extends LoadExplorerProps {
  trial: LoadTrial;
  onChange: (trial: LoadTrial) => void;
}

function Controls({ name, load, start, controls, trial, onChange }: ControlsProps) {
  const unit = useUnit();
  const has = (control: LoadControl) => controls.includes(control);
  return (
    <div class="explorer-controls needs-script">
      {has('material') && (
        <ChoiceField
          name={`${name}-material`}
          label={LOAD.material}
          value={trial.material}
          choices={load.materials.map(({ id }) => ({ value: id, label: MATERIALS_SHORT[id] }))}
          onInput={(material) => onChange({ ...trial, material: material as MaterialId })}
        />
      )}
      <div class="steppers">
        {has('threads') && (
          <CountStepper
            name={`${name}-threads`}
            label={LOAD.chamfer}
            hint={LOAD.chamferHint}
            unit={LOAD.unit}
            value={trial.threads}
            {...THREADS}
            onChange={(threads) => onChange({ ...trial, threads })}
          />
        )}
        {has('thickness') && (
          <LengthStepper
            name={`${name}-thickness`}
            label={LOAD.thickness}
            hint={LOAD.thicknessHint}
            unit={unit}
            value={trial.thickness}
            {...thicknessLimits(load)}
            step={unit === 'mm' ? 1 : inchToMm(0.05)}
            onChange={(thickness) => onChange({ ...trial, thickness })}
          />
        )}
      </div>
      <div class="actions">
        <button type="button" class="button plain" onClick={() => onChange(start)}>
          {LOAD.reset}
        </button>
      </div>
    </div>
  );
}

/** Torque and, under it, the load on each tooth, against the length of the chamfer. */
export function LoadExplorer(props: LoadExplorerProps) {
  const { name, load, start } = props;
  const unit = useUnit();
  const [guess, setGuess] = useState<number | null>(null);
  const [trial, setTrial] = useState(start);
  const told = useArrival<HTMLDivElement>(guess !== null);
  const { model, sentence } = loadChart(load, trial, unit);
  const ready = trial.threads !== null && trial.thickness !== null;
  const share = props.guess && loadShare(load, start, props.guess.from, props.guess.to);
  const verdict = share ? fill(LOAD.guessed, { guess: guess ?? 0, ...share }, unit) : '';
  const asking = share !== undefined && guess === null;
  return (
    <div class="explorer">
      {asking && props.guess && (
        <Guess
          name={name}
          question={props.guess.question}
          answer={fill(LOAD.answer, share, unit)}
          label={LOAD.guessField}
          unit="%"
          read={(text) => {
            const percent = readPlain(text, ['%']);
            return percent !== null && percent >= 1 && percent <= 200 ? percent / 100 : null;
          }}
          complaint={LOAD.guessComplaint}
          onGuess={setGuess}
        />
      )}
      {!asking && <Controls {...props} trial={trial} onChange={setTrial} />}
      <div class="told" role="status" tabIndex={-1} ref={told}>
        {guess !== null && trial === start && <p>{verdict}</p>}
        {ready && <p>{sentence}</p>}
      </div>
      <LateChart
        still={trial === start && unit === 'mm'}
        id={`${name}-chart`}
        chart={torqueChart(model)}
        source={{ text: LOAD.source, href: '/sources/#tap-chip-model' }}
        {...(ready ? {} : { refusal: LOAD.outside })}
      >
        {props.children}
      </LateChart>
    </div>
  );
}

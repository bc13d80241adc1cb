import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import type { LoadedStyle } from '../../../core/plan/tap-load';
import { inchToMm } from '../../../core/units';
import { strokeChart } from '../../chart/strokeModel';
import { ChoiceField } from '../../fields/ChoiceField';
import { readPlain } from '../../fields/readNumber';
import { useUnit } from '../../state/units';
import { STROKES } from '../../words/en/torques';
import { fill } from '../../words/template';
import { Guess } from '../Guess';
import { LateChart } from '../LateChart';
import { LengthStepper } from '../Stepper';
import { useArrival } from '../useArrival';
import { stroked, thicknessLimits, thinShare, type StrokeCase, type StrokeTrial } from './stroke';

export type StrokeControl = 'style' | 'thickness';

export interface StrokeExplorerProps {
  name: string;
  job: StrokeCase;
  start: StrokeTrial;
  controls: StrokeControl[];
  /** Where a guess is asked for first: what is left of the torque in plate of this thickness, mm. */
  guess?: { question: string; plate: number };
  /** The first case without a guess, drawn while the page is built. */
  children?: ComponentChildren;
}

interface ControlsProps extends StrokeExplorerProps {
  trial: StrokeTrial;
  onChange: (trial: StrokeTrial) => void;
}

function Controls({ name, job, start, controls, trial, onChange }: ControlsProps) {
  const unit = useUnit();
  return (
    <div class="explorer-controls needs-script">
      {controls.includes('style') && (
        <ChoiceField
          name={`${name}-style`}
          label={STROKES.style}
          value={trial.style}
          choices={job.taps.map((tap) => ({ value: tap.style, label: tap.name }))}
          onInput={(style) => onChange({ ...trial, style: style as LoadedStyle })}
        />
      )}
      {controls.includes('thickness') && (
        <div class="steppers">
          <LengthStepper
            name={`${name}-thickness`}
            label={STROKES.thickness}
            hint={STROKES.thicknessHint}
            unit={unit}
            value={trial.thickness}
            {...thicknessLimits(job)}
            step={unit === 'mm' ? 1 : inchToMm(0.05)}
            onChange={(thickness) => onChange({ ...trial, thickness })}
          />
        </div>
      )}
      <div class="actions">
        <button type="button" class="button plain" onClick={() => onChange(start)}>
          {STROKES.reset}
        </button>
      </div>
    </div>
  );
}

/** Torque along the stroke of one tap, the tap or the work to be changed. */
export function StrokeExplorer(props: StrokeExplorerProps) {
  const { name, job, start } = props;
  const unit = useUnit();
  const [guess, setGuess] = useState<number | null>(null);
  const [trial, setTrial] = useState(start);
  const told = useArrival<HTMLDivElement>(guess !== null);
  const ready = trial.thickness !== null;
  const { model, sentence } = stroked(job, trial, unit);
  const share = props.guess && thinShare(job, start.style, props.guess.plate);
  const asking = share !== undefined && guess === null;
  return (
    <div class="explorer">
      {asking && props.guess && (
        <Guess
          name={name}
          question={props.guess.question}
          answer={fill(STROKES.answer, share, unit)}
          label={STROKES.guessField}
          unit="%"
          read={(text) => {
            const percent = readPlain(text, ['%']);
            return percent !== null && percent >= 1 && percent <= 200 ? percent / 100 : null;
          }}
          complaint={STROKES.guessComplaint}
          onGuess={(value) => {
            setGuess(value);
            setTrial({ ...start, thickness: props.guess?.plate ?? start.thickness });
          }}
        />
      )}
      {!asking && <Controls {...props} trial={trial} onChange={setTrial} />}
      <div class="told" role="status" tabIndex={-1} ref={told}>
        {share && guess !== null && trial.thickness === props.guess?.plate && (
          <p>{fill(STROKES.guessed, { guess, ...share }, unit)}</p>
        )}
        {!asking && <p>{ready ? sentence : STROKES.outside}</p>}
      </div>
      {ready && !asking && (
        <LateChart
          still={!props.guess && trial === start && unit === 'mm'}
          chart={strokeChart(model)}
          source={{ text: STROKES.source, href: '/sources/#tap-chip-model' }}
        >
          {props.children}
        </LateChart>
      )}
    </div>
  );
}

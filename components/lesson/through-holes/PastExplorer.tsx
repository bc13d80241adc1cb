import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { inchToMm } from '../../../core/units';
import { readLength } from '../../fields/readLength';
import { useUnit } from '../../state/units';
import { PAST } from '../../words/en/through';
import { fill } from '../../words/template';
import { Guess } from '../Guess';
import { CountStepper, LengthStepper } from '../Stepper';
import { useArrival } from '../useArrival';
import { useLate } from '../useLate';
import {
  belowSpan,
  CHAMFER_SPAN,
  factsOf,
  reachOf,
  ready,
  thicknessSpan,
  told,
  type PastCase,
  type PastTrial,
} from './past';

export type PastControl = 'threads' | 'thickness' | 'below';

interface Props {
  name: string;
  at: PastCase;
  start: PastTrial;
  controls: PastControl[];
  /** Where a guess is asked for first: how far past the far side. */
  question?: string;
  /** The first case, drawn while the page is built. */
  children?: ComponentChildren;
}

const loadSection = () => import('../../calculators/Section').then(({ Section }) => ({ Section }));

type ControlsProps = Pick<Props, 'name' | 'at' | 'start' | 'controls'> & {
  trial: PastTrial;
  onChange: (trial: PastTrial) => void;
};

function Controls({ name, at, start, controls, trial, onChange }: ControlsProps) {
  const unit = useUnit();
  const has = (control: PastControl) => controls.includes(control);
  const step = unit === 'mm' ? 1 : inchToMm(0.05);
  return (
    <div class="explorer-controls needs-script">
      <div class="steppers">
        {has('threads') && (
          <CountStepper
            name={`${name}-threads`}
            label={PAST.chamfer}
            hint={PAST.threadsHint}
            unit={PAST.threadsUnit}
            value={trial.threads}
            {...CHAMFER_SPAN}
            onChange={(threads) => onChange({ ...trial, threads })}
          />
        )}
        {has('thickness') && (
          <LengthStepper
            name={`${name}-thickness`}
            label={PAST.thickness}
            hint={PAST.thicknessHint}
            unit={unit}
            value={trial.thickness}
            {...thicknessSpan(at)}
            step={step}
            onChange={(thickness) => onChange({ ...trial, thickness })}
          />
        )}
        {has('below') && (
          <LengthStepper
            name={`${name}-below`}
            label={PAST.below}
            hint={PAST.belowHint}
            unit={unit}
            value={trial.below}
            {...belowSpan(at)}
            step={step}
            onChange={(below) => onChange({ ...trial, below })}
          />
        )}
      </div>
      <div class="actions">
        <button type="button" class="button plain" onClick={() => onChange(start)}>
          {PAST.reset}
        </button>
      </div>
    </div>
  );
}

/** The tap at the end of its travel below a through hole, and what it meets there. */
export function PastExplorer(props: Props) {
  const { name, at, start, question, children } = props;
  const unit = useUnit();
  const [guess, setGuess] = useState<number | null>(null);
  const [trial, setTrial] = useState(start);
  const arrived = useArrival<HTMLDivElement>(guess !== null);
  const asking = question !== undefined && guess === null;
  // As it was drawn while the page was built: nothing to draw again.
  const still = trial === start && unit === 'mm';
  const late = useLate(loadSection, !asking && !still);
  const now = ready(trial);
  const first = ready(start);
  const past = first ? reachOf(at, first).past : 0;
  if (asking && question !== undefined) {
    return (
      <div class="explorer">
        <Guess
          name={name}
          question={question}
          answer={fill(PAST.answer, { past }, unit)}
          label={PAST.guessField}
          unit={unit}
          read={(text) => readLength(text, unit)?.mm ?? null}
          complaint={PAST.guessComplaint}
          onGuess={setGuess}
        />
      </div>
    );
  }
  const short = now !== null && reachOf(at, now).short > 0;
  return (
    <div class="explorer">
      <Controls {...props} trial={trial} onChange={setTrial} />
      <div class={short ? 'told short' : 'told'} role="status" tabIndex={-1} ref={arrived}>
        {guess !== null && trial === start && <p>{fill(PAST.guessed, { guess, past }, unit)}</p>}
        <p>{now ? told(at, now, unit) : PAST.outside}</p>
      </div>
      {late && !still
        ? now && <late.Section facts={factsOf(at, now)} unit={unit} drilled caption={PAST.figure} />
        : children}
    </div>
  );
}

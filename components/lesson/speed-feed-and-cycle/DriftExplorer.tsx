import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { ChoiceField } from '../../fields/ChoiceField';
import { readLength } from '../../fields/readLength';
import { useUnit } from '../../state/units';
import { DRIFT } from '../../words/en/cycle';
import { length } from '../../words/format';
import { fill } from '../../words/template';
import { Guess } from '../Guess';
import { LateChart } from '../LateChart';
import { CountStepper } from '../Stepper';
import { useArrival } from '../useArrival';
import {
  checked,
  drifted,
  PLACES,
  size,
  SPEEDS_TO_TRY,
  type DriftCase,
  type DriftTrial,
} from './drift';

interface Props {
  name: string;
  one: DriftCase;
  start: DriftTrial;
  controls: ('places' | 'rpm')[];
  /** Asked first, where it is: how far out is the tap at the end? */
  guess?: string;
  /** The first case without a guess, drawn while the page is built. */
  children?: ComponentChildren;
}

const CHOICES = PLACES.map((places) => ({ value: String(places), label: DRIFT.places[places] }));

/** A feed written with more or fewer decimals, and what it does to the thread. */
export function DriftExplorer({ name, one, start, controls, guess: question, children }: Props) {
  const unit = useUnit();
  const [guess, setGuess] = useState<number | null>(null);
  const [trial, setTrial] = useState(start);
  const told = useArrival<HTMLDivElement>(guess !== null);
  const { chart, sentence } = drifted(one, trial, unit);
  const ready = trial.rpm !== null;
  const answer = length(size(checked(one, start.rpm ?? SPEEDS_TO_TRY.min, start.places)), unit);
  const asking = question !== undefined && guess === null;
  return (
    <div class="explorer">
      {asking ? (
        <Guess
          name={name}
          question={question}
          answer={fill(DRIFT.answer, { answer }, unit)}
          label={DRIFT.guessField}
          unit={unit}
          read={(text) => readLength(text, unit)?.mm ?? null}
          complaint={DRIFT.guessComplaint}
          onGuess={setGuess}
        />
      ) : (
        <div class="explorer-controls needs-script">
          {controls.includes('places') && (
            <ChoiceField
              name={`${name}-places`}
              label={DRIFT.placesField}
              value={String(trial.places)}
              choices={CHOICES}
              onInput={(places) => setTrial({ ...trial, places: Number(places) })}
            />
          )}
          {controls.includes('rpm') && (
            <CountStepper
              name={`${name}-rpm`}
              label={DRIFT.rpmField}
              hint={DRIFT.rpmHint}
              unit="rev/min"
              value={trial.rpm}
              {...SPEEDS_TO_TRY}
              onChange={(rpm) => setTrial({ ...trial, rpm })}
            />
          )}
          <div class="actions">
            <button type="button" class="button plain" onClick={() => setTrial(start)}>
              {DRIFT.reset}
            </button>
          </div>
        </div>
      )}
      <div class="told" role="status" tabIndex={-1} ref={told}>
        {guess !== null && trial === start && (
          <p>{fill(DRIFT.guessed, { guess: length(guess, unit), answer }, unit)}</p>
        )}
        {ready && !asking && <p>{sentence}</p>}
      </div>
      {!asking && (
        <LateChart
          still={question === undefined && trial === start && unit === 'mm'}
          id={`${name}-chart`}
          chart={chart}
          source={{ text: DRIFT.source, href: '/sources/#derived' }}
          refusal={ready ? undefined : DRIFT.outside}
        >
          {children}
        </LateChart>
      )}
    </div>
  );
}

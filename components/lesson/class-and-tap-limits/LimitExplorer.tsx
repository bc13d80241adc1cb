import { useState } from 'preact/hooks';
import { LimitBar } from '../../chart/LimitBar';
import { ChoiceField } from '../../fields/ChoiceField';
import { readPlain } from '../../fields/readNumber';
import { LIMITS } from '../../words/en/tapLimits';
import { fill } from '../../words/template';
import { Guess } from '../Guess';
import { CountStepper } from '../Stepper';
import { useArrival } from '../useArrival';
import { held, LAYER, type LimitCase, type LimitTrial } from './limits';

interface Props {
  name: string;
  one: LimitCase;
  start: LimitTrial;
  controls: ('number' | 'class' | 'layer')[];
  /** Asked first, where it is: a number of thousandths of an inch. */
  guess?: { question: string; answer: number };
}

function Controls(props: Props & { trial: LimitTrial; onChange: (trial: LimitTrial) => void }) {
  const { name, one, start, controls, trial, onChange } = props;
  const numbers = one.taps.map(({ number }) => number);
  return (
    <div class="explorer-controls needs-script">
      {controls.includes('class') && (
        <ChoiceField
          name={`${name}-class`}
          label={LIMITS.classField}
          value={trial.class}
          choices={one.classes.map((each) => ({ value: each.class, label: each.class }))}
          onInput={(chosen) => onChange({ ...trial, class: chosen })}
        />
      )}
      <div class="steppers">
        {controls.includes('number') && (
          <ChoiceField
            name={`${name}-number`}
            label={LIMITS.tapField}
            value={String(trial.number)}
            choices={numbers.map((each) => ({ value: String(each), label: `H${each}` }))}
            onInput={(number) => onChange({ ...trial, number: Number(number) })}
          />
        )}
        {controls.includes('layer') && (
          <CountStepper
            name={`${name}-layer`}
            label={LIMITS.layerField}
            hint={LIMITS.layerHint}
            unit="µm"
            value={trial.layer}
            {...LAYER}
            onChange={(layer) => onChange({ ...trial, layer })}
          />
        )}
      </div>
      <div class="actions">
        <button type="button" class="button plain" onClick={() => onChange(start)}>
          {LIMITS.reset}
        </button>
      </div>
    </div>
  );
}

/** A tap's limits to move against the class, and the class against a coating. */
export function LimitExplorer(props: Props) {
  const { name, one, start, guess: asked } = props;
  const [guess, setGuess] = useState<number | null>(null);
  const [trial, setTrial] = useState(start);
  const told = useArrival<HTMLDivElement>(guess !== null);
  const shown = held(one, trial);
  const asking = asked !== undefined && guess === null;
  const answer = asked ? fill(LIMITS.answer, { answer: asked.answer }, 'in') : '';
  return (
    <div class="explorer">
      {asking ? (
        <Guess
          name={name}
          question={asked.question}
          answer={answer}
          label={LIMITS.guessField}
          unit={LIMITS.thou}
          read={(text) => readPlain(text, [])}
          complaint={LIMITS.guessComplaint}
          onGuess={setGuess}
        />
      ) : (
        <Controls {...props} trial={trial} onChange={setTrial} />
      )}
      <div class="told" role="status" tabIndex={-1} ref={told}>
        {guess !== null && trial === start && (
          <p>{fill(LIMITS.guessed, { guess, answer }, 'in')}</p>
        )}
        {!asking && <p>{shown?.sentence ?? LIMITS.outside}</p>}
      </div>
      {!asking && shown && <LimitBar bar={shown.bar} id={`${name}-bar`} caption={LIMITS.caption} />}
    </div>
  );
}

import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { useUnit } from '../../state/units';
import { EXPLORE } from '../../words/en/explore';
import { chartOf } from './chart';
import { explore, type ThreadOption, type Trial } from './explore';
import { ExplorerControls, type ControlName } from './ExplorerControls';
import { Guess } from '../Guess';
import { LateChart } from '../LateChart';
import { useArrival } from '../useArrival';
import { readLength } from '../../fields/readLength';
import { guessVerdict } from './guessVerdict';

export interface DepthExplorerProps {
  name: string;
  threads: ThreadOption[];
  /** The case shown first, read while the page is built. */
  start: Trial;
  controls: ControlName[];
  /** Where a guess is asked for first: the question and the case it is about. */
  guess?: { question: string; trial: Trial };
  /** The first case without a guess, drawn while the page is built. */
  children?: ComponentChildren;
}

/** The chart of thread depth against hole depth, a guess before it and the controls after. */
export function DepthExplorer(props: DepthExplorerProps) {
  const { name, threads, controls } = props;
  const unit = useUnit();
  const [guess, setGuess] = useState<number | null>(null);
  const asking = props.guess !== undefined && guess === null;
  const first = props.guess && guess !== null ? props.guess.trial : props.start;
  const [trial, setTrial] = useState<Trial>(first);
  const told = useArrival<HTMLDivElement>(guess !== null);

  if (asking && props.guess) {
    const { question, trial: asked } = props.guess;
    return (
      <div class="explorer">
        <Guess
          name={name}
          question={question}
          answer={explore(asked, unit).sentence}
          label={EXPLORE.guessField}
          unit={unit}
          read={(text) => readLength(text, unit)?.mm ?? null}
          complaint={EXPLORE.guessRange}
          onGuess={(mm) => {
            setGuess(mm);
            setTrial(asked);
          }}
        />
      </div>
    );
  }

  const explored = explore(trial, unit);
  const { sentence, fits } = explored;
  const still = !props.guess && trial === first && unit === 'mm';
  const ready = trial.fullThread !== null && trial.limit !== null;
  return (
    <div class="explorer">
      <ExplorerControls
        {...{ name, threads, controls, trial, unit }}
        first={first}
        onChange={setTrial}
      />
      <div class={fits || !ready ? 'told' : 'told short'} role="status" tabIndex={-1} ref={told}>
        {guess !== null && trial === first && <p>{guessVerdict(guess, trial, unit)}</p>}
        {ready && <p>{sentence}</p>}
      </div>
      <LateChart
        still={still}
        id={`${name}-chart`}
        chart={chartOf(trial, explored, trial.thread === first.thread ? guess : null, unit)}
        source={{ text: EXPLORE.source, href: '/sources/#iso-8830' }}
        {...(ready ? {} : { refusal: EXPLORE.outside })}
      >
        {props.children}
      </LateChart>
    </div>
  );
}

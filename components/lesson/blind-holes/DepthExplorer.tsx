import { useState } from 'preact/hooks';
import { ChartView } from '../../chart/ChartView';
import { depthChart } from '../../chart/depthChart';
import type { Chart } from '../../chart/types';
import { useUnit } from '../../state/units';
import type { Unit } from '../../words';
import { EXPLORE } from '../../words/en/explore';
import { mmToInch } from '../../../core/units';
import { explore, guessLabel, type ThreadOption, type Trial } from './explore';
import { ExplorerControls, type ControlName } from './ExplorerControls';
import { Guess } from './Guess';
import { guessVerdict } from './guessVerdict';

export interface DepthExplorerProps {
  name: string;
  threads: ThreadOption[];
  /** The case shown first, read while the page is built. */
  start: Trial;
  controls: ControlName[];
  /** Where a guess is asked for first: the question and the case it is about. */
  guess?: { question: string; trial: Trial };
}

function withGuess(chart: Chart, guess: number | null, unit: Unit): Chart {
  if (guess === null) return chart;
  const at = unit === 'mm' ? guess : mmToInch(guess);
  const mark = { at, label: guessLabel(guess, unit), tone: 'amber' as const };
  return { ...chart, references: [...(chart.references ?? []), mark] };
}

/** The chart of thread depth against hole depth, a guess before it and the controls after. */
export function DepthExplorer(props: DepthExplorerProps) {
  const { name, threads, controls } = props;
  const unit = useUnit();
  const [guess, setGuess] = useState<number | null>(null);
  const asking = props.guess !== undefined && guess === null;
  const first = props.guess && guess !== null ? props.guess.trial : props.start;
  const [trial, setTrial] = useState<Trial>(first);
  const { model, sentence, fits } = explore(trial, unit);
  const ready = trial.fullThread !== null && trial.limit !== null;

  return (
    <div class="explorer">
      {asking && props.guess && (
        <Guess
          name={name}
          question={props.guess.question}
          unit={unit}
          onGuess={(mm) => {
            setGuess(mm);
            if (props.guess) setTrial(props.guess.trial);
          }}
        />
      )}
      {!asking && (
        <ExplorerControls
          {...{ name, threads, controls, trial, unit }}
          first={first}
          onChange={setTrial}
        />
      )}
      <div class={fits ? 'told' : 'told short'} role="status">
        {guess !== null && trial === first && <p>{guessVerdict(guess, trial, unit)}</p>}
        <p>{ready ? sentence : EXPLORE.outside}</p>
      </div>
      <ChartView
        id={`${name}-chart`}
        chart={withGuess(depthChart(model), trial.thread === first.thread ? guess : null, unit)}
        source={{ text: EXPLORE.source, href: '/sources/#iso-8830' }}
        {...(ready ? {} : { refusal: EXPLORE.outside })}
      />
    </div>
  );
}

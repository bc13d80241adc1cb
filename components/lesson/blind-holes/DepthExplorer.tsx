import { useState } from 'preact/hooks';
import { ChartView } from '../../chart/ChartView';
import { depthChart } from '../../chart/depthModel';
import type { Chart } from '../../chart/types';
import { useUnit } from '../../state/units';
import type { Unit } from '../../words';
import { EXPLORE } from '../../words/en/explore';
import { mmToInch } from '../../../core/units';
import {
  chartSpan,
  explore,
  guessLabel,
  type Explored,
  type ThreadOption,
  type Trial,
} from './explore';
import { ExplorerControls, type ControlName } from './ExplorerControls';
import { Guess } from '../Guess';
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
}

/** The chart over the thread's own span, which does not move while the reader tries; with the guess on it. */
function chartOf(trial: Trial, explored: Explored, guess: number | null, unit: Unit): Chart {
  const plain = depthChart(explored.model);
  const span = chartSpan(trial.thread, unit);
  const [panel] = plain.panels;
  const chart: Chart = {
    ...plain,
    x: { ...plain.x, domain: span.x },
    panels: panel ? [{ ...panel, y: { ...panel.y, domain: span.y } }] : [],
  };
  if (guess === null) return chart;
  const at = unit === 'mm' ? guess : mmToInch(guess);
  // A guess off the chart is answered in words alone.
  if (at < span.x[0] || at > span.x[1]) return chart;
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
      <ChartView
        id={`${name}-chart`}
        chart={chartOf(trial, explored, trial.thread === first.thread ? guess : null, unit)}
        source={{ text: EXPLORE.source, href: '/sources/#iso-8830' }}
        {...(ready ? {} : { refusal: EXPLORE.outside })}
      />
    </div>
  );
}

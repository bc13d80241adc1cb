import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { diameterLessPitch } from '../../../core/drill/rules';
import { percentThread } from '../../../core/drill/percent';
import { ChoiceField } from '../../fields/ChoiceField';
import { readPlain } from '../../fields/readNumber';
import { useUnit } from '../../state/units';
import { PERCENT } from '../../words/en/percents';
import { fill } from '../../words/template';
import { Guess } from '../Guess';
import { LengthStepper } from '../Stepper';
import { useArrival } from '../useArrival';
import { useLate } from '../useLate';
import { holeSpan, holeStep, tried, type HoleCase } from './percent';

export interface HoleExplorerProps {
  name: string;
  /** The first one is shown first; with more than one there is a choice. */
  threads: HoleCase[];
  /** Where a guess is asked for first: what diameter less pitch leaves. */
  question?: string;
  /** The first case, drawn while the page is built. */
  children?: ComponentChildren;
}

const loadChart = () => import('../../chart/ChartView').then(({ ChartView }) => ({ ChartView }));

/** The hole that the chart begins with, mm: the rule of thumb most shops know. */
const firstHole = ({ major, pitch }: HoleCase) => diameterLessPitch(major, pitch);

/** Percent of thread against the hole on both bases, with the class on it. */
export function HoleExplorer({ name, threads, question, children }: HoleExplorerProps) {
  const unit = useUnit();
  const first = threads[0]!;
  const [thread, setThread] = useState(first);
  const [hole, setHole] = useState<number | null>(firstHole(first));
  const [guess, setGuess] = useState<number | null>(null);
  const told = useArrival<HTMLDivElement>(guess !== null);
  const asking = question !== undefined && guess === null;
  // As it was drawn while the page was built: nothing to draw again.
  const still = guess === null && thread === first && hole === firstHole(first) && unit === 'mm';
  const late = useLate(loadChart, !asking && !still);
  const { chart, sentence, passes } = tried(thread, hole, guess, unit);
  const rule = percentThread(first.major, first.pitch, firstHole(first));
  const choose = (next: HoleCase) => {
    setThread(next);
    setHole(firstHole(next));
  };
  if (asking && question !== undefined) {
    return (
      <div class="explorer">
        <Guess
          name={name}
          question={question}
          answer={fill(PERCENT.answer, rule, unit)}
          label={PERCENT.guessField}
          unit="%"
          read={(text) => {
            const percent = readPlain(text, ['%']);
            return percent !== null && percent >= 1 && percent <= 200 ? percent : null;
          }}
          complaint={PERCENT.guessComplaint}
          onGuess={setGuess}
        />
      </div>
    );
  }
  return (
    <div class="explorer">
      <div class="explorer-controls needs-script">
        {threads.length > 1 && (
          <ChoiceField
            name={`${name}-thread`}
            label={PERCENT.thread}
            value={thread.designation}
            choices={threads.map(({ designation }) => ({ value: designation, label: designation }))}
            onInput={(value) =>
              choose(threads.find(({ designation }) => designation === value) ?? first)
            }
          />
        )}
        <div class="steppers">
          <LengthStepper
            name={`${name}-hole`}
            label={PERCENT.hole}
            hint={PERCENT.holeHint}
            unit={unit}
            value={hole}
            {...holeSpan(thread)}
            step={holeStep(unit)}
            onChange={setHole}
          />
        </div>
        <div class="actions">
          <button type="button" class="button plain" onClick={() => choose(first)}>
            {PERCENT.reset}
          </button>
        </div>
      </div>
      <div
        class={passes || hole === null ? 'told' : 'told short'}
        role="status"
        tabIndex={-1}
        ref={told}
      >
        {guess !== null && thread === first && hole === firstHole(first) && (
          <p>{fill(PERCENT.guessed, { guess, ...rule }, unit)}</p>
        )}
        {hole !== null && <p>{sentence}</p>}
      </div>
      {late && !still ? (
        <late.ChartView
          id={`${name}-chart`}
          chart={chart}
          source={{ text: PERCENT.source, href: '/sources/#iso-68-1' }}
          {...(hole === null ? { refusal: PERCENT.outside } : {})}
        />
      ) : (
        children
      )}
    </div>
  );
}

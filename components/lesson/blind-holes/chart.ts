/** The chart of a trial, with the reader's guess on it. Pure. */

import { mmToInch } from '../../../core/units';
import { depthChart } from '../../chart/depthModel';
import type { Chart } from '../../chart/types';
import type { Unit } from '../../words';
import { chartSpan, guessLabel, type Explored, type Trial } from './explore';

/** The chart over the thread's own span, which does not move while the reader tries; with the guess on it. */
export function chartOf(trial: Trial, explored: Explored, guess: number | null, unit: Unit): Chart {
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

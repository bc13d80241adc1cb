/** Torque against chamfer length with its band, and under it the load on each tooth, on one x axis. */

import { decimals, force, significant, threadRange, torque, type Unit } from '../words/format';
import type { Chart, Datum, Look, Panel, Series } from './types';
import { TORQUE_CHART } from '../words/en/charts/shared';

export interface TorqueLine {
  /** Empty words leave the line without a name: for one line alone. */
  label: { short: string; long: string };
  /** x in threads of chamfer; torque in N·m with its band, load in N. */
  data: readonly Datum[];
  strong?: boolean;
  /** Keeps the look of a line that stands in the other panel too; its place in the list when missing. */
  look?: Look;
}

export interface TorqueChartModel {
  title: string;
  subtitle: string;
  description: string;
  /** One line for each tap or thickness compared, at most five a panel. */
  torque: readonly TorqueLine[];
  /** Load on the heaviest tooth. */
  load: readonly TorqueLine[];
  /** Chamfer classes along the x axis, in threads. */
  classes?: readonly { threads: { min: number; max: number }; name: string }[];
  /** Chamfer as long as the work is thick, threads. */
  thinFrom?: number;
  here?: { threads: number; torque: number; load: number };
  /** What the bands cover, when it is not the two claims about chamfer length. */
  bands?: string;
  unit: Unit;
}

function panelOf(
  model: TorqueChartModel,
  which: 'torque' | 'load',
  axis: { label: string; unit: string },
): Panel {
  const series = model[which].map((one, i): Series => ({
    label: one.label,
    data: [...one.data],
    look: one.look ?? ((i % 5) as Look),
    strong: one.strong ?? false,
  }));
  const here = model.here;
  const value =
    here && (which === 'torque' ? torque(here.torque, model.unit) : force(here.load, model.unit));
  return {
    y: { ...axis, write: (shown) => (shown === 0 ? '0' : significant(shown, 2)) },
    series,
    ...(here && value
      ? { here: { x: here.threads, y: here[which], label: [`${TORQUE_CHART.here}: ${value}`] } }
      : {}),
  };
}

/** Builds the chart; torque in N·m, load in N. */
export function torqueChart(model: TorqueChartModel): Chart {
  return {
    title: model.title,
    subtitle: model.subtitle,
    description: model.description,
    bands: model.bands ?? TORQUE_CHART.bands,
    x: { label: TORQUE_CHART.x, unit: TORQUE_CHART.threads, write: (value) => decimals(value, 2) },
    panels: [
      panelOf(model, 'torque', { label: TORQUE_CHART.torque, unit: 'N·m' }),
      panelOf(model, 'load', { label: TORQUE_CHART.load, unit: 'N' }),
    ],
    zones: (model.classes ?? []).map(({ threads, name }) => ({
      from: threads.min,
      to: threads.max,
      label: { short: name, long: `${name} ${threadRange(threads)}` },
    })),
    ...(model.thinFrom === undefined
      ? {}
      : { references: [{ at: model.thinFrom, label: TORQUE_CHART.thin, tone: 'amber' as const }] }),
  };
}

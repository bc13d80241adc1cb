/** Where an axis starts and ends, and its ticks. */

import { tickStep, ticks } from 'd3-array';
import { decimals } from '../words/format';
import type { Axis, Chart, Panel } from './types';

/** Domain of an axis from the values on it: from zero, out to the next whole tick. */
export function domainOf(axis: Axis, values: readonly number[], count: number): [number, number] {
  if (axis.domain) return [axis.domain[0], axis.domain[1]];
  const finite = values.filter(Number.isFinite);
  const low = Math.min(0, ...finite);
  const high = Math.max(low, ...finite);
  if (high === low) return [low, low + 1];
  const step = tickStep(low, high, count);
  return [Math.floor(low / step + 1e-9) * step, Math.ceil(high / step - 1e-9) * step];
}

export function ticksOf(axis: Axis, domain: readonly [number, number], count: number): number[] {
  const chosen = axis.ticks?.filter((tick) => tick >= domain[0] && tick <= domain[1]);
  return chosen ? [...chosen] : ticks(domain[0], domain[1], count);
}

/** Ticks stand at round steps, so their own digits are enough. */
export function writeTick(value: number): string {
  return decimals(value, 4);
}

export function panelValues(panel: Panel): number[] {
  const values = panel.series.flatMap(({ data }) =>
    data.flatMap(({ low, mid, high }) => [low, mid, high]),
  );
  const lines = (panel.references ?? []).map((reference) => reference.at);
  return [...values, ...lines, panel.here?.y].filter((value) => value !== undefined);
}

export function xValues(chart: Chart): number[] {
  return [
    ...chart.panels.flatMap((panel) => [
      ...panel.series.flatMap(({ data }) => data.map(({ x }) => x)),
      ...(panel.here ? [panel.here.x] : []),
    ]),
    ...(chart.references ?? []).map((reference) => reference.at),
    ...(chart.zones ?? []).flatMap((zone) => [zone.from, zone.to]),
  ];
}

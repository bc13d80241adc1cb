/** Where the parts of a chart stand. */

import { textWidth } from '../drawing/labels';
import { domainOf, panelValues, ticksOf, writeTick, xValues } from './domain';
import { rowsFor } from './place';
import { linearScale, type Scale } from './scale';
import type { Chart, Panel, WidthClass } from './types';

/** Line spacing of words. */
export const ROW = 19;

const SIZES = {
  narrow: { width: 354, alone: 236, stacked: 158, xTicks: 5, labels: 130 },
  wide: { width: 640, alone: 290, stacked: 190, xTicks: 9, labels: 250 },
} as const;

export interface PanelBox {
  panel: Panel;
  top: number;
  bottom: number;
  y: Scale;
  ticks: number[];
}

/** Words that stand over or under a stretch of the x axis, sorted into rows. */
export interface RowLabel {
  text: string;
  x: number;
  row: number;
}

export interface Layout {
  wide: boolean;
  width: number;
  height: number;
  left: number;
  right: number;
  x: Scale;
  xTicks: number[];
  panels: PanelBox[];
  references: RowLabel[];
  zones: RowLabel[];
}

/** Centres words on `at`, kept inside the plot, in rows that do not overlap. Order is kept. */
function inRows(
  words: readonly { text: string; at: number }[],
  left: number,
  right: number,
): RowLabel[] {
  const stretches = words.map(({ text, at }, index) => {
    const half = textWidth(text, 'word') / 2;
    const x = Math.min(Math.max(at, left + half), Math.max(left + half, right - half));
    return { text, x, from: x - half, to: x + half, index };
  });
  const sorted = stretches.slice().sort((a, b) => a.from - b.from);
  const rows = rowsFor(sorted);
  return sorted
    .map(({ text, x, index }, i) => ({ text, x, row: rows[i]!, index }))
    .sort((a, b) => a.index - b.index)
    .map(({ text, x, row }) => ({ text, x, row }));
}

function rowCount(labels: readonly RowLabel[]): number {
  return labels.reduce((most, { row }) => Math.max(most, row + 1), 0);
}

function tickRoom(chart: Chart, height: number): number {
  const widths = chart.panels.flatMap((panel) => {
    const domain = domainOf(panel.y, panelValues(panel), height / 48);
    return ticksOf(panel.y, domain, height / 48).map((tick) => textWidth(writeTick(tick), 'word'));
  });
  return Math.ceil(Math.max(0, ...widths)) + 10;
}

function labelRoom(chart: Chart, wide: boolean, most: number): number {
  const widths = chart.panels.flatMap((panel) =>
    panel.series.map(({ label, strong }) =>
      textWidth(wide ? label.long : label.short, strong ? 'value' : 'word'),
    ),
  );
  const widest = Math.max(0, ...widths);
  return widest === 0 ? 14 : Math.min(most, Math.ceil(widest)) + 24;
}

/** Lays a chart out for one width class. */
export function layoutChart(chart: Chart, width: WidthClass): Layout {
  const wide = width === 'wide';
  const size = SIZES[width];
  const plot = chart.panels.length > 1 ? size.stacked : size.alone;
  const left = tickRoom(chart, plot);
  const right = size.width - labelRoom(chart, wide, size.labels);
  const xDomain = domainOf(chart.x, xValues(chart), size.xTicks);
  const x = linearScale(xDomain, [left, right]);
  const references = inRows(
    (chart.references ?? []).map(({ label, at }) => ({ text: label, at: x(at) })),
    left,
    size.width - 4,
  );
  const zones = inRows(
    (chart.zones ?? []).map(({ label, from, to }) => ({
      text: wide ? label.long : label.short,
      at: x((from + to) / 2),
    })),
    2,
    size.width - 4,
  );
  let cursor = rowCount(references) * ROW;
  const panels = chart.panels.map((panel): PanelBox => {
    const height = plot * (panel.weight ?? 1);
    const domain = domainOf(panel.y, panelValues(panel), height / 48);
    const top = cursor + ROW + 9;
    const bottom = top + height;
    cursor = bottom + 14;
    const y = linearScale(domain, [bottom, top]);
    return { panel, top, bottom, y, ticks: ticksOf(panel.y, domain, height / 48) };
  });
  const below = ROW + (zones.length > 0 ? 10 + rowCount(zones) * ROW : 0) + ROW + 10;
  return {
    wide,
    width: size.width,
    height: Math.ceil(panels.at(-1)!.bottom + below),
    left,
    right,
    x,
    xTicks: ticksOf(chart.x, xDomain, size.xTicks),
    panels,
    references,
    zones,
  };
}

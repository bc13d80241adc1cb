/** Axes: level words, the unit once, true zero or a word that it is not. */

import { group, line, path, polyline, text, type Mark } from '../drawing/marks';
import { say } from '../words/say';
import { textWidth } from '../drawing/labels';
import { writeTick } from './domain';
import { ROW, type Layout, type PanelBox } from './layout';
import type { Axis, Chart } from './types';
import { CHART } from '../words/en/charts/shared';

function axisTitle(template: string, axis: Axis, from: number): string {
  const words = say(template, { label: axis.label, unit: axis.unit });
  return from === 0 ? words : words.replace(/ (.)$/, `${CHART.notZero} $1`);
}

/** Rules and numbers of one panel, its title above them on the left. */
export function yAxis(box: PanelBox, layout: Layout): Mark {
  const { left, right } = layout;
  const { panel, ticks, y } = box;
  const rules = ticks.map((tick) =>
    polyline([
      [left, y(tick)],
      [right, y(tick)],
    ]),
  );
  return group('ch-axis', [
    path('ch-rule', ...rules),
    line('ch-base', [left, box.bottom], [right, box.bottom]),
    ...ticks.map((tick) =>
      text('word', [left - 6, y(tick) + 5], writeTick(tick), { anchor: 'end', tone: 'quiet' }),
    ),
    text('word', [0, box.top - 12], axisTitle(CHART.up, panel.y, y.domain[0])),
  ]);
}

/** Where on its bracket a name's line can come down without crossing a name in a row above. */
function dropAt(layout: Layout, index: number, from: number, to: number): number {
  const { row } = layout.zones[index]!;
  const above = layout.zones.filter((other) => other.row < row);
  const free = (x: number) =>
    above.every((other) => Math.abs(other.x - x) > textWidth(other.text, 'word') / 2 + 3);
  const shares = [0.5, 0.6, 0.4, 0.75, 0.25, 0.9, 0.1];
  const spots = shares.map((share) => from + share * (to - from));
  return spots.find(free) ?? (from + to) / 2;
}

function zoneMarks(chart: Chart, layout: Layout, top: number): Mark[] {
  const { x } = layout;
  return (chart.zones ?? []).flatMap((zone, i) => {
    const label = layout.zones[i]!;
    const [from, to] = [x(zone.from) + 1, x(zone.to) - 1];
    const drop = dropAt(layout, i, from, to);
    const words = [label.x, top + 18 + label.row * ROW] as const;
    return [
      path(
        'ch-zone',
        polyline([
          [from, top - 4],
          [from, top],
          [to, top],
          [to, top - 4],
        ]),
        polyline([
          [drop, top],
          [drop, top + 5 + label.row * ROW],
        ]),
      ),
      text('word', words, label.text, { anchor: 'middle', tone: 'quiet' }),
    ];
  });
}

/** Ticks under every panel, numbers and title under the last, named stretches between them. */
export function xAxis(chart: Chart, layout: Layout): Mark {
  const { x, xTicks, panels, right } = layout;
  const bottom = panels.at(-1)!.bottom;
  const title = axisTitle(CHART.right, chart.x, x.domain[0]);
  const titleEnd = Math.min(layout.width, Math.max(right, textWidth(title, 'word')));
  const ticks = panels.flatMap((box) =>
    xTicks.map((tick) =>
      polyline([
        [x(tick), box.bottom],
        [x(tick), box.bottom + 5],
      ]),
    ),
  );
  return group('ch-axis', [
    path('ch-tick', ...ticks),
    ...xTicks.map((tick) =>
      text('word', [x(tick), bottom + ROW + 1], writeTick(tick), {
        anchor: 'middle',
        tone: 'quiet',
      }),
    ),
    ...zoneMarks(chart, layout, bottom + ROW + 12),
    text('word', [titleEnd, layout.height - 6], title, { anchor: 'end' }),
  ]);
}

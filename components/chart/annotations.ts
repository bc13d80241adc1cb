/** Words inside a panel: limits on their lines, the point where the reader stands. */

import { textWidth } from '../drawing/labels';
import { group, line, path, text, type Mark, type Point } from '../drawing/marks';
import { clip, edgePoints, visible } from './cut';
import { ROW, type Layout, type PanelBox } from './layout';
import { bestSpot, type Box, type Scene } from './place';
import { marker } from './series';
import type { Chart, Here } from './types';

function wordBox(x: number, baseline: number, width: number, rows = 1): Box {
  return { left: x, right: x + width, top: baseline - 14 - (rows - 1) * ROW, bottom: baseline + 5 };
}

function strokes(box: PanelBox, layout: Layout): Point[][] {
  const scales = { x: layout.x, y: box.y };
  return box.panel.series.flatMap((series) =>
    (['low', 'mid', 'high'] as const).map((edge) =>
      clip(edgePoints(visible(series, scales).data, edge, scales), scales),
    ),
  );
}

/** What the words of a panel must keep clear of. */
export function sceneOf(chart: Chart, box: PanelBox, layout: Layout): Scene & { taken: Box[] } {
  const frame = { left: layout.left, right: layout.right, top: box.top, bottom: box.bottom };
  const upright = (chart.references ?? []).map(({ at }): Point[] => [
    [layout.x(at), box.top],
    [layout.x(at), box.bottom],
  ]);
  const level = (box.panel.references ?? []).map(({ at }): Point[] => [
    [layout.left, box.y(at)],
    [layout.right, box.y(at)],
  ]);
  return { frame, strokes: [...strokes(box, layout), ...upright, ...level], taken: [] };
}

/** Level lines of a panel with their words on them. Adds the words' boxes to the scene. */
export function levelReferences(
  box: PanelBox,
  layout: Layout,
  scene: Scene & { taken: Box[] },
): Mark[] {
  return (box.panel.references ?? []).flatMap((reference) => {
    const y = box.y(reference.at);
    const width = textWidth(reference.label, 'word');
    const spots = [0, 0.5, 1].flatMap((share) =>
      [y - 6, y + 16].map((baseline) => {
        const left = layout.left + 4 + share * (layout.right - layout.left - width - 8);
        return { left, baseline, box: wordBox(left, baseline, width) };
      }),
    );
    const spot = bestSpot(spots, scene);
    scene.taken.push(spot.box);
    return [
      line(`ch-reference ch-${reference.tone ?? 'quiet'}`, [layout.left, y], [layout.right, y]),
      text('word', [spot.left, spot.baseline], reference.label, { tone: reference.tone }),
    ];
  });
}

/** Upright lines through every panel, named above the first. */
export function uprightReferences(chart: Chart, layout: Layout): Mark[] {
  const first = layout.panels[0]!;
  return (chart.references ?? []).flatMap((reference, i) => {
    const x = layout.x(reference.at);
    const label = layout.references[i]!;
    const baseline = 15 + label.row * ROW;
    const uprights = layout.panels.map((box) =>
      line(
        `ch-reference ch-${reference.tone ?? 'quiet'}`,
        [x, box.top - (box === first ? 4 : 0)],
        [x, box.bottom],
      ),
    );
    return [
      ...uprights,
      line('ch-leader', [label.x, baseline + 5], [x, first.top - 4]),
      text('word', [label.x, baseline], label.text, { anchor: 'middle', tone: reference.tone }),
    ];
  });
}

/** The reader's own point, with its values. */
export function hereMarks(
  here: Here,
  box: PanelBox,
  layout: Layout,
  scene: Scene & { taken: Box[] },
): Mark {
  const [px, py] = [layout.x(here.x), box.y(here.y)];
  const roleOf = (row: number) => (row === 0 ? 'value' : 'word');
  const width = Math.max(...here.label.map((words, row) => textWidth(words, roleOf(row))));
  const rows = here.label.length;
  const tall = rows * ROW;
  const spots = [26, 44, 66, 90, 120].flatMap((far) =>
    [
      [-1, -1],
      [1, 1],
      [1, -1],
      [-1, 1],
      [0, -1],
      [0, 1],
    ].map(([dx, dy]) => {
      const wish = dx === 0 ? px - width / 2 : px + dx! * far - (dx! < 0 ? width : 0);
      const left = Math.min(Math.max(wish, layout.left + 2), layout.right - width - 2);
      const baseline = dy! < 0 ? py - far * 0.6 : py + far * 0.6 + tall - 5;
      return { left, baseline, box: wordBox(left, baseline, width, rows) };
    }),
  );
  const spot = bestSpot(spots, scene);
  scene.taken.push(spot.box);
  const { box: around } = spot;
  const near: Point = [
    Math.min(Math.max(px, around.left), around.right),
    Math.min(Math.max(py, around.top), around.bottom),
  ];
  return group('ch-here', [
    line('ch-leader', [px, py], near),
    path('ch-here-ring', marker([px, py], 0, 6.5)),
    path('ch-here-dot', marker([px, py], 0, 3.2)),
    ...here.label.map((words, i) =>
      text(roleOf(i), [spot.left, spot.baseline - (rows - 1 - i) * ROW], words, { tone: 'blue' }),
    ),
  ]);
}

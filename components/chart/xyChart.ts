/** A chart of one or more panels on a shared x axis: from its model to marks. Pure. */

import type { Mark, Picture } from '../drawing/marks';
import { hereMarks, levelReferences, sceneOf, uprightReferences } from './annotations';
import { xAxis, yAxis } from './axes';
import { endLabels } from './endLabels';
import { layoutChart, type Layout, type PanelBox } from './layout';
import { seriesMarks } from './series';
import type { Chart, WidthClass } from './types';

function panelMarks(chart: Chart, box: PanelBox, layout: Layout): Mark[] {
  const scene = sceneOf(chart, box, layout);
  const { here } = box.panel;
  // The weightiest words choose their spot first: where you stand, then the limits.
  const point = here ? [hereMarks(here, box, layout, scene)] : [];
  const levels = levelReferences(box, layout, scene);
  return [
    yAxis(box, layout),
    ...box.panel.series.map((series) => seriesMarks(series, { x: layout.x, y: box.y })),
    ...levels,
    endLabels(box, layout),
    ...point,
  ];
}

/** Draws a chart for one width class. */
export function xyChart(chart: Chart, width: WidthClass): Picture {
  const layout = layoutChart(chart, width);
  return {
    width: layout.width,
    height: layout.height,
    title: chart.title,
    description: `${chart.subtitle}. ${chart.description}`,
    marks: [
      ...layout.panels.flatMap((box) => panelMarks(chart, box, layout)),
      ...uprightReferences(chart, layout),
      xAxis(chart, layout),
    ],
  };
}

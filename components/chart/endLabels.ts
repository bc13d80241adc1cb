/** Names of series at the ends of their lines. */

import { spread } from '../drawing/labels';
import { group, line, path, text, type Mark, type Point } from '../drawing/marks';
import { ROW, type Layout, type PanelBox } from './layout';
import { marker, seriesEnd } from './series';

/** Names beside the ends of their lines, moved apart. */
export function endLabels(box: PanelBox, layout: Layout): Mark {
  const ends = box.panel.series.flatMap((series) => {
    const end = seriesEnd(series, { x: layout.x, y: box.y });
    return end && series.label.short ? [{ series, end }] : [];
  });
  const middles = spread(
    ends.map(({ end }) => ({ want: end[1], height: ROW })),
    box.top - 8,
    box.bottom + 8,
  );
  const x = layout.right + 20;
  return group(
    'ch-ends',
    ends.flatMap(({ series, end }, i) => {
      const role = `ch-series ch-look-${series.look}${series.strong ? ' ch-strong' : ''}`;
      const at: Point = [x, middles[i]!];
      const words = layout.wide ? series.label.long : series.label.short;
      return [
        group(role, [
          line('ch-leader', [end[0] + 4, end[1]], [x - 3, at[1]]),
          path('ch-marker', marker(end, series.look)),
        ]),
        text(
          series.strong ? 'value' : 'word',
          [x, at[1] + 5],
          words,
          series.strong ? { tone: 'blue' } : {},
        ),
      ];
    }),
  );
}

/** Ranges as level bars, one row each: what an input is worth, or how classes compare. Pure. */

import { tickStep, ticks } from 'd3-array';
import { hatching } from '../drawing/geometry';
import { textWidth } from '../drawing/labels';
import { group, line, path, polyline, text, type Mark, type Picture } from '../drawing/marks';
import { say } from '../words/say';
import { writeTick } from './domain';
import { ROW } from './layout';
import { linearScale, type Scale } from './scale';
import { marker } from './series';
import type { Axis, Look, WidthClass } from './types';
import { CHART } from '../words/en/charts/shared';

export interface Bar {
  label: string;
  low: number;
  high: number;
  /** A point within the bar. */
  mid?: number;
  /** The one the page is about. */
  strong?: boolean;
}

export interface Bars {
  /** The finding, at most fifteen words. */
  title: string;
  /** Measure and conditions. */
  subtitle: string;
  /** One paragraph on the shape, for those who cannot see it. */
  description: string;
  axis: Axis;
  /** Longest first, or in the order of the trade. */
  rows: readonly Bar[];
  /** Heading of the rows in the table. */
  rowsAre: string;
  /** An upright line through all rows, named above them. */
  reference?: { at: number; label: string };
  /** True: the axis begins at zero, as lengths of bars must be compared. Otherwise near the values. */
  fromZero: boolean;
  bands?: string;
}

const WIDTHS = { narrow: 354, wide: 640 } as const;
const TICKS = { narrow: 4, wide: 8 } as const;
const BAR = 17;

function domainOf({ axis, rows, reference, fromZero }: Bars, count: number): [number, number] {
  if (axis.domain) return [axis.domain[0], axis.domain[1]];
  const values = rows.flatMap(({ low, high }) => [low, high]);
  const all = reference ? [...values, reference.at] : values;
  const low = fromZero ? Math.min(0, ...all) : Math.min(...all);
  const high = Math.max(...all);
  if (!(high > low)) return [low, low + 1];
  const step = tickStep(low, high, count);
  return [Math.floor(low / step + 1e-9) * step, Math.ceil(high / step - 1e-9) * step];
}

function barMarks(bar: Bar, top: number, x: Scale, look: Look): Mark {
  const [from, to] = [x(bar.low), Math.max(x(bar.high), x(bar.low) + 2)];
  const corners = [
    [from, top],
    [to, top],
    [to, top + BAR],
    [from, top + BAR],
  ] as const;
  const role = `ch-series ch-look-${look}${bar.strong ? ' ch-strong' : ''}`;
  const middle = top + BAR / 2;
  return group(role, [
    path('ch-band', polyline(corners, true)),
    path('ch-band-hatch', hatching([corners], 5)),
    path('ch-band-edge', polyline(corners, true)),
    ...(bar.mid === undefined ? [] : [path('ch-marker', marker([x(bar.mid), middle], look))]),
  ]);
}

/** Value at each end, outside the bar; where the bar starts at zero only the far one. */
function endWords(bar: Bar, top: number, x: Scale, write: Axis['write']): Mark[] {
  const baseline = top + BAR - 3;
  const role = bar.strong ? 'value' : 'word';
  const right = text(role, [x(bar.high) + 6, baseline], write(bar.high));
  if (bar.low === 0 || bar.low === bar.high) return [right];
  return [text(role, [x(bar.low) - 6, baseline], write(bar.low), { anchor: 'end' }), right];
}

/** Draws the bars for one width class. */
export function barsPicture(bars: Bars, width: WidthClass): Picture {
  const { axis, rows, reference } = bars;
  const all = WIDTHS[width];
  const room = Math.max(
    ...rows.flatMap(({ low, high }) =>
      [low, high].map((value) => textWidth(axis.write(value), 'value')),
    ),
  );
  const left = Math.ceil(room) + 8;
  const domain = domainOf(bars, TICKS[width]);
  const x = linearScale(domain, [left, all - Math.ceil(room) - 8]);
  const head = reference ? ROW + 8 : 4;
  const pitch = ROW + BAR + 14;
  const bottom = head + rows.length * pitch;
  const marks = rows.flatMap((bar, index) => {
    const top = head + index * pitch + ROW + 4;
    return [
      text(
        bar.strong ? 'value' : 'word',
        [0, top - 6],
        bar.label,
        bar.strong ? { tone: 'blue' } : {},
      ),
      barMarks(bar, top, x, 0),
      ...endWords(bar, top, x, axis.write),
    ];
  });
  // A whisker more at either end, so that no float drops the first or last tick.
  const whisker = (domain[1] - domain[0]) * 1e-9;
  const shown = ticks(domain[0] - whisker, domain[1] + whisker, TICKS[width]);
  const title = say(CHART.right, { label: axis.label, unit: axis.unit });
  const whole = domain[0] === 0 ? title : title.replace(/ (.)$/, `${CHART.notZero} $1`);
  return {
    width: all,
    height: bottom + 2 * ROW + 14,
    title: bars.title,
    description: `${bars.subtitle}. ${bars.description}`,
    marks: [
      path(
        'ch-rule',
        ...shown.map((tick) =>
          polyline([
            [x(tick), head],
            [x(tick), bottom],
          ]),
        ),
      ),
      ...(reference
        ? [
            line('ch-reference ch-quiet', [x(reference.at), head - 4], [x(reference.at), bottom]),
            text('word', [x(reference.at), head - 10], reference.label, { anchor: 'middle' }),
          ]
        : []),
      ...marks,
      line('ch-base', [x(domain[0]), bottom], [x(domain[1]), bottom]),
      ...shown.map((tick) =>
        text('word', [x(tick), bottom + ROW], writeTick(tick), { anchor: 'middle', tone: 'quiet' }),
      ),
      text('word', [all, bottom + 2 * ROW + 8], whole, { anchor: 'end' }),
    ],
  };
}

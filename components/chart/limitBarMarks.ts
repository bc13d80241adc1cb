/** Limits as a bar across the sheet, with what has to fall inside them in rows: drills, or taps. Pure. */

import { hatching } from '../drawing/geometry';
import { textWidth } from '../drawing/labels';
import {
  group,
  line,
  path,
  polyline,
  text,
  type Mark,
  type Picture,
  type Point,
} from '../drawing/marks';
import { linearScale, type Scale } from './scale';

export type BarVerdict = 'inside' | 'risk' | 'outside';

export interface BarRow {
  name: string;
  /** Nominal size, and the size it reaches: a drill's likely hole, a tap's other limit. */
  at: number;
  to: number;
  verdict: BarVerdict;
  /** True for the one the page recommends. */
  strong?: boolean;
  /** Drawn as a bar from `at` to `to` rather than a mark with a line. */
  span?: boolean;
}

export interface LimitBarModel {
  title: string;
  description: string;
  /** Said over the bar. */
  name: string;
  min: number;
  max: number;
  /** Upper limits of other classes: a dashed line each, named under the bar. */
  others: readonly { label: string; at: number }[];
  rows: readonly BarRow[];
  write: (value: number) => string;
}

const WIDTH = 354;
const ROW = 22;
const TOP = 44;
const LINE = 19;
const MARK = 6;

/** Round mark inside, triangle at risk, cross outside: told apart without colour. */
function mark([x, y]: Point, verdict: BarVerdict): Mark {
  if (verdict === 'inside') {
    return path(
      'lb-inside',
      `M${x - MARK} ${y}a${MARK} ${MARK} 0 1 0 ${2 * MARK} 0a${MARK} ${MARK} 0 1 0 ${-2 * MARK} 0Z`,
    );
  }
  if (verdict === 'risk') {
    const corners: Point[] = [
      [x, y - MARK],
      [x + MARK, y + MARK],
      [x - MARK, y + MARK],
    ];
    return path('lb-risk', polyline(corners, true));
  }
  const arm = (dx: number): Point[] => [
    [x - dx, y - MARK + 1],
    [x + dx, y + MARK - 1],
  ];
  return path('lb-outside', polyline(arm(MARK - 1)), polyline(arm(1 - MARK)));
}

function rowMarks(row: BarRow, y: number, x: Scale, left: number): Mark {
  const [from, to] = [x(row.at), x(row.to)];
  const name = text(row.strong ? 'value' : 'word', [left - 8, y + 5], row.name, { anchor: 'end' });
  if (row.span) {
    const corners: Point[] = [
      [from, y - MARK],
      [to, y - MARK],
      [to, y + MARK],
      [from, y + MARK],
    ];
    return group(`lb-row lb-${row.verdict}-row`, [name, path('lb-span', polyline(corners, true))]);
  }
  return group(`lb-row lb-${row.verdict}-row`, [
    name,
    path(
      'lb-reach',
      polyline([
        [from, y],
        [to, y],
      ]),
      polyline([
        [to, y - 4],
        [to, y + 4],
      ]),
    ),
    mark([Math.round(from * 100) / 100, y], row.verdict),
  ]);
}

/** The least and the largest limit over the ends of the bar, pushed apart where the bar is short. */
function limitLabels({ min, max, write }: LimitBarModel, x: Scale): Mark[] {
  const [low, high] = [write(min), write(max)];
  const need = (textWidth(low, 'value') + textWidth(high, 'value')) / 2 + 10;
  const push = Math.max(0, need - (x(max) - x(min))) / 2;
  const within = (at: number, words: string) => {
    const half = textWidth(words, 'value') / 2;
    return Math.min(Math.max(at, half), WIDTH - half);
  };
  return [
    text('value', [within(x(min) - push, low), TOP - 8], low, { anchor: 'middle' }),
    text('value', [within(x(max) + push, high), TOP - 8], high, { anchor: 'middle' }),
  ];
}

function otherMarks(model: LimitBarModel, x: Scale, bottom: number): Mark[] {
  return model.others.flatMap(({ label, at }, index) => {
    const half = textWidth(label, 'word') / 2;
    const middle = Math.min(Math.max(x(at), half), WIDTH - half);
    const y = bottom + LINE * (index + 1) - 3;
    return [
      path(
        'lb-other',
        polyline([
          [x(at), TOP],
          [x(at), y - 13],
        ]),
      ),
      text('word', [middle, y], label, { anchor: 'middle' }),
    ];
  });
}

/** Draws the bar for a phone's width; the style sheet keeps it from growing past readable. */
export function limitBar(model: LimitBarModel): Picture {
  const { min, max, rows, others } = model;
  const widest = Math.max(
    0,
    ...rows.map(({ name, strong }) => textWidth(name, strong ? 'value' : 'word')),
  );
  const left = Math.ceil(widest) + 12;
  const values = [min, max, ...rows.flatMap(({ at, to }) => [at, to])];
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const x = linearScale([least, most === least ? least + 1 : most], [left + 8, WIDTH - 10]);
  const bottom = TOP + rows.length * ROW + 8;
  const box: Point[] = [
    [x(min), TOP],
    [x(max), TOP],
    [x(max), bottom],
    [x(min), bottom],
  ];
  return {
    width: WIDTH,
    height: bottom + others.length * LINE + 4,
    title: model.title,
    description: model.description,
    marks: [
      text(
        'word',
        [Math.min((x(min) + x(max)) / 2, WIDTH - textWidth(model.name, 'word') / 2), 15],
        model.name,
        {
          anchor: 'middle',
          tone: 'quiet',
        },
      ),
      path('lb-zone', polyline(box, true)),
      path('lb-zone-hatch', hatching([box], 9)),
      line('lb-edge', box[0]!, box[3]!),
      line('lb-edge', box[1]!, box[2]!),
      ...limitLabels(model, x),
      ...otherMarks(model, x, bottom),
      ...rows.map((row, index) => rowMarks(row, TOP + 15 + index * ROW, x, left)),
    ],
  };
}

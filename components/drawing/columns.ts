/** Columns of words beside a drawing: a word, its number, and a line to what they speak of. */

import { arrowhead, dot } from './geometry';
import { SHEET } from './holeFrame';
import { spread } from './labels';
import { line, path, text, type Mark, type Tone } from './marks';

const ROW = 17;
const HEIGHT = 2 * ROW + 4;
const TOP = SHEET.face - 2;

export interface Label {
  word: string;
  value: string;
  /** Sheet y that the label speaks of. */
  at: number;
  /** Sheet x where its leader starts. */
  from: number;
  tone?: Tone;
}

function middlesOf(labels: readonly Label[], bottom: number): number[] {
  const wishes = labels.map((label) => ({ want: label.at, height: HEIGHT }));
  return spread(wishes, TOP, bottom);
}

/** Lowest y a column would like to reach, so that the sheet is made tall enough. */
export function columnFloor(labels: readonly Label[]): number {
  return Math.max(TOP, ...middlesOf(labels, Infinity)) + HEIGHT / 2;
}

/** Word above, number below, moved apart down the column, never stacked. */
export function column(labels: readonly Label[], side: 'left' | 'right', bottom: number): Mark[] {
  const middles = middlesOf(labels, bottom);
  const x = side === 'left' ? SHEET.leftText : SHEET.rightText;
  const anchor = side === 'left' ? 'end' : 'start';
  const near = x + (side === 'left' ? 3 : -3);
  return labels.flatMap((label, i) => {
    const middle = middles[i]!;
    return [
      line('dw-leader', [label.from, label.at], [near, middle]),
      text('word', [x, middle - 4], label.word, { anchor, tone: label.tone ?? 'quiet' }),
      text('value', [x, middle + 13.5], label.value, { anchor, tone: label.tone }),
    ];
  });
}

/** Arrowheads at both ends of an upright dimension line, or dots where they have no room. */
export function ends(x: number, top: number, bottom: number): Mark {
  const span = bottom - top;
  if (span < 14) return path('dw-solid', dot([x, top]), dot([x, bottom]));
  const size = Math.min(9, span / 2.4);
  return path('dw-solid', arrowhead([x, top], [0, -1], size), arrowhead([x, bottom], [0, 1], size));
}

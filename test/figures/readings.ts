/** Reads a figure back: its words in pairs, where they stand, and what strokes are drawn. */

import { textWidth } from '../../components/drawing/labels';
import {
  flatten,
  TEXT_SIZE,
  type Picture,
  type Point,
  type TextMark,
} from '../../components/drawing/marks';

export interface Box {
  words: string;
  left: number;
  right: number;
  top: number;
  bottom: number;
}

export function texts(picture: Picture): TextMark[] {
  return flatten(picture.marks).filter((mark) => mark.kind === 'text');
}

export function boxOf(mark: TextMark): Box {
  const width = textWidth(mark.text, mark.role);
  const size = TEXT_SIZE[mark.role];
  const left =
    mark.anchor === 'end' ? mark.x - width : mark.anchor === 'middle' ? mark.x - width / 2 : mark.x;
  // From the top of a figure to the foot of a comma.
  return {
    words: mark.text,
    left,
    right: left + width,
    top: mark.y - 0.7 * size,
    bottom: mark.y + 0.1 * size,
  };
}

export function overlapping(boxes: readonly Box[]): string[] {
  return boxes.flatMap((a, i) =>
    boxes
      .slice(i + 1)
      .filter((b) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom)
      .map((b) => `${a.words} | ${b.words}`),
  );
}

/** Straight strokes of some roles, each as its points. */
export function strokes(picture: Picture, roles: readonly string[]): Point[][] {
  return flatten(picture.marks)
    .filter((mark) => mark.kind === 'path')
    .filter((mark) => roles.includes(mark.role))
    .flatMap((mark) => mark.d.split('M').slice(1))
    .filter((d) => !d.includes('a'))
    .map((d) => {
      const numbers = (d.match(/-?[\d.]+/g) ?? []).map(Number);
      return numbers.flatMap((x, i): Point[] => (i % 2 === 0 ? [[x, numbers[i + 1]!]] : []));
    });
}

/** Words that a stroke runs through. */
export function struck(boxes: readonly Box[], lines: readonly (readonly Point[])[]): string[] {
  const hits = new Set<string>();
  for (const points of lines) {
    points.slice(1).forEach((to, i) => {
      const from = points[i]!;
      for (let step = 0; step <= 40; step += 1) {
        const x = from[0] + ((to[0] - from[0]) * step) / 40;
        const y = from[1] + ((to[1] - from[1]) * step) / 40;
        for (const box of boxes) {
          if (x > box.left + 1 && x < box.right - 1 && y > box.top + 1 && y < box.bottom - 1) {
            hits.add(box.words);
          }
        }
      }
    });
  }
  return [...hits];
}

/** Labels as word → number, from the pairs that stand one above the other. */
export function labels(picture: Picture): Map<string, string> {
  const found = new Map<string, string>();
  const all = texts(picture);
  all.forEach((mark, i) => {
    const next = all[i + 1];
    if (mark.role === 'word' && next?.role === 'value' && next.x === mark.x) {
      found.set(mark.text, next.text);
    }
  });
  return found;
}

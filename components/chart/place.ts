/** Finding a clear spot for a label inside a panel. */

import type { Point } from '../drawing/marks';

export interface Box {
  left: number;
  top: number;
  right: number;
  bottom: number;
}

export function overlap(a: Box, b: Box): number {
  const wide = Math.min(a.right, b.right) - Math.max(a.left, b.left);
  const high = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
  return wide > 0 && high > 0 ? wide * high : 0;
}

/** Length of a straight stroke inside a box. */
function inside(from: Point, to: Point, box: Box): number {
  const steps = Math.max(1, Math.ceil(Math.hypot(to[0] - from[0], to[1] - from[1]) / 3));
  let count = 0;
  for (let i = 0; i <= steps; i += 1) {
    const x = from[0] + ((to[0] - from[0]) * i) / steps;
    const y = from[1] + ((to[1] - from[1]) * i) / steps;
    if (x > box.left && x < box.right && y > box.top && y < box.bottom) count += 1;
  }
  return (count / (steps + 1)) * Math.hypot(to[0] - from[0], to[1] - from[1]);
}

export interface Scene {
  frame: Box;
  /** Strokes a label should not lie across. */
  strokes: readonly (readonly Point[])[];
  /** Boxes taken by other words. */
  taken: readonly Box[];
}

/** How bad a spot is: words over words worst, then out of the panel, then over strokes. */
export function badness(box: Box, { frame, strokes, taken }: Scene): number {
  const out =
    Math.max(0, frame.left - box.left) +
    Math.max(0, box.right - frame.right) +
    Math.max(0, frame.top - box.top) +
    Math.max(0, box.bottom - frame.bottom);
  const words = taken.reduce((sum, other) => sum + overlap(box, other), 0);
  const lines = strokes.reduce(
    (sum, points) =>
      sum + points.slice(1).reduce((part, to, i) => part + inside(points[i]!, to, box), 0),
    0,
  );
  return 60 * out + 20 * words + lines;
}

/** The least bad of the spots offered; the earlier wins among equals, so offer the natural ones first. */
export function bestSpot<T extends { box: Box }>(spots: readonly T[], scene: Scene): T {
  let best = spots[0]!;
  let least = Infinity;
  spots.forEach((spot, i) => {
    const score = badness(spot.box, scene) + 0.4 * i;
    if (score < least - 1e-9) [best, least] = [spot, score];
  });
  return best;
}

/** Sorts stretches of a line into as few rows as hold them side by side; gives each one's row. */
export function rowsFor(stretches: readonly { from: number; to: number }[], gap = 8): number[] {
  const ends: number[] = [];
  return stretches.map(({ from, to }) => {
    const free = ends.findIndex((end) => end + gap <= from);
    const row = free === -1 ? ends.length : free;
    ends[row] = to;
    return row;
  });
}

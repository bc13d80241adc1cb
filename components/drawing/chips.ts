/** Chips as a fitter would sketch them: a long curl along a path, or short pieces lying about it. */

import { polyline, type Point } from './marks';

/** Points at even steps along a polyline. */
function walk(points: readonly Point[], step: number): Point[] {
  const walked: Point[] = [];
  let left = 0;
  points.slice(1).forEach((to, i) => {
    const from = points[i]!;
    const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
    let along = left;
    for (; along <= length; along += step) {
      const t = length === 0 ? 0 : along / length;
      walked.push([from[0] + t * (to[0] - from[0]), from[1] + t * (to[1] - from[1])]);
    }
    left = along - length;
  });
  return walked;
}

/** A long chip: a curl whose loops advance along the path. */
export function curl(points: readonly Point[], radius = 7, advance = 9): string {
  const perLoop = 14;
  const centre = walk(points, advance / perLoop);
  return polyline(
    centre.map(([x, y], i) => {
      const turn = (2 * Math.PI * i) / perLoop;
      const grown = radius * Math.min(1, 0.3 + i / (3 * perLoop));
      return [x + grown * Math.cos(turn), y + 0.75 * grown * Math.sin(turn)] as const;
    }),
  );
}

/** Short chips: small bent pieces, each turned a little further than the last. */
export function pieces(points: readonly Point[], gap = 11, size = 5): string {
  return walk(points, gap)
    .map(([x, y], i) => {
      const turn = i * 2.4;
      const off = 4.5 * Math.sin(i * 1.7);
      const at = (angle: number): Point => [
        x + off + size * Math.cos(turn + angle),
        y + size * Math.sin(turn + angle),
      ];
      return polyline([at(0), at(0.6), at(1.2), at(1.8), at(2.3)]);
    })
    .join('');
}

/** Series cut to what their panel shows, on the sheet. */

import type { Point } from '../drawing/marks';
import type { Scale } from './scale';
import type { Datum, Series } from './types';

export interface Pair {
  x: Scale;
  y: Scale;
}

type Edge = 'low' | 'mid' | 'high';

/** Points of one edge on the sheet, without gaps in the data. */
export function edgePoints(data: readonly Datum[], edge: Edge, { x, y }: Pair): Point[] {
  return data
    .filter((datum) => datum[edge] !== undefined)
    .map((datum) => [x(datum.x), y(datum[edge]!)] as const);
}

/** Cuts points to the panel, so that a line leaves it where it crosses the edge, not before. */
export function clip(points: readonly Point[], { y }: Pair): Point[] {
  const [top, bottom] = [Math.min(...y.range), Math.max(...y.range)];
  const kept: Point[] = [];
  points.forEach((point, i) => {
    const previous = points[i - 1];
    for (const edge of [bottom, top]) {
      if (previous && (previous[1] - edge) * (point[1] - edge) < -1e-9) {
        const t = (edge - previous[1]) / (point[1] - previous[1]);
        kept.push([previous[0] + t * (point[0] - previous[0]), edge]);
      }
    }
    if (point[1] >= top - 1e-6 && point[1] <= bottom + 1e-6) kept.push(point);
  });
  return kept;
}

/** Data inside the x axis, with points made where the edges of the plot cut it. */
function within(data: readonly Datum[], [from, to]: readonly [number, number]): Datum[] {
  const between = (a: Datum, b: Datum, x: number): Datum => {
    const t = (x - a.x) / (b.x - a.x);
    const mix = (p?: number, q?: number) =>
      p === undefined || q === undefined ? undefined : p + t * (q - p);
    const made: Datum = { x };
    for (const edge of ['low', 'mid', 'high'] as const) {
      const value = mix(a[edge], b[edge]);
      if (value !== undefined) made[edge] = value;
    }
    return made;
  };
  return data.flatMap((datum, i) => {
    const before = data[i - 1];
    const made = before
      ? [from, to].filter((x) => x > before.x && x < datum.x).map((x) => between(before, datum, x))
      : [];
    return datum.x >= from && datum.x <= to ? [...made, datum] : made;
  });
}

/** A series as far as its panel shows it. */
export function visible(series: Series, scales: Pair): Series {
  return { ...series, data: within(series.data, scales.x.domain) };
}

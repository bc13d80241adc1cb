/** Bands, lines and markers of one series. Each look differs in dash, marker and hatch, not only in colour. */

import { area, line as curve } from 'd3-shape';
import { hatching } from '../drawing/geometry';
import { coordinate, group, path, polyline, type Mark, type Point } from '../drawing/marks';
import { clip, edgePoints, visible, type Pair } from './cut';
import type { Datum, Look, Series } from './types';

const draw = curve<Point>()
  .x(([x]) => x)
  .y(([, y]) => y)
  .digits(2);

const HATCH: Record<Look, { spacing: number; lean: 1 | -1 }> = {
  0: { spacing: 5, lean: 1 },
  1: { spacing: 5, lean: -1 },
  2: { spacing: 9, lean: 1 },
  3: { spacing: 9, lean: -1 },
  4: { spacing: 14, lean: 1 },
};

/** Data with both edges, from where the band leaves the bottom of the panel. */
function shown(data: readonly Datum[], bottom: number): Datum[] {
  const whole = data.filter(({ low, high }) => low !== undefined && high !== undefined);
  const first = whole.findIndex(({ high }) => high! > bottom);
  return first === -1 ? [] : whole.slice(Math.max(0, first - 1));
}

function bandMarks(series: Series, scales: Pair): Mark[] {
  const { x, y } = scales;
  const [bottom, top] = y.domain;
  const data = shown(series.data, bottom);
  if (data.length < 2) return [];
  const keep = (value: number) => Math.min(Math.max(value, bottom), top);
  const shape = area<Datum>()
    .x((datum) => x(datum.x))
    .y0((datum) => y(keep(datum.low!)))
    .y1((datum) => y(keep(datum.high!)))
    .digits(2);
  const upper = data.map((datum): Point => [x(datum.x), y(keep(datum.high!))]);
  const lower = data.map((datum): Point => [x(datum.x), y(keep(datum.low!))]);
  const { spacing, lean } = HATCH[series.look];
  return [
    path('ch-band', shape(data) ?? ''),
    path('ch-band-hatch', hatching([[...upper, ...lower.slice().reverse()]], spacing, lean)),
    path('ch-band-edge', draw(clip(edgePoints(data, 'high', scales), scales)) ?? ''),
    path('ch-band-edge', draw(clip(edgePoints(data, 'low', scales), scales)) ?? ''),
  ];
}

/** A marker of the series' own shape. */
export function marker([x, y]: Point, look: Look, r = 4.5): string {
  const at = (points: [number, number][]) =>
    polyline(
      points.map(([dx, dy]) => [x + dx * r, y + dy * r]),
      true,
    );
  if (look === 1)
    return at([
      [-0.9, -0.9],
      [0.9, -0.9],
      [0.9, 0.9],
      [-0.9, 0.9],
    ]);
  if (look === 2)
    return at([
      [0, -1.15],
      [1.05, 0.8],
      [-1.05, 0.8],
    ]);
  if (look === 3)
    return at([
      [0, -1.2],
      [1.2, 0],
      [0, 1.2],
      [-1.2, 0],
    ]);
  if (look === 4)
    return at([
      [-1.05, -0.8],
      [1.05, -0.8],
      [0, 1.15],
    ]);
  const [cx, cy, cr] = [coordinate(x - r), coordinate(y), coordinate(r)];
  return `M${cx} ${cy}a${cr} ${cr} 0 1 0 ${2 * cr} 0a${cr} ${cr} 0 1 0 ${-2 * cr} 0Z`;
}

/** Markers about every sixth of the way, so that a dash is not the only sign. */
function spaced(points: readonly Point[], every: number): Point[] {
  const kept: Point[] = [];
  let next = (points[0]?.[0] ?? 0) + every / 2;
  for (const point of points) {
    if (point[0] < next) continue;
    kept.push(point);
    next = point[0] + every;
  }
  return kept;
}

function lineMarks(series: Series, scales: Pair): Mark[] {
  const points = edgePoints(series.data, 'mid', scales);
  if (points.length < 2) return [];
  const limit = series.beyond === undefined ? Infinity : scales.x(series.beyond);
  const sure = clip(
    points.filter(([x]) => x <= limit + 1e-6),
    scales,
  );
  const unsure = clip(
    points.filter(([x]) => x >= limit - 1e-6),
    scales,
  );
  const every = (scales.x.range[1] - scales.x.range[0]) / 6;
  return [
    path('ch-line', draw(sure) ?? ''),
    ...(unsure.length > 1 ? [path('ch-beyond', draw(unsure) ?? '')] : []),
    path('ch-marker', ...spaced(sure, every).map((point) => marker(point, series.look, 3.6))),
  ];
}

/** One series, band below line. */
export function seriesMarks(whole: Series, scales: Pair): Mark {
  const series = visible(whole, scales);
  const role = `ch-series ch-look-${series.look}${series.strong ? ' ch-strong' : ''}`;
  return group(role, [...bandMarks(series, scales), ...lineMarks(series, scales)]);
}

/** The middle of a series where it leaves the panel on the right: where its label belongs. */
export function seriesEnd(series: Series, scales: Pair): Point | null {
  const [bottom, top] = scales.y.domain;
  const inside = visible(series, scales).data.filter((datum) => {
    const middle = middleOf(datum);
    return middle !== null && middle <= top + 1e-9 && middle >= bottom - 1e-9;
  });
  const last = inside.at(-1);
  return last ? [scales.x(last.x), scales.y(middleOf(last)!)] : null;
}

/** The middle of a datum: its line, or halfway between its edges. */
export function middleOf({ low, mid, high }: Datum): number | null {
  if (mid !== undefined) return mid;
  return low !== undefined && high !== undefined ? (low + high) / 2 : null;
}

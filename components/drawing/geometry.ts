/** Shapes that every drawing here uses: hatching, arrowheads, freehand break lines. */

import { coordinate, polyline, type Point } from './marks';

type Ring = readonly Point[];

/** Where the lines x + slope·y = c cross a ring's edges, as distances y along the line. */
function crossings(rings: readonly Ring[], slope: number, c: number): number[] {
  const found: number[] = [];
  for (const ring of rings) {
    ring.forEach(([x1, y1], index) => {
      const [x2, y2] = ring[(index + 1) % ring.length]!;
      const a = x1 + slope * y1 - c;
      const b = x2 + slope * y2 - c;
      // Half-open, so that a corner on the line counts once.
      if (a < 0 === b < 0) return;
      found.push(y1 + ((y2 - y1) * a) / (a - b));
    });
  }
  return found.sort((first, second) => first - second);
}

/**
 * Section lining at 45° inside rings (even-odd: a ring within a ring is a hole), as one path.
 * Real lines, not a pattern, so that it prints and needs no identifier. ISO 128-50.
 * `lean` 1 rises to the right, −1 to the left.
 */
export function hatching(rings: readonly Ring[], spacing: number, lean: 1 | -1 = 1): string {
  const offsets = rings.flat().map(([x, y]) => x + lean * y);
  const step = spacing * Math.SQRT2;
  const first = Math.ceil(Math.min(...offsets) / step) * step + 0.013;
  let d = '';
  for (let c = first; c < Math.max(...offsets); c += step) {
    const ys = crossings(rings, lean, c);
    for (let i = 0; i + 1 < ys.length; i += 2) {
      const [from, to] = [ys[i]!, ys[i + 1]!];
      if (to - from < 0.8) continue;
      d += polyline([
        [c - lean * from, from],
        [c - lean * to, to],
      ]);
    }
  }
  return d;
}

/** A filled arrowhead with its tip at `tip`, pointing along (dx, dy) (unit vector). */
export function arrowhead([x, y]: Point, [dx, dy]: Point, length = 9): string {
  const half = length * 0.28;
  const [bx, by] = [x - dx * length, y - dy * length];
  return polyline(
    [
      [x, y],
      [bx - dy * half, by + dx * half],
      [bx + dy * half, by - dx * half],
    ],
    true,
  );
}

/** A small filled dot: ends a dimension line where arrowheads have no room. ISO 129-1. */
export function dot([x, y]: Point, radius = 2.4): string {
  const r = coordinate(radius);
  return `M${coordinate(x - r)} ${coordinate(y)}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0Z`;
}

/** Points of a freehand line between two points: where the drawing stops but the metal goes on. */
export function freehand([x1, y1]: Point, [x2, y2]: Point, swing = 1.6): Point[] {
  const length = Math.hypot(x2 - x1, y2 - y1);
  const steps = Math.max(4, Math.round(length / 7));
  const [nx, ny] = [-(y2 - y1) / length, (x2 - x1) / length];
  return Array.from({ length: steps + 1 }, (_, i) => {
    const t = i / steps;
    const fade = Math.min(1, 4 * t, 4 * (1 - t));
    const off =
      swing * fade * (Math.sin(t * length * 0.11 + 0.6) + 0.5 * Math.sin(t * length * 0.27));
    return [x1 + (x2 - x1) * t + nx * off, y1 + (y2 - y1) * t + ny * off] as const;
  });
}

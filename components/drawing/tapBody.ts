/** The threaded end of a tap from the side, nose down, to scale: teeth, chamfer, flutes. */

import type { TapStyle } from '../../core/tap/tap';
import type { Hand } from '../../core/thread/thread';
import { fluteRings, inFlute, type Winding } from './flutes';
import { freehand } from './geometry';
import { group, path, polyline, type Mark, type Point } from './marks';

export interface TapShape {
  axis: number;
  /** Sheet y of the nose and of the top of what is drawn. */
  nose: number;
  top: number;
  /** On the sheet: half the major diameter, pitch, length of the chamfer. */
  radius: number;
  pitch: number;
  chamfer: number;
  flutes: number;
  style: TapStyle;
  hand: Hand;
  /** Draws the chamfer's cone, carried on past both its ends so that the eye sees the angle. */
  cone?: boolean;
  /** Flutes turned by hand in place of the style's: lean in degrees, positive as a right-hand helix. */
  turned?: { lean: number; start: number; noseOnly: boolean };
}

/** Depth of the thread and half-width of the nose, as shares of pitch and radius. ISO 68-1 for the depth. */
const rootOf = ({ radius, pitch }: TapShape) => radius - 0.6134 * pitch;
const noseOf = (shape: TapShape) => rootOf(shape) - 0.06 * shape.pitch;

/** Half-width of the cone or cylinder that the tooth tips lie on. */
export function envelope(shape: TapShape, y: number): number {
  const up = shape.nose - y;
  if (up >= shape.chamfer) return shape.radius;
  return noseOf(shape) + ((shape.radius - noseOf(shape)) * up) / shape.chamfer;
}

const HELIX = (38 * Math.PI) / 180;
const POINT_CUT = (15 * Math.PI) / 180;

/** How the flutes of a style wind. A left-hand tap mirrors a right-hand one. */
export function windingOf(shape: TapShape): Winding {
  const { axis, nose, top, style } = shape;
  const floor = rootOf(shape);
  const mirror = shape.hand === 'left' ? -1 : 1;
  const cut = nose - shape.chamfer - shape.pitch;
  const { turned } = shape;
  const twist = (y: number) => {
    if (turned)
      return turned.noseOnly && y < cut ? 0 : Math.tan((turned.lean * Math.PI) / 180) / floor;
    if (style === 'spiral-flute') return (mirror * Math.tan(HELIX)) / floor;
    if (style === 'spiral-point' && y > cut) return (-mirror * Math.tan(POINT_CUT) * 2) / floor;
    return 0;
  };
  return {
    axis,
    nose,
    top,
    radius: (y) => Math.min(floor, envelope(shape, y)),
    twist,
    flutes: shape.flutes,
    open: style === 'form' ? 0.16 : 0.42,
    start: turned?.start ?? -0.5,
  };
}

/** Heights of the tooth crests at an angle round the body; a right-hand thread climbs to the right. */
function crests(shape: TapShape, angle: number): number[] {
  const { nose, top, pitch } = shape;
  const sign = shape.hand === 'left' ? 1 : -1;
  const count = Math.ceil((nose - top) / pitch) + 1;
  return Array.from(
    { length: count },
    (_, i) => nose - pitch * (i + 0.25) + (sign * pitch * angle) / (2 * Math.PI),
  ).filter((y) => y > top + 0.6 * pitch && y < nose);
}

/** One side of the outline, from the nose up: every tooth cut down to the chamfer's cone. */
function teeth(shape: TapShape, side: -1 | 1): Point[] {
  const root = rootOf(shape);
  const steep = (shape.radius - root) / (shape.pitch / 2);
  const points: Point[] = [[noseOf(shape), shape.nose]];
  for (const y of crests(shape, (side * Math.PI) / 2)) {
    const top = envelope(shape, y);
    if (top <= root) continue;
    const half = Math.max(shape.pitch / 16, (shape.radius - top) / steep);
    const foot = shape.pitch / 2 - shape.pitch / 12;
    if (y + foot < shape.nose) points.push([Math.min(root, envelope(shape, y + foot)), y + foot]);
    const cut = (level: number) =>
      Math.max(root, Math.min(top + half * steep, envelope(shape, level)));
    points.push([cut(y + half), y + half], [cut(y - half), y - half], [root, y - foot]);
  }
  points.push([root, shape.top]);
  return points.map(([r, y]) => [shape.axis + side * r, y]);
}

/** Crest lines across the front, left out where a flute cuts them. */
function crestLines(shape: TapShape, cut: (angle: number, y: number) => boolean): string {
  const root = rootOf(shape);
  const sign = shape.hand === 'left' ? 1 : -1;
  const steps = 14;
  return crests(shape, 0)
    .map((middle) => {
      const runs: Point[][] = [[]];
      for (let i = 0; i <= steps; i += 1) {
        const angle = -Math.PI / 2 + (Math.PI * i) / steps;
        const y = middle + (sign * shape.pitch * angle) / (2 * Math.PI);
        const tip = envelope(shape, y);
        if (tip > root && y > shape.top + 0.6 * shape.pitch && !cut(angle, y))
          runs.at(-1)!.push([shape.axis + tip * Math.sin(angle), y]);
        else if (runs.at(-1)!.length > 0) runs.push([]);
      }
      return runs
        .filter((run) => run.length > 1)
        .map((run) => polyline(run))
        .join('');
    })
    .join('');
}

function coneLine(shape: TapShape, side: -1 | 1): string {
  const { axis, nose, chamfer, radius } = shape;
  const slope = (radius - noseOf(shape)) / chamfer;
  const over = 0.9 * shape.pitch;
  const at = (up: number): Point => [axis + side * (noseOf(shape) + slope * up + 2.5), nose - up];
  return polyline([at(0), at(chamfer + over)]);
}

/** Draws the tap: body, crest lines, flutes. */
export function tapBody(shape: TapShape): Mark {
  const winding = windingOf(shape);
  const left = teeth(shape, -1);
  const right = teeth(shape, 1);
  const broken = freehand(left.at(-1)!, right.at(-1)!, 1.4);
  const outline = [...left, ...broken, ...[...right].reverse()];
  return group('dw-tool', [
    path('dw-tool-body', polyline(outline, true)),
    path('dw-tool-flute', ...fluteRings(winding).map((ring) => polyline(ring, true))),
    path('dw-tool-crest', crestLines(shape, inFlute(winding))),
    path('dw-tool-edge', polyline(left), polyline(right), polyline([left[0]!, right[0]!])),
    shape.cone ? path('dw-tool-cone', coneLine(shape, -1), coneLine(shape, 1)) : null,
    path('dw-thin', polyline(broken)),
  ]);
}

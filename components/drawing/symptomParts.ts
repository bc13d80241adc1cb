/** Parts of the small pictures of what goes wrong: hole, thread, tap, gauge. Not to scale: each shows one thing. */

import { arrowhead, freehand, hatching } from './geometry';
import { group, path, polyline, type Mark, type Point } from './marks';

export const SMALL = { width: 160, height: 120 } as const;

/** Axis, face of the part, ends of the block, half-widths of thread and hole, one pitch. */
export const AXIS = 80;
export const FACE = 34;
const BLOCK = { left: 18, right: 142, bottom: 114 };
const MAJOR = 21;
const MINOR = 16;
export const PITCH = 9;

/** Turned by `degrees` about the hole's mouth. */
export function turned(points: readonly Point[], degrees: number): Point[] {
  const angle = (degrees * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return points.map(([x, y]) => [
    AXIS + (x - AXIS) * cos - (y - FACE) * sin,
    FACE + (x - AXIS) * sin + (y - FACE) * cos,
  ]);
}

/** A thread's edge from `from` down to `to`: side −1 left, 1 right; `inner` and `outer` half-widths. */
export function edge(
  side: -1 | 1,
  from: number,
  to: number,
  { inner = MINOR, outer = MAJOR, pitch = PITCH, shift = 0 } = {},
): Point[] {
  const points: Point[] = [[AXIS + side * inner, from]];
  const lead = side === 1 ? pitch / 2 : 0;
  for (let y = from + lead + shift; y + pitch <= to + 0.01; y += pitch) {
    points.push([AXIS + side * inner, y]);
    points.push([AXIS + side * outer, y + pitch / 2]);
    points.push([AXIS + side * inner, y + pitch]);
  }
  points.push([AXIS + side * inner, to]);
  return points;
}

export interface HoleLook {
  /** End of the thread, and of the hole's wall; no floor where it runs through. */
  threadTo?: number;
  shoulder?: number;
  lean?: number;
  /** Both walls, from the face down, in place of straight threads. */
  walls?: readonly [left: Point[], right: Point[]];
}

/** A block in section with a tapped hole. */
export function hole({ threadTo = 92, shoulder, lean = 0, walls }: HoleLook = {}): Mark {
  const end = shoulder ?? BLOCK.bottom;
  const thread = Math.min(threadTo, end);
  const wallOf = (side: -1 | 1): Point[] => [
    ...edge(side, FACE, thread),
    [AXIS + side * MINOR, end],
  ];
  const [left, right] = walls ?? [wallOf(-1), wallOf(1)];
  const cone: Point[] = shoulder === undefined ? [] : [[AXIS, shoulder + 9]];
  const [leftWall, rightWall, tip] = [turned(left, lean), turned(right, lean), turned(cone, lean)];
  const outer = (side: 'left' | 'right'): Point[] => {
    const x = BLOCK[side];
    const foot: Point = [tip[0]?.[0] ?? x, BLOCK.bottom];
    return [...(tip.length > 0 ? [...tip, foot] : []), ...freehand([x, BLOCK.bottom], [x, FACE])];
  };
  const rings = [
    [...leftWall, ...outer('left')],
    [...rightWall, ...outer('right')],
  ];
  const face = (wall: readonly Point[], x: number) => polyline([[x, FACE], ...wall, ...tip]);
  return group('sy-metal', [
    path('dw-hatch', hatching(rings, 7)),
    path('dw-thick', face(leftWall, BLOCK.left), face(rightWall, BLOCK.right)),
  ]);
}

export interface TapLook {
  /** Where the nose is, and where the drawing of the tap ends above. */
  tip: number;
  top?: number;
  lean?: number;
  shift?: number;
  /** Broken across here: the piece above stands off by a gap. */
  broken?: number;
}

function outline(tip: number, top: number): Point[] {
  const half = 20;
  const chamfer = Math.min(18, tip - top);
  const left = edge(-1, top, tip - chamfer, { inner: half, outer: half - 4, pitch: 7 });
  const right = edge(1, top, tip - chamfer, { inner: half, outer: half - 4, pitch: 7 });
  return [...left, [AXIS - 11, tip], [AXIS + 11, tip], ...right.reverse()];
}

/** A jagged line across, where a tap came apart. */
function breakLine(y: number, half = 20): Point[] {
  return [-1, -0.6, -0.25, 0.1, 0.5, 0.75, 1].map((part, i): Point => [
    AXIS + part * half,
    y + (i % 2 === 0 ? -3 : 3),
  ]);
}

/** A tap seen from the side: outline, two flutes, and the break where it has one. */
export function tap({ tip, top = 6, lean = 0, shift = 0, broken }: TapLook): Mark {
  const moved = (points: readonly Point[]) =>
    turned(points, lean).map(([x, y]): Point => [x + shift, y]);
  const pieces: Point[][] =
    broken === undefined
      ? [outline(tip, top)]
      : [
          [...breakLine(broken), ...outline(tip, broken).reverse()],
          [[AXIS - 20, top], [AXIS + 20, top], ...breakLine(broken - 9).reverse()],
        ];
  const flute = (x: number): Point[] => [
    [AXIS + x, top + 2],
    [AXIS + x * 0.7, tip - 3],
  ];
  return group('sy-tap', [
    ...pieces.map((piece) => path('sy-tool', polyline(moved(piece), true))),
    path('dw-thin', polyline(moved(flute(-7))), polyline(moved(flute(7)))),
    broken === undefined
      ? null
      : path(
          'sy-fault',
          polyline(moved(breakLine(broken))),
          polyline(moved(breakLine(broken - 9))),
        ),
  ]);
}

/** A plug gauge with its nose at `tip`; plain ones have no thread. */
export function gauge(tip: number, plain = false, half = 20, tall = 34): Mark {
  const sides = (side: -1 | 1) =>
    plain
      ? ([
          [AXIS + side * half, tip - tall],
          [AXIS + side * half, tip],
        ] as Point[])
      : edge(side, tip - tall, tip, { inner: half - 4, outer: half, pitch: 7 });
  const body = [...sides(-1), ...sides(1).reverse()];
  const handle: Point[] = [
    [AXIS - 10, tip - tall],
    [AXIS - 10, Math.max(2, tip - tall - 26)],
    [AXIS + 10, Math.max(2, tip - tall - 26)],
    [AXIS + 10, tip - tall],
  ];
  return group('sy-gauge', [
    path('sy-tool', polyline(body, true)),
    path('sy-tool', polyline(handle, true)),
  ]);
}

/** An arrow in the colour of a mark. */
export function arrow(from: Point, to: Point, role = 'sy-mark'): Mark {
  const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const along: Point = [(to[0] - from[0]) / long, (to[1] - from[1]) / long];
  return group('sy-arrow', [
    path(role, polyline([from, [to[0] - along[0] * 6, to[1] - along[1] * 6]])),
    path(`${role}-head`, arrowhead(to, along, 9)),
  ]);
}

/** Little curls of chip about a point. */
export function curls(points: readonly Point[], size = 4): Mark {
  const one = ([x, y]: Point) =>
    polyline(
      Array.from({ length: 13 }, (_, i): Point => {
        const angle = i * 0.75;
        const radius = size * (1 - i / 16);
        return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
      }),
    );
  return path('sy-chip', points.map(one).join(''));
}

/** Threads in section, large: the profile along a wall, metal below. `profile` gives one pitch, 0…1 by 0…1 down. */
export function largeThreads(profile: readonly Point[], extra: readonly Mark[] = []): Mark[] {
  const [left, top, width, depth, floor] = [14, 34, 44, 42, 112];
  const points: Point[] = [0, 1, 2].flatMap((n) =>
    profile.map(([x, y]): Point => [left + (n + x) * width, top + y * depth]),
  );
  const ring: Point[] = [...points, [left + 3 * width, floor], [left, floor]];
  return [path('dw-hatch', hatching([ring], 7)), path('dw-thick', polyline(points)), ...extra];
}

/** Places of a large thread in the picture, for marks on it. */
export function onThread(n: number, x: number, y: number): Point {
  return [14 + (n + x) * 44, 34 + y * 42];
}

/** The profile as it should be. */
export const SOUND: readonly Point[] = [
  [0, 0],
  [0.1, 0],
  [0.45, 1],
  [0.55, 1],
  [0.9, 0],
  [1, 0],
];

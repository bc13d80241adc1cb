/** The tap at its deepest: a part in its extreme position, so dash and double dot (ISO 128). */

import type { HoleFacts, TapFacts } from './holeFacts';
import { SHEET, type Frame } from './holeFrame';
import { freehand } from './geometry';
import { noseRadius, runOutEnd } from './holeMetal';
import { group, line, path, polyline, type Mark, type Point } from './marks';

const { axis, face } = SHEET;
const TOP = 40;

interface Outline {
  /** One side, from the shank down to the nose, as distances from the axis. */
  side: Point[];
  tip: number;
}

function outline(facts: HoleFacts, tap: TapFacts, frame: Frame): Outline {
  const { major, y } = frame;
  const nose = noseRadius(facts, frame);
  const side: Point[] = [
    [0.86 * major, TOP],
    [0.86 * major, face - 20],
    [major, face - 14],
    [major, y(tap.body)],
    [nose, y(tap.nose)],
  ];
  if (tap.tip > tap.nose) {
    const base = Math.min(0.7 * nose, 0.6 * (y(tap.tip) - y(tap.nose)));
    side.push([base, y(tap.nose)], [0, y(tap.tip)]);
  }
  return { side, tip: y(tap.tip) };
}

/** Points of a helix on the visible half of a round body, axis upright. */
function helix(
  radius: number,
  lead: number,
  phase: number,
  top: number,
  bottom: number,
): Point[][] {
  const runs: Point[][] = [];
  let run: Point[] = [];
  const steps = Math.ceil((bottom - top) / 4);
  for (let i = 0; i <= steps; i += 1) {
    const y = top + ((bottom - top) * i) / steps;
    const turn = phase + (2 * Math.PI * (bottom - y)) / lead;
    if (Math.cos(turn) > 0.08) run.push([axis + radius * Math.sin(turn), y]);
    else {
      if (run.length > 2) runs.push(run);
      run = [];
    }
  }
  if (run.length > 2) runs.push(run);
  return runs;
}

/** A hint of the flutes on the part of the tap that stands clear of the metal's lines. */
function flutes(facts: HoleFacts, tap: TapFacts, frame: Frame): Mark[] {
  const radius = 0.86 * frame.minor;
  const top = face - 12;
  const bottom = frame.y(tap.nose) - 2;
  const upright = (share: number, to = bottom) =>
    line('dw-flute', [axis + share * radius, top], [axis + share * radius, to]);
  if (tap.style === 'spiral-flute') {
    // Lead of a flute at 38°; a right-hand helix climbs to the right on the side we see.
    const lead =
      ((2 * Math.PI * radius) / Math.tan((38 * Math.PI) / 180)) * (facts.hand === 'left' ? -1 : 1);
    const edges = [0, 1, 2].flatMap((flute) => [flute, flute + 0.42]);
    return edges.flatMap((edge) =>
      helix(radius, lead, (edge * 2 * Math.PI) / 3, top, bottom).map((points) =>
        path('dw-flute', polyline(points)),
      ),
    );
  }
  if (tap.style === 'form') return [upright(-0.55), upright(0.55)];
  if (tap.style === 'straight-flute')
    return [-0.62, -0.3, 0.3, 0.62].map((share) => upright(share));
  // Spiral point: straight flutes, with a slanting cut through the first threads of each.
  const cut = frame.y(tap.nose - Math.min(1.3 * tap.chamfer, tap.nose));
  const lean = facts.hand === 'left' ? -1 : 1;
  return [
    ...[-0.55, -0.25, 0.35, 0.65].map((share) => upright(share, cut)),
    path(
      'dw-flute',
      polyline([
        [axis - lean * 0.25 * radius, cut],
        [axis + lean * 0.5 * radius, bottom],
      ]),
    ),
    path(
      'dw-flute',
      polyline([
        [axis + lean * 0.65 * radius, cut],
        [axis + lean * 0.94 * radius, (cut + bottom) / 2],
      ]),
    ),
  ];
}

export function tapMarks(facts: HoleFacts, frame: Frame): Mark | null {
  const { tap } = facts;
  if (!tap) return null;
  const { side } = outline(facts, tap, frame);
  const [leftTop, rightTop] = [axis - side[0]![0], axis + side[0]![0]];
  const broken = freehand([leftTop, TOP], [rightTop, TOP], 1.4);
  const mirrored = side.map(([r, y]) => [axis - r, y] as const);
  const right = side.map(([r, y]) => [axis + r, y] as const);
  const body = [...broken, ...right, ...mirrored.slice().reverse()];
  // Inside the metal the thread's own lines are the tap's outline: draw only what they do not.
  const out = runOutEnd(facts, frame);
  const leaves = facts.through
    ? Math.min(facts.shoulder, out?.[1] ?? Infinity)
    : (out?.[1] ?? tap.body);
  const above = (points: readonly Point[]) => points.filter(([, y]) => y <= face);
  const below = (sign: number): Point[] => {
    const start = frame.y(leaves);
    const rest = side.filter(([, y]) => y > start + 0.01);
    return [
      [axis + sign * widthAt(side, start), start],
      ...rest.map(([r, y]) => [axis + sign * r, y] as const),
    ];
  };
  const tail = [...below(-1), ...below(1).reverse()];
  return group('dw-tap', [
    path('dw-tap-body', polyline(body, true)),
    ...flutes(facts, tap, frame),
    path('dw-thin', polyline(broken)),
    path('dw-phantom', polyline([...above(mirrored), [axis - frame.major, face]])),
    path('dw-phantom', polyline([...above(right), [axis + frame.major, face]])),
    path('dw-phantom', polyline(tail)),
  ]);
}

function widthAt(side: readonly Point[], level: number): number {
  for (let i = 1; i < side.length; i += 1) {
    const [[r1, y1], [r2, y2]] = [side[i - 1]!, side[i]!];
    if (level <= y2) return y2 === y1 ? r2 : r1 + ((r2 - r1) * (level - y1)) / (y2 - y1);
  }
  return side.at(-1)![0];
}

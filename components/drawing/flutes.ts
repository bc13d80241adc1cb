/** Flutes of a tap seen from the side: bands that wind round a body whose axis stands upright, nose down. */

import type { Point } from './marks';

export interface Winding {
  /** Sheet x of the axis, and y of the nose and of the top of what is drawn. */
  axis: number;
  nose: number;
  top: number;
  /** Half-width of the flute's floor at a sheet y. */
  radius: (y: number) => number;
  /**
   * Turn of the flutes per unit of height, radians: 0 straight, positive as a right-hand helix,
   * which climbs to the right on the side we see.
   */
  twist: (y: number) => number;
  flutes: number;
  /** Share of the round that is flute, 0 to 1, and where the first flute starts, radians from the front. */
  open: number;
  start: number;
}

const STEP = 4;
const HALF = Math.PI / 2;

function wrap(angle: number): number {
  return angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI));
}

/** Heights from the nose upward with the angle the flutes have turned through. */
function turns(winding: Winding): { y: number; turn: number }[] {
  const { nose, top, twist } = winding;
  const steps = Math.max(1, Math.ceil((nose - top) / STEP));
  const height = (nose - top) / steps;
  let turn = 0;
  return Array.from({ length: steps + 1 }, (_, i) => {
    const y = nose - i * height;
    if (i > 0) turn += twist(y + height / 2) * height;
    return { y, turn };
  });
}

function width(winding: Winding): number {
  return (winding.open * 2 * Math.PI) / winding.flutes;
}

/** The visible parts of each flute, as closed rings. */
export function fluteRings(winding: Winding): Point[][] {
  const { axis, radius, flutes, start } = winding;
  const rings: Point[][] = [];
  const levels = turns(winding);
  const straight = levels.every(({ turn }) => turn === 0);
  for (let flute = 0; flute < flutes; flute += 1) {
    let left: Point[] = [];
    let right: Point[] = [];
    const close = () => {
      if (left.length > 1) rings.push([...left, ...[...right].reverse()]);
      [left, right] = [[], []];
    };
    levels.forEach(({ y, turn }, i) => {
      if (straight && i > 0 && i < levels.length - 1 && radius(y) === radius(levels[i - 1]!.y))
        return;
      const middle = wrap(start + width(winding) / 2 + (flute * 2 * Math.PI) / flutes + turn);
      const from = Math.max(-HALF, middle - width(winding) / 2);
      const to = Math.min(HALF, middle + width(winding) / 2);
      if (to - from < 0.02) return close();
      left.push([axis + radius(y) * Math.sin(from), y]);
      right.push([axis + radius(y) * Math.sin(to), y]);
    });
    close();
  }
  return rings;
}

/** True where a point of the body's front, at an angle from the middle, lies in a flute. */
export function inFlute(winding: Winding): (angle: number, y: number) => boolean {
  const levels = turns(winding);
  const { nose, top, flutes, start } = winding;
  const half = width(winding) / 2;
  return (angle, y) => {
    const share = (nose - y) / (nose - top);
    const level = levels[Math.round(Math.min(Math.max(share, 0), 1) * (levels.length - 1))]!;
    for (let flute = 0; flute < flutes; flute += 1) {
      const middle = start + half + (flute * 2 * Math.PI) / flutes + level.turn;
      if (Math.abs(wrap(angle - middle)) < half) return true;
    }
    return false;
  };
}

/** The line of one flute's edge on the front of the body; `side` −1 its left edge, 1 its right. */
export function fluteEdge(winding: Winding, side: -1 | 1): Point[] {
  const { axis, radius, start } = winding;
  const offset = side === -1 ? 0 : width(winding);
  return turns(winding)
    .map(({ y, turn }) => ({ y, angle: start + offset + turn }))
    .filter(({ angle }) => Math.abs(angle) < HALF)
    .map(({ y, angle }) => [axis + radius(y) * Math.sin(angle), y] as const);
}

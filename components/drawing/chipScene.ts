/** A tap in its hole with its flutes turned: where face and flute stand, and the way a chip takes. */

import type { ChipCourse } from '../../core/chips/direction';
import type { Hand } from '../../core/thread/thread';
import { fluteEdge } from './flutes';
import type { Point } from './marks';
import { windingOf, type TapShape } from './tapBody';

export interface ChipModel {
  /** Lean of the cutting face, degrees, positive as a right-hand helix; −45 to 45. */
  lean: number;
  /** Only the first threads are ground at that angle, as on a spiral point. */
  noseOnly: boolean;
  cut: Hand;
  /** Where the chip goes, by the core's rule for this face and hand. */
  course: Exclude<ChipCourse, 'none'>;
  chips: 'long' | 'short';
  hole: 'blind' | 'through';
}

export const WIDTH = 354;
export const AXIS = 177;
export const FACE = 92;
export const NOSE = 222;
export const RADIUS = 58;
export const PITCH = 17;
export const BLOCK = { left: 84, right: 270 };
export const FLOOR = { through: 204, shoulder: 264, cone: 282, bottom: 300 } as const;

export interface Scene {
  model: ChipModel;
  shape: TapShape;
  /** Leading edge of the land in front: the cutting face, from the nose up. */
  face: Point[];
  /** Middle of the flute before it, from the nose up. */
  flute: Point[];
  /** −1 when the teeth in front move to the left (right-hand cut), 1 to the right. */
  way: -1 | 1;
}

export function sceneOf(model: ChipModel): Scene {
  const way = model.cut === 'right' ? -1 : 1;
  const open = (0.42 * 2 * Math.PI) / 3;
  // The flute is set so that the face stands a little past the middle where it cuts.
  const twist = Math.tan((model.lean * Math.PI) / 180) / (RADIUS - 0.6134 * PITCH);
  const face = -way * 0.22 - twist * 30;
  const shape: TapShape = {
    axis: AXIS,
    nose: NOSE,
    top: 34,
    radius: RADIUS,
    pitch: PITCH,
    chamfer: 3 * PITCH,
    flutes: 3,
    style: 'straight-flute',
    hand: model.cut,
    turned: {
      lean: model.lean,
      noseOnly: model.noseOnly,
      start: way === -1 ? face - open : face,
    },
  };
  const winding = windingOf(shape);
  const [left, right] = [fluteEdge(winding, -1), fluteEdge(winding, 1)];
  const middle = fluteEdge({ ...winding, start: winding.start + open / 2 }, -1);
  return { model, shape, face: way === -1 ? right : left, flute: middle, way };
}

/** The way a chip takes: from the face into the flute, and on. */
export function course({ model, flute, face, way }: Scene): Point[] {
  const start = face[8] ?? face[0]!;
  if (model.course === 'back') {
    const rising = flute.filter(([, y]) => y < start[1] - 14);
    const last = rising.at(-1) ?? start;
    return [start, ...rising, [last[0] + way * 16, Math.min(last[1], 40) - 12]];
  }
  if (model.course === 'ahead') {
    const falling = flute.filter(([, y]) => y > start[1] + 6).reverse();
    const end = model.hole === 'through' ? 292 : 262;
    return [
      start,
      ...falling,
      [AXIS + way * 8, NOSE + 16],
      [AXIS - way * 6, end - 12],
      [AXIS + way * 14, end],
    ];
  }
  return flute.filter(([, y]) => y < NOSE - 12 && y > NOSE - 78);
}

/**
 * The hole in its part: how a slanting face and a counterbore move the depths, and what a crossing takes away.
 * All lengths mm.
 */

import { tapMajor } from '../tap/major';
import type { Thread } from '../thread/thread';
import type { Crossing, HoleKind, HoleRequest, TapChoice } from './types';

/** Degrees off square up to which a drill starts as in a square face. Common practice. */
export const SQUARE_ENOUGH = 3;

/** Diameter of the flat that a tap wants, over its own. Common practice. */
export const FLAT_OVER_THREAD = 1.1;

/** Share of a tap's circumference that its lands take, the flutes having the rest. Common practice. */
export const LAND_SHARE = 0.5;

const HAIR = 1e-9;

/** Tangent of an angle in degrees. */
const slopeOf = (degrees: number): number => Math.tan((degrees * Math.PI) / 180);

/** True where the face slants so far that a drill wanders on it (above 3°). Source: common practice. */
export function slants({ entry }: Pick<HoleRequest, 'entry'>): boolean {
  return entry !== undefined && entry.angle > SQUARE_ENOUGH + HAIR;
}

/** True where that face has no flat either: no tap is led with. Source: common practice. */
export function needsFlat(request: Pick<HoleRequest, 'entry'>): boolean {
  return slants(request) && !request.entry!.flat;
}

export interface SlantFacts {
  /** Degrees from square. */
  angle: number;
  /** How much of the thread has metal on one side only, if it is cut without a flat: tan(angle) · D, mm. */
  loss: number;
  /** Diameter of the flat, mm, and how far it lies below the face at the hole's axis. */
  diameter: number;
  sink: number;
}

/** What a slanting face does to a thread of this diameter, mm. Derived: a plane cut through a cylinder. */
export function slantFacts(angle: number, major: number): SlantFacts {
  const slope = slopeOf(angle);
  const diameter = FLAT_OVER_THREAD * major;
  return { angle, loss: slope * major, diameter, sink: (slope * diameter) / 2 };
}

/**
 * How far the place that depths count from (the flat, or the counterbore's floor) lies below the face at the
 * axis, mm. `flat`: the share of it that a drawing's limits, measured at the axis, do not know of.
 */
export interface Datum {
  below: number;
  flat: number;
}

/** Where this request's depths count from, mm. Derived. */
export function datumOf(request: HoleRequest, thread: Thread): Datum {
  const { entry, counterbore } = request;
  const depth = counterbore?.depth ?? 0;
  if (!entry || !(entry.flat || slants(request))) return { below: depth, flat: 0 };
  // A counterbore's floor is a flat by itself; only what it lacks in depth is added.
  const flat = Math.max(0, slantFacts(entry.angle, tapMajor(thread)).sink - depth);
  return { below: depth + flat, flat };
}

function seatedHole(hole: HoleKind, flat: number): HoleKind {
  if (hole.kind === 'through') return { ...hole, thickness: hole.thickness - flat };
  if (!hole.limit) return hole;
  return { ...hole, limit: { ...hole.limit, depth: Math.max(0, hole.limit.depth - flat) } };
}

/**
 * The request as it looks from where its depths count: a limit and a thickness measured at the axis lose what
 * the flat takes, and no thread is asked for in metal that is gone. Lengths mm. Derived.
 */
export function seated(request: HoleRequest, { flat }: Datum): HoleRequest {
  if (flat === 0) return request;
  const hole = seatedHole(request.hole, flat);
  const { crossing, fullThread } = request;
  const most = hole.kind === 'through' ? hole.thickness : Infinity;
  return {
    ...request,
    hole,
    ...(fullThread === undefined ? {} : { fullThread: Math.min(fullThread, most) }),
    ...(crossing?.from === undefined
      ? {}
      : { crossing: { ...crossing, from: crossing.from - flat } }),
  };
}

/**
 * Full thread that a crossing takes, mm: a bore's width as far as it lies in the thread, all of it where nobody
 * says where it begins. A slot takes an arc of every turn and no length: 0. Derived.
 */
export function lostThread(crossing: Crossing, fullThread: number): number {
  if (crossing.kind === 'slot') return 0;
  const { width, from } = crossing;
  if (from === undefined) return Math.min(width, fullThread);
  return Math.max(0, Math.min(from + width, fullThread) - Math.max(from, 0));
}

/** Width of a land along the circumference, mm, for a tap with so many flutes. Derived from `LAND_SHARE`. */
export function landWidth(major: number, flutes: number): number {
  return (Math.PI * major * LAND_SHARE) / flutes;
}

/** Depths as measured from the face at the axis, mm; nothing where they count from there anyway. Derived. */
export function fromFace(
  depth: Pick<TapChoice['depth'], 'shoulder' | 'point' | 'tip' | 'fullThread'>,
  { below }: Datum,
): Pick<TapChoice['depth'], 'fromFace'> {
  if (below === 0) return {};
  const { shoulder, point, tip, fullThread } = depth;
  return {
    fromFace: {
      shoulder: shoulder + below,
      point: point + below,
      tip: tip + below,
      fullThread: fullThread + below,
    },
  };
}

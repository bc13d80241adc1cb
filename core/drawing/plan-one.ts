/** One callout of a drawing: what is asked of the planner for it, and what comes back. */

import type { Note, Outcome } from '../outcome';
import type { HolePlan, HoleRequest } from '../plan/types';
import { readThread } from '../thread/read';
import type { Callout, Shop } from './types';

/** Diameters of thickness that a through hole is given when neither line nor part says. Common practice. */
const USUAL_THICKNESS = 1.5;

function diameterOf(thread: string): number {
  const read = readThread(thread);
  return read.ok ? read.value.diameter : 10;
}

/** What a callout asks of the planner, in mm. Source: common practice. */
export function requestFor(callout: Callout, shop: Shop): HoleRequest {
  const { thread, fullThread, hole, fields, chipsMayFall } = callout;
  const common = {
    thread,
    material: shop.material,
    ...(shop.spindle && { spindle: shop.spindle }),
    ...(fullThread !== undefined && { fullThread }),
    ...fields,
  };
  if (callout.through) {
    const usual = USUAL_THICKNESS * diameterOf(thread);
    const thickness = callout.thickness ?? shop.thickness ?? Math.max(fullThread ?? 0, usual);
    return {
      ...common,
      hole: { kind: 'through', thickness, ...(chipsMayFall === false && { chipsMayFall }) },
    };
  }
  const depth = hole?.depth;
  const limit = depth === undefined ? {} : { limit: { at: hole!.at, depth } };
  return { ...common, hole: { kind: 'blind', ...limit } };
}

const makes = (plan: Outcome<HolePlan>) =>
  plan.ok && plan.value.taps.some(({ verdict }) => verdict === 'best');

/** The same hole as far as the tolerances of its depths allow, in the order of asking. */
function allowances(
  callout: Callout,
  request: HoleRequest,
): { request: HoleRequest; note: Note }[] {
  const { limits, hole, fullThread } = callout;
  const list: { request: HoleRequest; note: Note }[] = [];
  const deepest = limits?.hole?.deepest;
  if (
    request.hole.kind === 'blind' &&
    hole?.depth !== undefined &&
    deepest !== undefined &&
    deepest > hole.depth
  ) {
    const deeper = { at: hole.at, depth: deepest };
    const note = { code: 'planned-at-deepest', numbers: { drawn: hole.depth, planned: deepest } };
    list.push({ request: { ...request, hole: { kind: 'blind', limit: deeper } }, note });
  }
  if (
    request.hole.kind === 'blind' &&
    hole?.depth !== undefined &&
    limits?.hole &&
    deepest === undefined
  ) {
    const note = { code: 'planned-deeper', numbers: { drawn: hole.depth } };
    list.push({ request: { ...request, hole: { kind: 'blind' } }, note });
  }
  const least = limits?.fullThread?.least;
  if (fullThread !== undefined && least !== undefined && least < fullThread) {
    const note = { code: 'planned-at-least', numbers: { drawn: fullThread, planned: least } };
    list.push({ request: { ...request, fullThread: least }, note });
  }
  return list;
}

/**
 * The plan of a callout: the figures drawn, and where no tap makes those, what their tolerance allows. mm.
 * Source: as `planHole`.
 */
export function planOne(
  callout: Callout,
  shop: Shop,
  planOnce: (request: HoleRequest) => Outcome<HolePlan>,
): { request: HoleRequest; plan: Outcome<HolePlan>; notes: Note[] } {
  const request = requestFor(callout, shop);
  const plan = planOnce(request);
  if (makes(plan)) return { request, plan, notes: [] };
  for (const other of allowances(callout, request)) {
    const allowed = planOnce(other.request);
    if (makes(allowed)) return { request: other.request, plan: allowed, notes: [other.note] };
  }
  return { request, plan, notes: [] };
}

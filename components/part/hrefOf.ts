/** From a hole of the drawing to the planner. */

import type { DrawingPlan } from '../../core/drawing/types';
import { plannerHref } from '../calculators/addresses';
import { length, type Unit } from '../words';

/** The planner with one hole of the drawing filled in; null for a line that could not be read. */
export function hrefOf({ holes }: DrawingPlan, index: number, unit: Unit): string | null {
  const { request, callout } = holes[index] ?? {};
  if (!request || !callout?.ok) return null;
  const { count } = callout.value;
  const { hole, spindle } = request;
  const typed = (mm: number | undefined) => (mm === undefined ? '' : length(mm, unit));
  return plannerHref({
    thread: request.thread,
    hole: hole.kind,
    material: request.material,
    units: unit === 'in' ? 'in' : '',
    ...(hole.kind === 'blind'
      ? {
          depth: typed(request.fullThread),
          limit: typed(hole.limit?.depth),
          at: hole.limit?.at ?? 'shoulder',
        }
      : { thickness: typed(hole.thickness), partial: typed(request.fullThread) }),
    ...(count > 1 ? { holes: String(count) } : {}),
    ...(spindle ? { drive: spindle.drive } : {}),
    ...(spindle?.torque === undefined ? {} : { torque: String(spindle.torque) }),
    ...(spindle?.maxRpm === undefined ? {} : { rpm: String(spindle.maxRpm) }),
  });
}

/** The one writer of a request, for the planner's address and for what is kept. */

import type { HoleRequest } from '../../core/plan/types';
import type { Inputs } from '../planner/inputs';
import { lengthWriter, REQUEST_PARTS } from '../planner/request-parts';
import type { Unit } from '../words';
import { plannerHref } from './hrefs';

/**
 * The form filled in with a request, its bare lengths in `unit`: read back it is the same request, to the
 * last bit. `count`: how many of the hole a drawing asks for.
 */
export function requestInputs(request: HoleRequest, unit: Unit, count = 1): Partial<Inputs> {
  const length = lengthWriter(unit);
  const parts: Partial<Inputs>[] = REQUEST_PARTS.map(({ write }) => write(request, length));
  return Object.assign(
    {
      thread: request.thread,
      ...(unit === 'in' ? { units: 'in' } : {}),
      ...(count > 1 ? { holes: String(count) } : {}),
    },
    ...parts,
  );
}

/** The planner with a whole hole filled in: it answers there as it does here. */
export function plannerAddress(request: HoleRequest, unit: Unit = 'mm', count = 1): string {
  return plannerHref(requestInputs(request, unit, count));
}

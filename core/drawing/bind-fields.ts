/** What was acted on, as fields of a request; lengths in mm. */

import type { HoleRequest } from '../plan/types';
import type { RawLength } from './length';
import type { RawFields } from './reading';

type Measure = (raw: RawLength) => number | undefined;

/** Fields of the request that the line itself fills; null where there are none. Source: common practice; mm. */
export function requestFields(raw: RawFields, measure: Measure): Partial<HoleRequest> | null {
  const { later, duty, entry, crossing, interrupted, cored, drillPoint, counterbore } = raw;
  const width = crossing && measure(crossing.width);
  const diameter = counterbore && measure(counterbore.diameter);
  const depth = counterbore && measure(counterbore.depth);
  const fields: Partial<HoleRequest> = {
    ...(later.size > 0 && { later: [...later] }),
    ...(duty && { duty }),
    ...(entry && { entry }),
    // Nobody said when it is cut, so it is planned for the harder of the two: already there.
    ...(crossing &&
      width !== undefined && { crossing: { kind: crossing.kind, width, cut: 'before' as const } }),
    ...(interrupted && !crossing && { interrupted }),
    ...(cored && { cored }),
    ...(drillPoint !== undefined && { drillPoint }),
    ...(diameter !== undefined && depth !== undefined && { counterbore: { diameter, depth } }),
  };
  return Object.keys(fields).length > 0 ? fields : null;
}

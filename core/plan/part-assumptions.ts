/** What is taken for granted of the part around the hole, until it is said otherwise. */

import type { SourceId } from '../sources';
import { stockTap } from '../tap/reach';
import type { AssumptionCode } from './codes';
import type { Job } from './job';
import type { Assumption } from './types';

function assume(
  code: AssumptionCode,
  numbers: Record<string, number> = {},
  source: SourceId = 'common-practice',
): Assumption {
  return { code, numbers, source };
}

function placeAssumptions({ request, datum }: Job): Assumption[] {
  const { entry, counterbore, crossing, interrupted } = request;
  const found: Assumption[] = [];
  if (!entry) found.push(assume('entry-square'));
  else if (datum.flat > 0) found.push(assume('flat-datum', { sink: datum.flat }, 'derived'));
  if (!counterbore) found.push(assume('counterbore-none'));
  else found.push(assume('counterbore-datum', { depth: counterbore.depth }));
  if (!crossing && !interrupted) found.push(assume('crossing-none'));
  if (crossing?.kind === 'bore' && crossing.from === undefined) {
    found.push(assume('crossing-whole', { width: crossing.width }));
  }
  return found;
}

/** Defaults taken of the part, lengths mm. Sources: on each. */
export function partAssumptions(job: Job): Assumption[] {
  const { request, thread } = job;
  const found = placeAssumptions(job);
  if (!request.cored) found.push(assume('drilled-solid'));
  if (!request.later?.length) found.push(assume('later-none'));
  if (!request.duty) found.push(assume('duty-none'));
  const usual = stockTap(thread)?.usual;
  found.push(
    usual
      ? assume('tap-length-stock', { reach: usual.reach, overall: usual.overall }, usual.source)
      : assume('tap-length-unknown', {}, 'from-memory'),
  );
  return found;
}

/** What would help against the part around the hole. Common practice on derived lengths, mm. */

import type { SourceId } from '../sources';
import { STYLES } from '../tap/styles';
import type { Candidate } from './candidates';
import type { RemedyCode } from './codes';
import type { Job } from './job';
import { needsFlat, slantFacts } from './part-fields';
import { crossedBefore, lostIn, reachFor } from './part-judge';
import type { Remedy } from './types';

function remedy(
  code: RemedyCode,
  numbers: Record<string, number> = {},
  source: SourceId = 'common-practice',
): Remedy {
  return { code, numbers, source };
}

/** A longer tap helps where the ordinary one is too short and no reduced shank of its size reaches. */
function longerTap(job: Job, tap: Candidate | undefined): Remedy[] {
  if (!tap || STYLES[tap.style].process === 'mill') return [];
  const { verdict, needed, reduced } = reachFor(job, tap);
  const short = verdict === 'none' || (verdict === 'long' && reduced === undefined);
  return short ? [remedy('longer-tap', { needed })] : [];
}

/** Remedies of the part, in no order; lengths mm. `tap`: the one the plan speaks of. Sources: on each. */
export function partRemedies(job: Job, tap: Candidate | undefined): Remedy[] {
  const { entry } = job.request;
  const crossing = crossedBefore(job);
  const found: Remedy[] = [];
  if (entry && needsFlat(job.request)) {
    found.push(remedy('flat-first', { ...slantFacts(entry.angle, job.major) }, 'derived'));
  }
  if (crossing) {
    found.push(remedy('tap-before-crossing', { width: crossing.width, lost: lostIn(job) }));
  }
  return [...found, ...longerTap(job, tap)];
}

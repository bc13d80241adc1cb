/** From a request as it was typed to a job with its thread read, its hole sized and its defaults taken. */

import { threadLimits } from '../limits/thread-limits';
import type { Material } from '../material/material';
import { ownMaterial } from '../material/own';
import { findMaterial } from '../material/table';
import { answer, refuse, type Outcome } from '../outcome';
import { readThread } from '../thread/read';
import { tapMajor } from '../tap/major';
import { borrowedMinorMax } from './borrowed';
import { prepareJob, type Job } from './job';
import { fitProblems } from './part-checks';
import { checkRequest } from './request';
import type { HoleRequest } from './types';

/** The handbook's material, or the shop's own on the back of it; the request was checked before. */
function materialOf({ material, ownMaterial: own }: HoleRequest): Material {
  const made = own && ownMaterial({ ...own, like: material });
  return made?.ok ? made.value : findMaterial(material)!;
}

/**
 * Reads and checks a request: lengths mm, torque N·m, degrees (see `HoleRequest`). Refuses with the
 * problems of `readThread` and `threadLimits`, and with `REQUEST_PROBLEM_CODES`; its notes are those of
 * both readings. With `taper` a taper pipe thread is let through without limits, where `threadLimits`
 * refuses `taper-pipe`. Sources: as the parts it calls.
 */
export function jobOf(asked: HoleRequest, { taper = false } = {}): Outcome<Job> {
  // Requests also come from addresses and files: an empty one is refused field by field, not thrown at.
  const request = asked ?? ({} as HoleRequest);
  const reading = readThread(request.thread);
  const problems = [...(reading.ok ? [] : reading.problems), ...checkRequest(request)];
  if (!reading.ok || problems.length > 0) return { ok: false, problems };
  const thread = reading.value;
  const web = request.tapWeb;
  if (web !== undefined && web >= tapMajor(thread)) {
    const data = { typed: String(web) };
    return refuse({ code: 'web-out-of-range', field: 'tapWeb', data });
  }
  const misfits = fitProblems(request, thread);
  if (misfits.length > 0) return { ok: false, problems: misfits };
  const found = threadLimits(thread);
  // A taper pipe thread has no limits; a plan does without, a closer study of one tap does not.
  if (!found.ok && !(taper && found.problems[0]?.code === 'taper-pipe')) return found;
  const limits = found.ok ? found.value : null;
  const material = materialOf(request);
  const borrowedMax = limits ? borrowedMinorMax(thread, limits) : undefined;
  const job = prepareJob({ request, thread, limits, material, borrowedMax });
  return answer(job, [...reading.notes, ...(found.ok ? found.notes : [])]);
}

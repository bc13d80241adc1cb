/** From a request as it was typed to a job with its thread read, its hole sized and its defaults taken. */

import { threadLimits } from '../limits/thread-limits';
import type { ThreadLimits } from '../limits/limits';
import { findMaterial } from '../material/table';
import { answer, type Outcome } from '../outcome';
import { readThread } from '../thread/read';
import type { Thread } from '../thread/thread';
import { prepareJob, type Job } from './job';
import { checkRequest } from './request';
import type { HoleRequest } from './types';

/** Upper minor limit to plan by where the standard's own is not known (UNJ): UN 3B tolerance on its minimum. */
function borrowedMinorMax(thread: Thread, limits: ThreadLimits): number | undefined {
  if (limits.minor.max !== undefined) return undefined;
  const like = threadLimits({ ...thread, form: thread.form === 'UNJ' ? 'UN' : 'M' });
  if (!like.ok || like.value.minor.max === undefined) return undefined;
  return limits.minor.min + (like.value.minor.max - like.value.minor.min);
}

/**
 * Reads and checks a request: lengths mm, torque N·m, degrees (see `HoleRequest`). Refuses with the
 * problems of `readThread` and `threadLimits`, and with `REQUEST_PROBLEM_CODES`; its notes are those of
 * both readings. Sources: as the parts it calls.
 */
export function jobOf(request: HoleRequest): Outcome<Job> {
  const reading = readThread(request.thread);
  const problems = [...(reading.ok ? [] : reading.problems), ...checkRequest(request)];
  if (!reading.ok || problems.length > 0) return { ok: false, problems };
  const thread = reading.value;
  const limits = threadLimits(thread);
  if (!limits.ok) return limits;
  const material = findMaterial(request.material)!;
  const borrowedMax = borrowedMinorMax(thread, limits.value);
  const job = prepareJob({ request, thread, limits: limits.value, material, borrowedMax });
  return answer(job, [...reading.notes, ...limits.notes]);
}

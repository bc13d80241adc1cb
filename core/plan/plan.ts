/** From a drawing's words to a tap, a hole and a card: the recommendation, each step with its reason. */

import { cycleSeconds, tappingSpeed } from '../cycle/speed';
import { threadLimits } from '../limits/thread-limits';
import type { ThreadLimits } from '../limits/limits';
import { findMaterial } from '../material/table';
import { answer, type Outcome } from '../outcome';
import { STYLES } from '../tap/styles';
import { readThread } from '../thread/read';
import type { Thread } from '../thread/thread';
import { assumptionsFor } from './assumptions';
import { candidatesFor, webOf, type Candidate } from './candidates';
import { prepareJob, type Job } from './job';
import { judge, type Judged } from './judge';
import { rank } from './rank';
import { remediesFor } from './remedies';
import { checkRequest } from './request';
import { stripCheck } from './strength';
import type { Cycle, HolePlan, HoleRequest, TapChoice } from './types';
import { spokenTap, warningsFor } from './warnings';

/** Threads the tap starts above the face: pitches of approach in a cycle. Common practice. */
const APPROACH_PITCHES = 3;

function cycleFor(job: Job, tap: Candidate | undefined): Cycle | null {
  const { drive, maxRpm, acceleration } = job.spindle;
  const speed = tappingSpeed(job.material, job.major, job.fullThread, maxRpm);
  if (!speed || drive === 'hand' || !tap) return null;
  const travel = tap.depth.tip + APPROACH_PITCHES * job.pitch;
  return {
    rpm: speed.rpm,
    rpmRange: speed.range,
    feedPerRev: job.pitch,
    feedPerMinute: job.pitch * speed.rpm,
    seconds: cycleSeconds(travel, job.pitch, speed.rpm, acceleration),
  };
}

function toChoice(job: Job, tap: Judged, isBest: boolean): TapChoice {
  const { torque: available, drive } = job.spindle;
  const share =
    available === undefined || drive === 'hand'
      ? {}
      : { spindleShare: tap.torque.expected / available };
  return {
    process: STYLES[tap.style].process,
    style: tap.style,
    hand: job.thread.hand,
    chamfer: tap.chamfer,
    verdict: isBest ? 'best' : tap.fits ? 'works' : 'no',
    reasons: tap.reasons,
    drill: tap.drill,
    depth: tap.depth,
    torque: tap.torque,
    toothLoad: tap.toothLoad,
    tapShare: tap.share,
    ...share,
    chips: tap.chips,
  };
}

/** Upper minor limit to plan by where the standard's own is not known (UNJ): UN 3B tolerance on its minimum. */
function borrowedMinorMax(thread: Thread, limits: ThreadLimits): number | undefined {
  if (limits.minor.max !== undefined) return undefined;
  const like = threadLimits({ ...thread, form: thread.form === 'UNJ' ? 'UN' : 'M' });
  if (!like.ok || like.value.minor.max === undefined) return undefined;
  return limits.minor.min + (like.value.minor.max - like.value.minor.min);
}

function planJob(job: Job): HolePlan {
  const { candidates, scale } = candidatesFor(job);
  const taps = rank(
    job,
    candidates.map((candidate) => judge(job, candidate)),
  );
  const first = taps[0];
  const best = first?.fits && STYLES[first.style].process !== 'mill' ? first : undefined;
  const spoken = spokenTap(taps);
  const strip = stripCheck(job);
  return {
    thread: job.thread,
    limits: job.limits,
    drill: best ? best.drill : job.drill,
    drills: job.drills,
    taps: taps.map((tap) => toChoice(job, tap, tap === best)),
    remedies: remediesFor(job, taps, strip),
    cycle: cycleFor(job, spoken),
    warnings: warningsFor(job, taps, strip),
    assumptions: assumptionsFor(job, scale, strip, spoken && webOf(job, spoken.style)),
  };
}

/**
 * Plans one tapped hole: which tap and why, which drill, how deep, how fast, how hard, what to watch.
 *
 * `request`: lengths mm, torque N·m, rev/min, degrees (see `HoleRequest` for ranges and defaults).
 * A drawing that cannot be met is an ok plan whose taps are all refused and whose remedies say what
 * would help; not ok only for input that makes no sense: the problems of `readThread` and
 * `REQUEST_PROBLEM_CODES`. Never throws for a well-formed request, never returns a number that is not finite.
 * Sources: stand on every reason, warning, assumption and remedy.
 */
export function planHole(request: HoleRequest): Outcome<HolePlan> {
  const reading = readThread(request.thread);
  const problems = [...(reading.ok ? [] : reading.problems), ...checkRequest(request)];
  if (!reading.ok || problems.length > 0) return { ok: false, problems };
  const thread = reading.value;
  const limits = threadLimits(thread);
  if (!limits.ok) return { ok: false, problems: limits.problems };
  const material = findMaterial(request.material)!;
  const borrowedMax = borrowedMinorMax(thread, limits.value);
  const job = prepareJob({ request, thread, limits: limits.value, material, borrowedMax });
  return answer(planJob(job), [...reading.notes, ...limits.notes]);
}

/** From a drawing's words to a tap, a hole and a card: the recommendation, each step with its reason. */

import { cycleSeconds, startRpm, tappingSpeed } from '../cycle/speed';
import { answer, type Outcome } from '../outcome';
import { STYLES } from '../tap/styles';
import { assumptionsFor } from './assumptions';
import { candidatesFor, webOf, type Candidate } from './candidates';
import type { DrillChoice } from '../drill/drill';
import { handWork } from './hand-work';
import type { Job } from './job';
import { formTapHole } from '../drill/form-hole';
import { oversizeShare } from '../drill/oversize';
import { percentThread } from '../drill/percent';
import { tapLimitsFor } from './tap-limits';
import { judge, type Judged } from './judge';
import { fromFace } from './part-fields';
import { crossedBefore, lostIn, partRefusals, reachFor } from './part-judge';
import { jobOf } from './prepare';
import { rank } from './rank';
import { remediesFor } from './remedies';
import { stripCheck } from './strength';
import { speedsWithTool } from './tool';
import type { Cycle, HolePlan, HoleRequest, Reason, TapChoice } from './types';
import { spokenTap, warningsFor } from './warnings';

/** A holder that floats is fed a little behind the pitch, so that the tap pulls itself along. Common practice. */
const FLOATING_FEED = { min: 0.95, max: 1 } as const;

/** Threads the tap starts above the face: pitches of approach in a cycle. Common practice. */
const APPROACH_PITCHES = 3;

function cycleFor(job: Job, tap: Candidate | undefined): Cycle | null {
  const { drive, maxRpm, acceleration } = job.spindle;
  const speed = tappingSpeed(speedsWithTool(job), job.major, job.fullThread, maxRpm);
  if (!speed || drive === 'hand' || !tap) return null;
  const travel = tap.depth.tip + APPROACH_PITCHES * job.pitch;
  // Across a gap the teeth knock back into metal: the slow end of the range.
  const { min } = speed.range;
  const slow = startRpm(job.material, min, min);
  const rpm = crossedBefore(job) ? Math.min(speed.rpm, slow) : speed.rpm;
  return {
    rpm,
    rpmRange: speed.range,
    feedPerRev: job.pitch,
    feedPerMinute: job.pitch * rpm,
    ...(drive === 'synchronous' ? {} : { feedShare: FLOATING_FEED }),
    seconds: cycleSeconds(travel, job.pitch, rpm, acceleration),
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
    drill: promised(job, tap.drill),
    depth: { ...tap.depth, ...fromFace(tap.depth, job.datum) },
    torque: tap.torque,
    toothLoad: tap.toothLoad,
    tapShare: tap.share,
    ...share,
    chips: tap.chips,
    ...(STYLES[tap.style].process === 'mill' ? {} : { reach: reachFor(job, tap) }),
  };
}

/** A cast-in hole leads the drill astray: no size of it is sure to come out inside. Common practice. */
function promised(job: Job, drill: DrillChoice | null): DrillChoice | null {
  return job.request.cored && drill?.verdict === 'inside' ? { ...drill, verdict: 'risk' } : drill;
}

/** What the part refuses every tap stands before what a tap is refused for by itself. */
function refused(taps: Judged[], refusals: Reason[]): Judged[] {
  if (refusals.length === 0) return taps;
  return taps.map((tap) => ({
    ...tap,
    fits: false,
    reasons: tap.fits ? refusals : [...refusals, ...tap.reasons],
  }));
}

/** The drills to judge: a form tap's own where one is best. */
function drillsFor(job: Job, best: Judged | undefined): DrillChoice[] {
  if (best?.style !== 'form') return job.drills;
  const { request, material, major, pitch } = job;
  const near = formTapHole(job, {
    series: request.stockedDrills,
    oversizeShare: oversizeShare(material),
  }).drills.map(({ percent, likelyPercent: _likely, ...drill }): DrillChoice => {
    return { ...drill, percent: { ...percentThread(major, pitch, drill.diameter), form: percent } };
  });
  return near;
}

function planJob(job: Job): HolePlan {
  const { candidates, scale } = candidatesFor(job);
  const taps = rank(
    job,
    candidates.map((candidate) => judge(job, candidate)),
  );
  const shown = refused(taps, partRefusals(job));
  const best = shown.find((tap) => tap.best && tap.fits);
  const spoken = spokenTap(taps);
  const strip = stripCheck(job);
  const hand = handWork(job, best);
  return {
    thread: job.thread,
    limits: job.limits,
    drill: promised(job, best ? best.drill : job.drill),
    drills: drillsFor(job, best).map((drill) => promised(job, drill)!),
    taps: shown.map((tap) => toChoice(job, tap, tap === best)),
    remedies: remediesFor(job, taps, strip),
    cycle: cycleFor(job, spoken),
    warnings: warningsFor(job, taps, strip),
    tapLimits: tapLimitsFor(job),
    ...(best?.style === 'form' && {
      formWindow: { min: job.formWindow.min, max: job.formWindow.max },
    }),
    ...(hand && { hand }),
    assumptions: assumptionsFor(job, scale, strip, spoken && webOf(job, spoken.style)),
    ...(job.request.crossing ? { lostThread: lostIn(job) } : {}),
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
 *
 * @example
 * planHole({ thread: 'M8', hole: { kind: 'blind' }, fullThread: 16, material: 'al-wrought' }).value.taps[0].style // 'spiral-flute'
 * planHole({ thread: 'M8', hole: { kind: 'blind' }, fullThread: -1, material: 'al-wrought' }).ok // false
 */
export function planHole(request: HoleRequest): Outcome<HolePlan> {
  const job = jobOf(request, { taper: true });
  return job.ok ? answer(planJob(job.value), job.notes) : job;
}

/** A thread milled instead of tapped: speed, feed, path, passes, time, and whether the cutter suits the class. */

import { coneLength } from '../chips/room';
import { millFeeds, millSpeeds, passDiameters, usualPasses } from '../mill/cutting';
import { climbOf, feedAtCentre, millSeconds } from '../mill/path';
import { millProgramme } from '../mill/programme';
import { pitchGrowth } from '../mill/sweep';
import { answer, type Outcome } from '../outcome';
import type { Job } from './job';
import { reason } from './judge';
import { jobOf } from './prepare';
import { FLOOR_ROOM, judgeMill, type MillFacts } from './thread-mill-judge';
import { checkMill } from './thread-mill-request';
import type { ThreadMillPlan, ThreadMillRequest } from './thread-mill-types';
import type { Reason, Warning } from './types';
import { materialWarnings } from './warnings';
import { warningLevel } from './warning-levels';

/** Clear plane above the face, pitches but never under 2 mm. Common practice. */
const CLEAR = { pitches: 3, least: 2 } as const;

const middle = ({ min, max }: { min: number; max: number }): number => (min + max) / 2;

/** 55° parallel pipe threads have flatter flanks. ISO 228-1. */
function flankOf({ thread }: Job): number {
  return thread.form === 'G' || thread.form === 'Rp' ? 27.5 : 30;
}

/** The lowest full diameter of the hole, or what stands below a through hole; mm from the face. */
function bottomOf({ request, pointAngle }: Job, hole: number): number {
  const asked = request.hole;
  if (asked.kind === 'through') return asked.thickness + (asked.clearBelow ?? Infinity);
  if (!asked.limit) return Infinity;
  const { at, depth } = asked.limit;
  return at === 'point' ? depth - coneLength(hole, pointAngle) : depth;
}

/** Depth of the lowest tooth's middle: a thread that goes right through runs half a pitch out. */
function deepestOf({ request, fullThread, pitch }: Job): number {
  const { hole } = request;
  const out = hole.kind === 'through' && fullThread >= hole.thickness - 1e-9;
  return fullThread + (out ? pitch / 2 : 0);
}

function speedOf(job: Job, { speed, cutter, spindle }: ThreadMillRequest) {
  const wanted = speed ?? middle(millSpeeds(job.material));
  const free = Math.round((1000 * wanted) / (Math.PI * cutter.diameter));
  const rpm = Math.max(1, Math.min(free, Math.floor(spindle?.maxRpm ?? Infinity)));
  return { rpm, limited: rpm < free ? free : undefined };
}

function warningsOf(job: Job, factor: number, chosen: boolean): Warning[] {
  const found = materialWarnings(job).filter(({ code }) => code !== 'harden-after');
  if (job.thread.hand === 'left') {
    found.push({
      code: 'left-hand',
      numbers: {},
      source: 'derived',
      level: warningLevel('left-hand'),
    });
  }
  if (!chosen) {
    const numbers = { factor };
    const level = warningLevel('mill-feed-setting');
    found.push({ code: 'mill-feed-setting', numbers, source: 'derived', level });
  }
  return found;
}

interface Cut {
  rpm: number;
  atTeeth: number;
  majors: number[];
  climb: ReturnType<typeof climbOf>;
}

function programmeOf(job: Job, request: ThreadMillRequest, cut: Cut): string[] {
  const { cutter, controlFeed = 'centre', unit = 'mm' } = request;
  const { rpm, atTeeth, majors, climb } = cut;
  return millProgramme({
    hand: job.thread.hand,
    unit,
    rpm,
    pitch: job.pitch,
    deepest: deepestOf(job),
    ...climb,
    lifts: cutter.rows !== 'one',
    passes: majors.map((major) => ({
      path: major - cutter.diameter,
      feed: controlFeed === 'teeth' ? atTeeth : feedAtCentre(atTeeth, major, cutter.diameter),
    })),
    clear: Math.max(CLEAR.least, CLEAR.pitches * job.pitch),
  });
}

function plan(job: Job, request: ThreadMillRequest, hole: number, major: number): ThreadMillPlan {
  const { cutter } = request;
  const d = cutter.diameter;
  const { rpm, limited } = speedOf(job, request);
  const perTooth = request.feedPerTooth ?? middle(millFeeds(d, job.material));
  const atTeeth = rpm * cutter.teeth * perTooth;
  const passes = request.passes ?? usualPasses(job.material, cutter.rows !== 'one');
  const majors = passDiameters(hole, major, passes);
  const deepest = deepestOf(job);
  const climb = climbOf(job.fullThread, job.pitch, cutter.rows);
  const growth = pitchGrowth({ major, cutter: d, pitch: job.pitch, flank: flankOf(job) });
  const nose = deepest + FLOOR_ROOM.least * job.pitch;
  const facts: MillFacts = { cutter, hole, growth, deepest, nose, bottom: bottomOf(job, hole) };
  const { verdict, reasons } = judgeMill(job, facts);
  const centre = feedAtCentre(atTeeth, major, d);
  const said: Reason[] = [
    reason(
      'mill-feed-at-centre',
      { centre, teeth: atTeeth, factor: major / (major - d) },
      'derived',
    ),
    reason('mill-passes', { passes }, request.passes === undefined ? 'common-practice' : 'derived'),
    ...(limited === undefined
      ? []
      : [reason('mill-speed-limited', { rpm, wanted: limited }, 'derived')]),
  ];
  return {
    rpm,
    feedAtTeeth: atTeeth,
    feedAtCentre: centre,
    pathDiameter: major - d,
    majors,
    turns: climb.turns,
    seconds: millSeconds(passes, climb.turns, major - d, centre),
    pitchGrowth: growth,
    verdict,
    reasons: [...reasons, ...said],
    warnings: warningsOf(job, major / (major - d), request.controlFeed !== undefined),
    programme: programmeOf(job, request, { rpm, atTeeth, majors, climb }),
  };
}

/**
 * Plans one milled thread. `request`: lengths mm, m/min, rev/min, all above 0, the cutter smaller than the hole
 * (see `ThreadMillRequest` for defaults).
 * Feed at the centre, path and time are the last pass's, time of all passes without approach. Verdict `no` where the
 * cutter does not reach, is too slender, has no room at the floor or cuts the pitch diameter over its class; `works`
 * where one of these is near. Refuses with the problems of `readThread` and `threadLimits` (taper pipe threads
 * too), `REQUEST_PROBLEM_CODES` and `MILL_PROBLEM_CODES`. The programme is an example for climb milling, Z0 at the
 * face, whose tool numbers are blank. Never throws for a well-formed request.
 * Sources: `derived` (path, growth, feed), `from-memory` (speeds, feeds), `common-practice` (passes, reach), `nist-rs274`.
 *
 * @example
 * planThreadMill({ thread: 'M10', hole: { kind: 'blind' }, fullThread: 20, material: 'steel-low', cutter: { diameter: 7, teeth: 3, rows: 'one' }, speed: 80 }).value.rpm // 3638
 */
export function planThreadMill(request: ThreadMillRequest): Outcome<ThreadMillPlan> {
  const {
    thread,
    fullThread,
    hole: asked,
    material,
    drill,
    cutTo,
  } = request ?? ({} as ThreadMillRequest);
  const job = jobOf({
    thread,
    hole: asked,
    material,
    ...(fullThread !== undefined && { fullThread }),
  });
  if (!job.ok) return job;
  const hole = drill ?? job.value.drill?.diameter ?? middle(job.value.window);
  const problems = checkMill(request, job.value, hole, job.value.major);
  if (problems.length > 0) return { ok: false, problems };
  return answer(plan(job.value, request, hole, cutTo ?? job.value.major), job.notes);
}

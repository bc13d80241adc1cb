/**
 * Says yes or no to a candidate, and why; a "no" says what would make it a "yes".
 * Rules of the trade (`common-practice`) on numbers of the mechanics.
 */

import { middleThreads } from '../chamfer/classes';
import { lengthForChips } from '../chips/room';
import { formPercent } from '../drill/percent';
import { grooveGeometry, THINNEST_CHIP, toothGeometry } from '../load/torque';
import type { MaterialId } from '../material/material';
import { STYLES } from '../tap/styles';
import type { Candidate } from './candidates';
import { formSizes } from './form-size';
import { byHand, handProblems } from './by-hand';
import type { Job } from './job';
import { crossingMerits, reachRefusal } from './part-judge';
import { reason } from './reason';
import type { Reason } from './types';

export { reason };

export interface Judged extends Candidate {
  /** Nothing is against it; and nothing but the spindle is. */
  fits: boolean;
  fitsHole: boolean;
  /** It can be done and is never first choice. */
  worksOnly: boolean;
  /** Set by the ranking on the tap it puts first, if that may be recommended. */
  best: boolean;
  reasons: Reason[];
}

/** Which way this hole wants its chip to go. Source: `common-practice`. */
export function wantedCourse(job: Job): 'ahead' | 'back' | 'stays' {
  const { hole } = job.request;
  // By hand the chip is broken by turning back; a taper tap is made with straight flutes, whatever the hole does.
  if (job.taper || byHand(job)) return 'stays';
  if (hole.kind === 'blind') return job.shortChips ? 'stays' : 'back';
  if (hole.chipsMayFall === false) return 'back';
  if (job.shortChips) return 'stays';
  return aheadHasAir(job) ? 'ahead' : 'back';
}

/**
 * Something so close below that a long enough chamfer cannot pass leaves no air for chips either; a thread that
 * ends inside the hole must find room for its chips between the nose and what stands below.
 */
function aheadHasAir(job: Job): boolean {
  const { hole } = job.request;
  if (hole.kind === 'blind' || hole.clearBelow === undefined) return true;
  const longest = (job.system === 'inch' ? 5 : 5.5) * job.pitch + job.centre;
  if (hole.clearBelow >= longest + job.pitch - 1e-9) return true;
  const room = hole.thickness + hole.clearBelow - job.fullThread - longest;
  return job.fullThread < hole.thickness && room >= chipBudget(job).length;
}

function reachProblems(job: Job, candidate: Candidate): Reason[] {
  if (candidate.short === 0) return [];
  if (job.request.hole.kind === 'through') {
    const have = candidate.beyond - candidate.short;
    return [
      reason('below-clearance', { needed: candidate.beyond, have }, 'derived'),
      reason('fits-if-room-below', { by: candidate.short, to: candidate.beyond }, 'derived'),
    ];
  }
  const { short, depth } = candidate;
  // In the drawing's measure, which does not know of a flat.
  const needed = candidate.needed + job.datum.flat;
  const obtainable = depth.fullThread;
  const found = [
    reason('does-not-reach', { needed, short, have: needed - short, obtainable }, 'derived'),
    reason('fits-if-deeper', { by: short, to: needed }, 'derived'),
  ];
  if (obtainable >= job.pitch) {
    found.push(reason('fits-if-shorter-thread', { to: obtainable }, 'derived'));
  }
  return found;
}

function chipProblems(job: Job, candidate: Candidate): Reason[] {
  const { hole } = job.request;
  if (candidate.goes !== 'ahead') return [];
  if (hole.kind === 'through') {
    if (hole.chipsMayFall !== false) return [];
    return [reason('chips-must-not-fall'), reason('fits-if-chips-may-fall')];
  }
  if (candidate.chips.fits === true) return [];
  const needed = candidate.chips.neededRoom;
  const have = candidate.chipRoom;
  return [
    reason('chips-ahead-no-room', { needed, have }, 'packed-chips'),
    reason(
      'fits-if-deeper',
      {
        by: needed - have + candidate.short,
        to:
          job.fullThread +
          candidate.chamfer.threads.max * job.pitch +
          job.centre +
          needed +
          job.datum.flat,
      },
      'packed-chips',
    ),
  ];
}

function processProblems(job: Job, candidate: Candidate): Reason[] {
  const { process } = STYLES[candidate.style];
  const found: Reason[] = [];
  if (process === 'mill') {
    const { drive } = job.spindle;
    return drive === 'synchronous' ? [] : [reason('mill-needs-cnc')];
  }
  if (!job.material.speed) found.push(reason('too-hard'));
  // A coating that varies by more than the class allows leaves no hole that is right before and after.
  if (job.window.min > job.window.max) found.push(reason('no-drill-inside', {}, 'derived'));
  found.push(...handProblems(job, candidate));
  if (process === 'form') {
    const { no } = formSizes(job);
    if (job.material.forming === 'no') found.push(reason('not-formable'));
    else if (job.major > no) found.push(reason('form-too-large', { most: no }));
    else if (!candidate.drill && found.length === 0)
      found.push(reason('no-drill-inside', {}, 'from-memory'));
  }
  return found;
}

function spindleProblems(job: Job, { asks }: Candidate): Reason[] {
  const { torque, drive } = job.spindle;
  const { worn, sharp } = asks;
  if (torque === undefined || drive === 'hand' || worn <= torque) return [];
  return [
    reason('spindle-over', { worn, sharp, spindle: torque }, 'tap-chip-model'),
    reason('fits-if-spindle', { torque: worn }, 'tap-chip-model'),
  ];
}

/** A tap that breaks while it is sharp is no tap for this hole. */
function strengthProblems({ asks }: Candidate): Reason[] {
  const { sharp } = asks.share;
  return sharp > 1 ? [reason('breaks-sharp', { sharp }, 'tap-chip-model')] : [];
}

const COURSE_REASON = {
  ahead: 'chips-go-ahead',
  back: 'chips-come-back',
  stays: 'chips-stay',
  none: 'no-chips',
} as const;

function chipMerits(job: Job, candidate: Candidate): Reason[] {
  if (STYLES[candidate.style].process === 'mill') return [];
  const found = [reason(COURSE_REASON[candidate.goes])];
  if (candidate.goes === 'stays' && job.shortChips) found.push(reason('suits-short-chips'));
  const wanted = wantedCourse(job);
  if (candidate.goes !== 'none' && candidate.goes !== wanted) found.push(reason('chips-wrong-way'));
  if (candidate.goes === 'ahead' && job.request.hole.kind === 'blind') {
    const { neededRoom } = candidate.chips;
    found.push(
      reason('chips-ahead-fit', { needed: neededRoom, have: candidate.chipRoom }, 'packed-chips'),
    );
  }
  return found;
}

function chamferMerits(job: Job, candidate: Candidate): Reason[] {
  if (job.taper) return [reason('taper-pipe-tap', { ...candidate.chamfer.threads })];
  const { kind } = job.request.hole;
  const usual = kind === 'blind' ? 'semi-bottoming' : 'plug';
  const name = candidate.chamfer.class;
  const { min, max } = candidate.chamfer.threads;
  const threads = { min, max };
  if (name === usual) {
    return [reason(kind === 'blind' ? 'chamfer-usual-blind' : 'chamfer-usual-through', threads)];
  }
  const longer = name === 'taper' || (kind === 'blind' && name === 'plug');
  return [reason(longer ? 'chamfer-longer-than-wanted' : 'chamfer-shorter-than-wanted', threads)];
}

/** Metals so strong that a high helix leaves the cutting edge too thin. Common practice. */
const LOW_HELIX: readonly MaterialId[] = ['steel-alloy-30hrc', 'steel-40hrc', 'stainless-ph'];

function styleMerits(job: Job, candidate: Candidate): Reason[] {
  const found: Reason[] = [];
  const { style, chamfer } = candidate;
  const { material } = job;
  if (style === 'spiral-flute') {
    if (LOW_HELIX.includes(material.id)) found.push(reason('low-helix'));
    else if (job.request.hole.kind === 'through') found.push(reason('weaker-core'));
  }
  if (!isStocked(candidate)) found.push(reason('not-stocked-usually'));
  if (byHand(job))
    found.push(reason(style === 'straight-flute' ? 'by-hand-set' : 'by-hand-single'));
  const { hole } = job.request;
  if (hole.kind === 'through' && hole.thickness < middleThreads(chamfer) * job.pitch) {
    found.push(
      reason(
        'thin-work-never-fully-engaged',
        { pitches: hole.thickness / job.pitch },
        'tap-chip-model',
      ),
    );
  }
  const groove = { major: job.major, pitch: job.pitch, hole: job.cutHole };
  const { chip } = toothGeometry(groove, middleThreads(chamfer), job.flutes);
  if (material.workHardens && chip < 2 * THINNEST_CHIP) {
    found.push(reason('rubs', { chip }, 'tap-chip-model'));
  }
  return found;
}

function formMerits(job: Job, candidate: Candidate): Reason[] {
  if (!candidate.drill) return [];
  const { diameter } = candidate.drill;
  const percent = formPercent(job.major, job.pitch, diameter);
  const found = [reason('form-hole', { diameter, percent }, 'from-memory')];
  const { forming } = job.material;
  if (forming !== 'yes') found.push(reason('form-marginal'));
  const { usual } = formSizes(job);
  if (job.major > usual) found.push(reason('form-special-size', { usual }));
  const { hole } = job.request;
  if (hole.kind === 'through' && hole.chipsMayFall === false)
    found.push(reason('form-first-no-chips'));
  return found;
}

function merits(job: Job, candidate: Candidate): Reason[] {
  const { process } = STYLES[candidate.style];
  if (process === 'mill') {
    return [reason('mill-limits', { fullThread: candidate.depth.fullThread })];
  }
  const found = chipMerits(job, candidate);
  if (job.request.hole.kind === 'blind') {
    found.push(
      reason(
        'reaches',
        { room: candidate.depth.roomInPitches, needed: candidate.needed },
        'derived',
      ),
    );
  }
  found.push(...chamferMerits(job, candidate), ...crossingMerits(job, candidate));
  found.push(...(process === 'cut' ? styleMerits(job, candidate) : formMerits(job, candidate)));
  const { worn } = candidate.asks.share;
  if (worn > 1) found.push(reason('tap-will-break', { worn }, 'tap-chip-model'));
  return found;
}

/** Kept in an ordinary drawer: spiral points come with one chamfer. Common practice; no unit. */
export function isStocked({ style, chamfer }: Pick<Candidate, 'style' | 'chamfer'>): boolean {
  return style !== 'spiral-point' || chamfer.class === 'plug';
}

/** Taps that can do it and are never led with. Common practice. */
function neverFirst(job: Job, candidate: Candidate): boolean {
  const { style, goes } = candidate;
  const { process } = STYLES[style];
  if (process === 'mill') return true;
  // A hand set has straight flutes; a spiral point can be turned by hand, with luck.
  if (byHand(job)) return style !== 'straight-flute';
  if (process === 'form') {
    return job.material.forming === 'rarely' || job.major > formSizes(job).usual;
  }
  // Dust and crumbs packed against a floor: there may be room, and a straight flute wants none.
  return goes === 'ahead' && job.shortChips && job.request.hole.kind === 'blind';
}

/** Judges one candidate. Sources: common practice, on the mechanics' numbers. */
export function judge(job: Job, candidate: Candidate): Judged {
  const mill = STYLES[candidate.style].process === 'mill';
  const against = [
    ...processProblems(job, candidate),
    ...chipProblems(job, candidate),
    ...reachProblems(job, candidate),
    ...reachRefusal(job, candidate),
    ...(mill ? [] : strengthProblems(candidate)),
  ];
  const problems = mill ? against : [...against, ...spindleProblems(job, candidate)];
  const fits = problems.length === 0;
  return {
    ...candidate,
    fits,
    fitsHole: against.length === 0,
    worksOnly: neverFirst(job, candidate),
    best: false,
    reasons: fits ? merits(job, candidate) : deepestOnly(problems),
  };
}

/** Chips and reach may both ask for a deeper hole: only the deeper of the two would do. */
function deepestOnly(problems: Reason[]): Reason[] {
  const deeper = problems.filter((each) => each.code === 'fits-if-deeper');
  if (deeper.length < 2) return problems;
  const deepest = Math.max(...deeper.map((each) => each.numbers['to'] ?? 0));
  return problems.filter(
    (each) => each.code !== 'fits-if-deeper' || each.numbers['to'] === deepest,
  );
}

/** Metal removed over the asked thread, mm³, and the room its chips would want below the tap, mm. */
export function chipBudget(job: Job): { solid: number; length: number } {
  const groove = { major: job.major, pitch: job.pitch, hole: job.cutHole };
  const solid = grooveGeometry(groove).volumePerDepth * job.fullThread;
  return { solid, length: lengthForChips(solid, job.material.chips, job.cutHole, job.pointAngle) };
}

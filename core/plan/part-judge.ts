/**
 * What the part around the hole makes of a tap: how far it must reach, how it crosses a gap, and what keeps every
 * tap out. Rules of the trade (`common-practice`) on derived lengths, mm.
 */

import { chamferOf } from '../chamfer/classes';
import type { ChamferClass } from '../chamfer/chamfer';
import { throughTip, tipDepth } from '../hole/depth';
import type { SourceId } from '../sources';
import { stockTap, tapReach, type TapReach } from '../tap/reach';
import { STYLES } from '../tap/styles';
import type { Candidate } from './candidates';
import type { ReasonCode } from './codes';
import type { Job } from './job';
import { landWidth, lostThread, needsFlat, slantFacts } from './part-fields';
import type { Crossing, Reason } from './types';

function because(
  code: ReasonCode,
  numbers: Record<string, number> = {},
  source: SourceId = 'common-practice',
): Reason {
  return { code, numbers, source };
}

/** Full thread that the crossing takes from this job, mm; 0 where nothing crosses. Derived. */
export function lostIn({ request, fullThread }: Pick<Job, 'request' | 'fullThread'>): number {
  return request.crossing ? lostThread(request.crossing, fullThread) : 0;
}

/** Length asked of a stock tap to the bottom of this candidate's travel, mm. Sources: as `tapReach`. */
export function reachFor(job: Job, { depth }: { depth: { tip: number } }): TapReach {
  const { counterbore } = job.request;
  const { diameter } = job.thread;
  return tapReach(stockTap(job.thread), { tip: depth.tip, diameter, counterbore });
}

/** Where the tip of a tap with this hole's usual chamfer ends, mm. */
function usualTip(job: Job): number {
  const { hole } = job.request;
  const { max } = chamferOf(hole.kind === 'blind' ? 'semi-bottoming' : 'plug', job.system).threads;
  const chain = { ...job, chamferThreads: max };
  if (hole.kind === 'blind') {
    return Math.min(tipDepth(job.fullThread, chain), hole.limit?.depth ?? Infinity);
  }
  return Math.min(tipDepth(job.fullThread, chain) + job.pitch, throughTip(hole.thickness, chain));
}

/**
 * Why no stock tap reaches, where none does. A shorter chamfer is no way out of it: a pitch of length is less than
 * taps of one size differ by, so all that are no longer than the usual one are refused together.
 */
export function reachRefusal(job: Job, candidate: Candidate): Reason[] {
  if (STYLES[candidate.style].process === 'mill') return [];
  const tips = [candidate.depth, { tip: usualTip(job) }];
  for (const depth of tips) {
    const { verdict, needed, have, source } = reachFor(job, { depth });
    if (verdict === 'none') return [because('no-stock-tap', { needed, most: have! }, source)];
  }
  return [];
}

/** The crossing that is there when the tap comes, if any. */
export function crossedBefore({ request }: Pick<Job, 'request'>): Crossing | undefined {
  return request.crossing?.cut === 'before' ? request.crossing : undefined;
}

/** True where a straight land can drop whole into the slot. Derived. */
export function swallowsLand(job: Job, crossing: Crossing): boolean {
  return crossing.kind === 'slot' && crossing.width > landWidth(job.major, job.flutes) + 1e-9;
}

const PLUG_FIRST: ChamferClass[] = ['plug', 'taper', 'semi-bottoming', 'bottoming'];
const LONGEST_FIRST: ChamferClass[] = ['taper', 'plug', 'semi-bottoming', 'bottoming'];

function bridges(job: Job, crossing: Crossing, threads: number): boolean {
  return crossing.kind === 'slot' || threads * job.pitch > crossing.width + 1e-9;
}

function styleOrder(job: Job, crossing: Crossing, { style }: Candidate): number {
  const helix = style === 'spiral-flute';
  const formed = STYLES[style].process === 'form';
  // A helix keeps part of a tooth in metal all round where a straight land would fall into the slot.
  if (swallowsLand(job, crossing)) return helix ? 0 : formed ? 2 : 1;
  return helix ? 2 : formed ? 1 : 0;
}

/**
 * How well a tap crosses what was cut before it, best 0, first by style, then by chamfer; nothing where there is
 * nothing to cross. A chamfer of up to 5.5 threads that is longer than the gap, else the longest. Common practice.
 */
export function crossingRank(job: Job, candidate: Candidate): number[] {
  const crossing = crossedBefore(job);
  if (!crossing) return [];
  const plug = chamferOf('plug', job.system, candidate.style === 'spiral-point');
  const order = bridges(job, crossing, plug.threads.max) ? PLUG_FIRST : LONGEST_FIRST;
  return [styleOrder(job, crossing, candidate), order.indexOf(candidate.chamfer.class)];
}

/** What is to be said of a tap that crosses a gap. */
export function crossingMerits(job: Job, candidate: Candidate): Reason[] {
  const crossing = crossedBefore(job);
  if (!crossing || STYLES[candidate.style].process !== 'cut') return [];
  const { min, max } = candidate.chamfer.threads;
  const found: Reason[] = [];
  if (crossing.kind === 'bore') {
    const numbers = { gap: crossing.width / job.pitch, min, max };
    const code = bridges(job, crossing, max) ? 'bridges-crossing' : 'drops-into-crossing';
    found.push(because(code, numbers, 'derived'));
  }
  if (candidate.style === 'spiral-flute' && !swallowsLand(job, crossing)) {
    found.push(because('catches-in-crossing'));
  }
  return found;
}

/**
 * What keeps every tap out, whatever else is said of it: a slanting face without a flat, a gap met by a spindle
 * that does not hold the feed, a bore that takes all of the thread.
 */
export function partRefusals(job: Job): Reason[] {
  const { entry } = job.request;
  const found: Reason[] = [];
  if (entry && needsFlat(job.request)) {
    const { angle, diameter, loss } = slantFacts(entry.angle, job.major);
    found.push(because('needs-flat', { angle, diameter, loss }, 'derived'));
  }
  const { drive } = job.spindle;
  if (crossedBefore(job) && (drive === 'floating' || drive === 'reversing-head')) {
    found.push(because('needs-synchronous'));
  }
  const lost = lostIn(job);
  if (lost > 0 && lost >= job.fullThread - 1e-9) {
    found.push(because('no-thread-left', { lost }, 'derived'));
  }
  return found;
}

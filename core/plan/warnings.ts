/** What to watch in this hole. Warnings never hide an answer; they stand beside it. */

import { middleThreads } from '../chamfer/classes';
import type { SourceId } from '../sources';
import { STYLES } from '../tap/styles';
import { WATCH } from '../tap/twist';
import { byHand, HAND_TORQUE } from './by-hand';
import type { WarningCode } from './codes';
import type { Job } from './job';
import type { Judged } from './judge';
import { spindleNeed, tapWantingRoom } from './needs';
import { partWarnings } from './part-warnings';
import type { StripCheck } from './strength';
import type { TaperPipe } from './taper';
import { carbideSuits } from './tool';
import type { Warning } from './types';
import { warningLevel } from './warning-levels';

/** Share of the breaking torque above which a worn tap is watched. Common practice. */
export const SHARE_WATCH = { worn: WATCH.worn } as const;

/** Share of the spindle's torque that a worn tap may take before it is said. Common practice. */
export const SPINDLE_WATCH = 0.9;

function warn(
  code: WarningCode,
  numbers: Record<string, number> = {},
  source: SourceId = 'common-practice',
): Warning {
  return { code, numbers, source, level: warningLevel(code, numbers) };
}

function hasBest(taps: Judged[]): boolean {
  return Boolean(taps[0]?.best);
}

/** The tap to speak of: the best, or where nothing fits the cut tap that comes first. */
export function spokenTap(taps: Judged[]): Judged | undefined {
  if (hasBest(taps)) return taps[0];
  const cut = taps.filter((tap) => STYLES[tap.style].process === 'cut');
  return cut.find((tap) => !tap.worksOnly) ?? cut[0];
}

/**
 * What to say of a tap's torque as a share of its breaking torque, sharp and worn: nothing, amber or stop.
 * Source: `tap-chip-model`, thresholds `common-practice`.
 */
export function shareWarnings({ sharp, worn }: { sharp: number; worn: number }): Warning[] {
  if (worn > 1) return [warn('tap-will-break', { sharp, worn }, 'tap-chip-model')];
  return worn > SHARE_WATCH.worn ? [warn('tap-share-high', { sharp, worn }, 'tap-chip-model')] : [];
}

/**
 * What to say of a tap against the spindle, N·m: nothing, or that a worn tap may stall it.
 * Source: `tap-chip-model`, threshold `common-practice`.
 */
export function spindleWarnings(sharp: number, worn: number, spindle: number): Warning[] {
  if (worn <= SPINDLE_WATCH * spindle) return [];
  return [warn('spindle-over', { sharp, worn, spindle }, 'tap-chip-model')];
}

function forceWarnings(job: Job, taps: Judged[]): Warning[] {
  const tap = spokenTap(taps);
  if (!tap || !job.material.speed) return [];
  const found = shareWarnings(tap.asks.share);
  const { sharp } = tap.asks;
  if (byHand(job) && sharp > HAND_TORQUE.heavy) {
    const numbers = { sharp, heavy: HAND_TORQUE.heavy, most: HAND_TORQUE.most };
    found.push(warn('heavy-by-hand', numbers, 'tap-chip-model'));
  }
  const { torque, drive } = job.spindle;
  if (torque !== undefined && drive !== 'hand') {
    const need = (tap.best ? null : spindleNeed(taps)) ?? tap.asks;
    found.push(...spindleWarnings(need.sharp, need.worn, torque));
  }
  return found;
}

function holeWarnings(job: Job, taps: Judged[]): Warning[] {
  const { hole } = job.request;
  const found: Warning[] = [];
  const tap = spokenTap(taps);
  if (hole.kind === 'blind') {
    const ahead = job.material.speed ? taps.find((each) => each.goes === 'ahead') : undefined;
    const noRoom = ahead?.reasons.find((each) => each.code === 'chips-ahead-no-room');
    if (noRoom) {
      const said = warn('chips-ahead-no-room', noRoom.numbers, 'packed-chips');
      // Once another tap leads, it is good to know and no more.
      found.push(hasBest(taps) ? { ...said, level: 'note' } : said);
    }
  } else {
    if (hole.chipsMayFall === false) found.push(warn('chips-must-not-fall'));
    if (tap && hole.thickness < middleThreads(tap.chamfer) * job.pitch) {
      const numbers = { pitches: hole.thickness / job.pitch, thickness: hole.thickness };
      found.push(warn('thin-work', numbers, 'tap-chip-model'));
    }
    // Only where the chamfer this hole would have had is the one that cannot pass.
    const blocked = tapWantingRoom(taps);
    const clearBelow = hole.clearBelow;
    if (blocked && clearBelow !== undefined) {
      found.push(warn('below-clearance', { have: clearBelow, needed: blocked.beyond }, 'derived'));
    }
  }
  if (job.fullThread > 2 * job.thread.diameter + 1e-9) {
    found.push(warn('deep-thread', { diameters: job.fullThread / job.thread.diameter }));
  }
  return found;
}

/** What the metal itself asks for, whatever cuts the thread. Sources: on each. */
export function materialWarnings(job: Job): Warning[] {
  const { material } = job;
  const found: Warning[] = [];
  if (!material.speed) found.push(warn('harden-after'));
  if (material.workHardens) found.push(warn('work-hardens', { slowest: material.speed?.min ?? 0 }));
  if (material.springsBack) found.push(warn('springs-back'));
  if (material.dust) found.push(warn('dust'));
  if (material.swarfFire) found.push(warn('swarf-fire'));
  if (material.waterFire) found.push(warn('water-fire'));
  return found;
}

/** mm of gauge length and the turns its place may be off, where they are held. */
function taperNumbers({ gauge }: TaperPipe): Record<string, number> {
  return gauge ? { length: gauge.length, turns: gauge.turns } : {};
}

function toolWarnings(job: Job): Warning[] {
  if (job.request.tool?.substrate !== 'carbide') return [];
  return [warn(carbideSuits(job) ? 'carbide-wants' : 'carbide-unsuited')];
}

function threadWarnings(job: Job, taps: Judged[]): Warning[] {
  const { thread, request, limits } = job;
  const drill = taps[0]?.fits ? taps[0].drill : job.drill;
  const found: Warning[] = [];
  if (job.taper) found.push(warn('taper-pipe', taperNumbers(job.taper), 'common-practice'));
  if (thread.hand === 'left') found.push(warn('left-hand'));
  if (request.coating && request.coating.thickness[1] > 0) {
    const [min, max] = request.coating.thickness;
    const numbers = { min, max, pitchMin: 4 * min, pitchMax: 4 * max };
    found.push(warn('plated', numbers, 'derived'));
  }
  if (drill?.verdict === 'risk') {
    const { max } = drill === job.formDrill ? job.formWindow : job.window;
    const numbers = { diameter: drill.diameter, likely: drill.likely, max };
    found.push(warn('drill-at-risk', numbers, 'drill-oversize'));
  }
  if (limits?.basis === 'computed' && thread.system === 'metric') {
    found.push(warn('limits-computed', {}, 'iso-965-1'));
  }
  if (job.windowUncertain) found.push(warn('minor-limit-unknown', {}, 'from-memory'));
  return found;
}

/** Warnings for a plan, gravest first. Lengths mm, torques N·m, shares as fractions. Sources: on each. */
export function warningsFor(job: Job, taps: Judged[], strip: StripCheck | null): Warning[] {
  const found = [
    ...forceWarnings(job, taps),
    ...partWarnings(job, spokenTap(taps)),
    ...threadWarnings(job, taps),
    ...holeWarnings(job, taps),
    ...materialWarnings(job),
    ...toolWarnings(job),
  ];
  if (strip && strip.have < strip.wanted - 1e-9) {
    const { matching, wanted, tensile, have } = strip;
    const numbers = { have, matching, wanted, tensile, ratio: have / matching };
    found.push(warn('weak-when-stripped', numbers, 'shear-strength'));
  }
  return found;
}

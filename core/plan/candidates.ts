/** Every tap a shop could reach for, with its depths, forces and chips worked out but not yet judged. */

import { chamferOf, middleThreads } from '../chamfer/classes';
import { CHAMFER_CLASSES, type Chamfer, type ChamferClass } from '../chamfer/chamfer';
import { chipCourse, type ChipCourse } from '../chips/direction';
import { coneLength, DUST_POCKET, lengthForChips } from '../chips/room';
import type { DrillChoice } from '../drill/drill';
import {
  EXIT_PITCHES,
  obtainableThread,
  roomBelowThread,
  throughTip,
  tipDepth,
  type DepthChain,
} from '../hole/depth';
import { grooveGeometry, heaviestToothLoad, peakTorque } from '../load/torque';
import { breakingTorque } from '../tap/strength';
import { STYLES, TORQUE_BAND, typicalWeb, WORN } from '../tap/styles';
import type { TapStyle } from '../tap/tap';
import type { Job } from './job';
import { TAPER_CHAMFER, taperFactor } from './taper';
import type { TapChoice } from './types';

/** A tap with its working: what the judge and the ranking read. */
export interface Candidate {
  style: TapStyle;
  chamfer: Chamfer;
  drill: DrillChoice | null;
  goes: ChipCourse;
  depth: TapChoice['depth'];
  /** Full thread within reach, mm, and how much deeper the hole would have to be; 0 when it reaches. */
  short: number;
  /** Shoulder depth that all of the asked thread would need, mm (blind). */
  needed: number;
  /** mm below a through hole that the tap needs beyond the far face; 0 for blind. */
  beyond: number;
  torque: TapChoice['torque'];
  worn: number;
  toothLoad: number;
  share: { sharp: number; worn: number };
  /** What this style asks with its usual chamfer and all of the thread: it decides between styles. */
  usual: StyleLoad;
  /** What may not pass spindle and strength: that, or this chamfer's own load where it is more. */
  asks: StyleLoad;
  chips: TapChoice['chips'];
  /** Free hole below the nose, mm, to set against `chips.neededRoom`. */
  chipRoom: number;
}

/** N·m and shares of the breaking torque, of a style whatever the chamfer. */
export interface StyleLoad {
  sharp: number;
  worn: number;
  share: { sharp: number; worn: number };
}

/** Where a thread mill's end must stop above the shoulder: no chamfer, half to one pitch of room. Common practice. */
const MILL_CHAMFER: Chamfer = { class: 'bottoming', form: '', threads: { min: 0, max: 0 } };

/** Deepest shoulder the drawing allows for a hole of this diameter, mm; infinite when it sets none. */
export function shoulderLimit(job: Job, hole: number): number {
  const { hole: asked } = job.request;
  if (asked.kind !== 'blind' || !asked.limit) return Infinity;
  const { at, depth } = asked.limit;
  return at === 'shoulder' ? depth : Math.max(0, depth - coneLength(hole, job.pointAngle));
}

function chainOf(job: Job, threads: number, clearance = job.clearance): DepthChain {
  return { pitch: job.pitch, chamferThreads: threads, centre: job.centre, clearance };
}

interface Reach {
  depth: Omit<TapChoice['depth'], 'nominal'>;
  short: number;
  needed: number;
  beyond: number;
}

function blindReach(job: Job, chain: DepthChain, hole: number): Reach {
  const limit = shoulderLimit(job, hole);
  const needed = job.fullThread + roomBelowThread(chain);
  const short = Math.max(0, needed - limit);
  const reaches = short < 1e-9;
  const shoulder = reaches ? needed : limit;
  const fullThread = reaches
    ? job.fullThread
    : Math.min(job.fullThread, obtainableThread(limit, chain));
  const stop = Math.max(0, shoulder - chain.clearance * chain.pitch);
  return {
    depth: {
      shoulder,
      point: shoulder + coneLength(hole, job.pointAngle),
      tip: Math.min(tipDepth(fullThread, chain), stop),
      fullThread,
      roomInPitches: (shoulder - fullThread) / job.pitch,
    },
    short: reaches ? 0 : short,
    needed,
    beyond: 0,
  };
}

function throughReach(job: Job, chain: DepthChain, hole: number): Reach {
  const { hole: asked } = job.request;
  if (asked.kind !== 'through') throw new Error('not a through hole');
  const { thickness, clearBelow = Infinity } = asked;
  // A taper tap never runs through: the gauge says where it stops.
  const partial = job.taper !== null || job.fullThread < thickness - 1e-9;
  const wanted = partial
    ? Math.min(tipDepth(job.fullThread, chain), throughTip(thickness, chain))
    : throughTip(thickness, chain);
  const beyond = Math.max(0, wanted - thickness);
  const short = Math.max(0, beyond - clearBelow);
  const fits = short < 1e-9;
  const room = chain.chamferThreads * chain.pitch + chain.centre + EXIT_PITCHES * chain.pitch;
  const fullThread = fits
    ? job.fullThread
    : Math.max(0, Math.min(job.fullThread, thickness + clearBelow - room));
  const tip = fits ? wanted : Math.min(wanted, thickness + clearBelow);
  return {
    depth: {
      shoulder: thickness,
      point: thickness + coneLength(hole, job.pointAngle),
      tip,
      fullThread,
      roomInPitches: (tip - fullThread) / job.pitch,
    },
    short: fits ? 0 : short,
    needed: thickness,
    beyond,
  };
}

function reachOf(job: Job, chamfer: Chamfer, hole: number, mill: boolean) {
  const find = job.request.hole.kind === 'blind' ? blindReach : throughReach;
  // A thread mill keeps half to one pitch of room whatever drives the spindle: it does not overrun.
  const worst = find(job, chainOf(job, chamfer.threads.max, mill ? 1 : job.clearance), hole);
  const middle = find(job, chainOf(job, middleThreads(chamfer), mill ? 0.5 : job.clearance), hole);
  const { shoulder, tip, fullThread } = middle.depth;
  return { ...worst, depth: { ...worst.depth, nominal: { shoulder, tip, fullThread } } };
}

/** Torque of a sharp straight-flute tap with this chamfer, N·m, before style and shop factors. */
function straightTorque(job: Job, chamfer: Chamfer, fullThread: number): number {
  const { hole } = job.request;
  const { material, flutes } = job;
  const groove = { major: job.major, pitch: job.pitch, hole: job.cutHole };
  const parallel = peakTorque({
    ...groove,
    material,
    flutes,
    threads: middleThreads(chamfer),
    fullThread,
    thickness: hole.kind === 'through' ? hole.thickness : Infinity,
  });
  return job.taper ? parallel * taperFactor(groove, material, flutes, fullThread) : parallel;
}

export interface ShopScale {
  /** What the shop measured over what the model says. */
  factor: number;
  /** Half-width of the band that remains, as a factor. */
  band: number;
}

function torqueOf(
  job: Job,
  style: TapStyle,
  chamfer: Chamfer,
  fullThread: number,
  scale: ShopScale,
): TapChoice['torque'] {
  const { process, torque } = STYLES[style];
  if (process === 'mill') return { low: 0, expected: 0, high: 0 };
  const straight = straightTorque(job, chamfer, fullThread) * scale.factor;
  const expected = straight * torque.middle;
  if (process === 'cut') {
    return { low: expected / scale.band, expected, high: expected * scale.band };
  }
  return { low: straight * torque.low, expected, high: straight * torque.high * scale.band };
}

function chipsOf(
  job: Job,
  style: TapStyle,
  goes: ChipCourse,
  depth: TapChoice['depth'],
  hole: number,
): { chips: TapChoice['chips']; chipRoom: number } {
  const { hole: asked } = job.request;
  if (STYLES[style].process !== 'cut') {
    return { chips: { goes, fits: true, neededRoom: 0 }, chipRoom: 0 };
  }
  if (asked.kind === 'through') {
    if (goes === 'back') return { chips: { goes, fits: true, neededRoom: 0 }, chipRoom: 0 };
    const falls = asked.chipsMayFall !== false;
    const open = asked.clearBelow === undefined;
    const ahead = falls && (open ? true : 'check');
    const fits = goes === 'ahead' ? ahead : job.shortChips || 'check';
    return { chips: { goes, fits, neededRoom: 0 }, chipRoom: asked.clearBelow ?? Infinity };
  }
  const limit = shoulderLimit(job, hole);
  const stop = job.clearance * job.pitch;
  const room = Number.isFinite(limit) ? Math.max(0, limit - depth.tip) : stop;
  if (goes === 'ahead') {
    const groove = {
      major: job.major,
      pitch: job.pitch,
      hole: Math.max(hole, job.taper?.minor ?? 0),
    };
    const solid = grooveGeometry(groove).volumePerDepth * job.fullThread;
    const neededRoom = lengthForChips(solid, job.material.chips, hole, job.pointAngle);
    return { chips: { goes, fits: neededRoom <= room + 1e-9, neededRoom }, chipRoom: room };
  }
  const pocket = job.shortChips || goes === 'stays' ? DUST_POCKET * job.major : 0;
  if (goes === 'back') {
    return { chips: { goes, fits: true, neededRoom: pocket }, chipRoom: room };
  }
  const fits = job.shortChips && room >= pocket - 1e-9 ? true : 'check';
  return { chips: { goes, fits, neededRoom: pocket }, chipRoom: room };
}

/** Web of a tap, mm: as measured, else typical of its style. Common practice. */
export function webOf(job: Job, style: TapStyle): number {
  if (style !== 'form' && job.request.tapWeb !== undefined) return job.request.tapWeb;
  const minor = job.major - 1.0825 * job.pitch;
  return typicalWeb(style, job.major, minor, job.flutes);
}

/** The chamfer a style has in this hole when nothing stands in its way. Common practice. */
function usualChamferOf(job: Job, style: TapStyle): Chamfer {
  if (job.taper) return TAPER_CHAMFER;
  const name = job.request.hole.kind === 'through' ? 'plug' : 'semi-bottoming';
  return chamferOf(name, job.system, style === 'spiral-point');
}

/**
 * The model is good to some tens of per cent, the chamfers of one style differ by a few: a threshold may choose
 * between styles, never between chamfers. So each style has one load, whatever its chamfer. Source: `tap-chip-model`.
 */
function styleLoad(job: Job, style: TapStyle, scale: ShopScale): StyleLoad {
  const { expected } = torqueOf(job, style, usualChamferOf(job, style), job.fullThread, scale);
  const breaks = breakingTorque(webOf(job, style)).expected;
  const worn = expected * WORN;
  return { sharp: expected, worn, share: { sharp: expected / breaks, worn: worn / breaks } };
}

interface Made {
  style: TapStyle;
  chamfer: Chamfer;
  usual: StyleLoad;
  scale: ShopScale;
}

function build(job: Job, { style, chamfer, usual, scale }: Made): Candidate {
  const { process, lean } = STYLES[style];
  const drill = process === 'form' ? job.formDrill : job.drill;
  const hole = drill?.diameter ?? job.cutHole;
  const cutLean = job.thread.hand === 'right' ? lean : -lean;
  const goes = process === 'form' ? 'none' : chipCourse(cutLean, job.thread.hand);
  const reach = reachOf(job, chamfer, hole, process === 'mill');
  const torque = torqueOf(job, style, chamfer, reach.depth.fullThread, scale);
  const worn = torque.expected * WORN;
  const breaks = breakingTorque(webOf(job, style)).expected;
  const share = { sharp: torque.expected / breaks, worn: worn / breaks };
  const groove = { major: job.major, pitch: job.pitch, hole: job.cutHole };
  const toothLoad =
    process === 'cut'
      ? heaviestToothLoad(groove, middleThreads(chamfer), job.flutes, job.material) * scale.factor
      : 0;
  const { chips, chipRoom } = chipsOf(job, style, goes, reach.depth, hole);
  return {
    style,
    chamfer,
    drill,
    goes,
    ...reach,
    torque,
    worn,
    toothLoad,
    share,
    usual,
    asks: worn > usual.worn ? { sharp: torque.expected, worn, share } : usual,
    chips,
    chipRoom,
  };
}

/** Band that remains once the shop has measured its own torque: one tap, one hole. Common practice. */
const MEASURED_BAND = 1.25;

function shopScale(job: Job): ShopScale {
  const { measured, learned } = job.request;
  if (learned) return learned;
  if (!measured || measured.style === 'thread-mill') return { factor: 1, band: TORQUE_BAND };
  const chamfer = job.taper
    ? TAPER_CHAMFER
    : chamferOf(measured.chamfer, job.system, measured.style === 'spiral-point');
  const model =
    straightTorque(job, chamfer, job.fullThread) *
    STYLES[measured.style].torque.middle *
    (measured.worn ? WORN : 1);
  return { factor: measured.torque / model, band: MEASURED_BAND };
}

/** Styles and classes in the order a reader meets them; a taper chamfer is not made on form taps. */
const CUT_STYLES: TapStyle[] = ['spiral-point', 'spiral-flute', 'straight-flute'];
const FORM_CLASSES: ChamferClass[] = ['plug', 'semi-bottoming', 'bottoming'];

/** All candidates for a job, unjudged. Lengths mm, forces N, torques N·m. Sources: as the parts it calls. */
export function candidatesFor(job: Job): { candidates: Candidate[]; scale: ShopScale } {
  const scale = shopScale(job);
  const all = (style: TapStyle, chamfers: Chamfer[]) => {
    const usual = styleLoad(job, style, scale);
    return chamfers.map((chamfer) => build(job, { style, chamfer, usual, scale }));
  };
  const named = (style: TapStyle, names: readonly ChamferClass[]) =>
    all(
      style,
      names.map((name) => chamferOf(name, job.system, style === 'spiral-point')),
    );
  const taps = job.taper
    ? all('straight-flute', [TAPER_CHAMFER])
    : [
        ...CUT_STYLES.flatMap((style) => named(style, CHAMFER_CLASSES)),
        ...named('form', FORM_CLASSES),
      ];
  return { candidates: [...taps, ...all('thread-mill', [MILL_CHAMFER])], scale };
}

/** Whether a thread mill makes the hole as drawn, and what stands for and against it. */

import type { Job } from './job';
import { reason } from './judge';
import type { Reason } from './types';

/** What is judged: lengths mm. */
export interface MillFacts {
  cutter: { diameter: number; reach?: number };
  hole: number;
  growth: number;
  /** Depth of the lowest tooth's middle, and what the nose takes below the face. */
  deepest: number;
  nose: number;
  /** What stands below: the floor's full diameter, or the next thing under a through hole. */
  bottom: number;
}

/** Cutter diameters of reach from which the neck bends noticeably, and beyond which steel is left alone. Common practice. */
export const SLENDER = { caution: 3, most: 4 } as const;

/** Room below the full thread, pitches: the lead and half a tooth, and what is sure with any nose. Common practice. */
export const FLOOR_ROOM = { least: 0.75, sure: 1 } as const;

/** A growth of half the tolerance leaves the rest for everything else that varies. Common practice. */
export const GROWTH_SHARE = 0.5;

/** Pitch-diameter tolerance of the class, mm; undefined where there is none to hold. */
export function pitchTolerance({ limits }: Job): number | undefined {
  if (!limits) return undefined;
  const factor = limits.unit === 'in' ? 25.4 : 1;
  return (limits.pitch.max - limits.pitch.min) * factor;
}

function growthReasons(job: Job, growth: number): Reason[] {
  const tolerance = pitchTolerance(job);
  if (tolerance === undefined) return [];
  const numbers = { growth, tolerance, share: growth / tolerance };
  if (growth > tolerance) return [reason('mill-growth-over', numbers, 'derived')];
  const code = growth > GROWTH_SHARE * tolerance ? 'mill-growth-half' : 'mill-growth-inside';
  return [reason(code, numbers, 'derived')];
}

function reachReasons(job: Job, { cutter, nose, deepest }: MillFacts): Reason[] {
  const { diameter, reach } = cutter;
  if (reach !== undefined && reach < nose - 1e-9) {
    return [reason('mill-reach-short', { have: reach, needed: nose }, 'derived')];
  }
  const out = reach ?? deepest;
  const numbers = { reach: out, diameters: out / diameter };
  // Light metals, brass and plastics push a slender cutter less.
  const light = job.material.group === 'N' || job.material.group === 'O';
  if (!light && out > SLENDER.most * diameter + 1e-9) return [reason('mill-too-slender', numbers)];
  return out > SLENDER.caution * diameter + 1e-9 ? [reason('mill-slender', numbers)] : [];
}

function floorReasons(job: Job, { deepest, bottom }: MillFacts): Reason[] {
  const room = (bottom - deepest) / job.pitch;
  const numbers = { room: bottom - deepest, pitches: room };
  if (room < FLOOR_ROOM.least - 1e-9) {
    const obtainable = Math.max(0, bottom - FLOOR_ROOM.least * job.pitch);
    return [reason('mill-no-room', { ...numbers, obtainable }, 'derived')];
  }
  return room < FLOOR_ROOM.sure - 1e-9 ? [reason('mill-near-floor', numbers, 'derived')] : [];
}

function holeReasons({ window }: Job, hole: number): Reason[] {
  // Half of the last digit a drill's size is written with is no disagreement.
  const hair = 0.005;
  if (hole >= window.min - hair && hole <= window.max + hair) return [];
  const { min, max } = window;
  return [reason('mill-hole-outside', { hole, min, max }, 'derived')];
}

const NO = [
  'mill-growth-over',
  'mill-reach-short',
  'mill-too-slender',
  'mill-no-room',
  'mill-hole-outside',
];
const DOUBT = ['mill-growth-half', 'mill-slender', 'mill-near-floor'];

/** Verdict and reasons, what decides first. Sources: on each. */
export function judgeMill(
  job: Job,
  facts: MillFacts,
): { verdict: 'best' | 'works' | 'no'; reasons: Reason[] } {
  const reasons = [
    ...floorReasons(job, facts),
    ...reachReasons(job, facts),
    ...holeReasons(job, facts.hole),
    ...growthReasons(job, facts.growth),
  ];
  const has = (codes: readonly string[]) => reasons.some(({ code }) => codes.includes(code));
  return { verdict: has(NO) ? 'no' : has(DOUBT) ? 'works' : 'best', reasons };
}

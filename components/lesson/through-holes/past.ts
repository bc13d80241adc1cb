/** How far past the far side the tap goes, from the core's own rule: words, and what the section is drawn from. */

import { throughReach, type ThroughReach } from '../../../core/hole/through';
import type { HoleFacts } from '../../drawing/holeFacts';
import { PAST } from '../../words/en/through';
import type { Unit } from '../../words/format';
import { fill } from '../../words/template';

/** What the figure needs of a thread, read while the page is built. Lengths mm. */
export interface PastCase {
  designation: string;
  major: number;
  pitch: number;
  hole: number;
  drill: string;
}

/** mm and threads; null while what was typed is no such number. */
export interface PastTrial {
  threads: number | null;
  thickness: number | null;
  below: number | null;
}

export const CHAMFER_SPAN = { min: 1, max: 10, step: 0.5 } as const;

export function thicknessSpan({ major }: PastCase): { min: number; max: number } {
  return { min: 0.25 * major, max: 2 * major };
}

export function belowSpan({ major }: PastCase): { min: number; max: number } {
  return { min: 0, max: 2 * major };
}

type Ready = { [Key in keyof PastTrial]: number };

/** The trial, once every number is there. */
export function ready({ threads, thickness, below }: PastTrial): Ready | null {
  if (threads === null || thickness === null || below === null) return null;
  return { threads, thickness, below };
}

export function reachOf({ pitch }: PastCase, { threads, thickness, below }: Ready): ThroughReach {
  return throughReach(
    { thickness, clearBelow: below },
    { pitch, chamferThreads: threads, centre: 0 },
  );
}

/** What becomes of the tap, in a sentence. */
export function told(at: PastCase, trial: Ready, unit: Unit): string {
  const { past, short, fullThread } = reachOf(at, trial);
  const { below, thickness } = trial;
  const spare = below - past;
  const template = short === 0 ? PAST.clear : fullThread > 0 ? PAST.strikes : PAST.none;
  return fill(template, { past, short, below, spare, thickness, full: fullThread }, unit);
}

/** The section of the hole with the tap at the end of its travel, or in whatever it strikes. */
export function factsOf(at: PastCase, trial: Ready): HoleFacts {
  const { tip, short, fullThread } = reachOf(at, trial);
  const { threads, thickness, below } = trial;
  const nose = tip - short;
  const chamfer = threads * at.pitch;
  return {
    designation: at.designation,
    hand: 'right',
    through: true,
    major: at.major,
    hole: at.hole,
    pitch: at.pitch,
    drill: at.drill,
    fullThread,
    asked: thickness,
    short,
    tap: {
      style: 'spiral-point',
      body: Math.max(0, nose - chamfer),
      nose,
      tip: nose,
      chamfer,
      threads: { min: threads, max: threads },
      middleTip: nose,
    },
    shoulder: thickness,
    point: thickness,
    limit: null,
    clearBelow: below,
    strikes: 0,
  };
}

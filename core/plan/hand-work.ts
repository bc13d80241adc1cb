/** The hand set of a plan: what to turn, how hard, in which order, how long it takes. */

import { handTapping, type HandWork } from '../tap/hand';
import { WORN } from '../tap/styles';
import { byHand } from './by-hand';
import type { Job } from './job';
import type { Judged } from './judge';

/** Seconds for a turn, with its turn back and its oil. Common practice. */
const TURN = { min: 15, max: 25 } as const;

/**
 * How to tap this hole by hand, or undefined where a machine does, where no set will do and for pipe threads. Lengths
 * mm, forces N. Sources: as `handTapping`; the effort derived from the plan's torque.
 */
export function handWork(job: Job, best: Judged | undefined): HandWork | undefined {
  if (!byHand(job) || !best) return undefined;
  const { hole } = job.request;
  const shape =
    hole.kind === 'through' ? hole : { kind: 'blind' as const, shoulder: best.depth.shoulder };
  const { thread, fullThread, material } = job;
  const style = 'straight-flute';
  const set = 'same-diameter';
  const found = handTapping({ thread, fullThread, hole: shape, set, style, material });
  if (!found.ok) return undefined;
  const { arm, taps } = found.value;
  // Two hands on two arms share the torque.
  const effort = best.torque.expected / (2 * (arm.careful / 1000));
  const used = taps.filter(({ needed }) => needed).length;
  const turns = Math.ceil(best.depth.tip / job.pitch) * used;
  return {
    ...found.value,
    effort: { sharp: effort, worn: WORN * effort },
    turns,
    seconds: { min: turns * TURN.min, max: turns * TURN.max },
  };
}

/** What to say to a guessed depth: how it lies to what the thread needs. */

import { chamferOf } from '../../../core/chamfer/classes';
import { obtainableThread, STOP_CLEARANCE } from '../../../core/hole/depth';
import type { Unit } from '../../words';
import { EXPLORE } from '../../words/en/explore';
import { fill } from '../../words/template';
import { neededShoulder, type Trial } from './explore';

/** Guesses this near count as right, mm. */
const NEAR = 0.25;

export function guessVerdict(guess: number, trial: Trial, unit: Unit): string {
  const { thread, fullThread } = trial;
  if (fullThread === null) return '';
  const chamfer = chamferOf(trial.chamfer, thread.system);
  const by = guess - neededShoulder(thread, chamfer, fullThread).promised;
  if (Math.abs(by) <= NEAR) return fill(EXPLORE.guessClose, { guess }, unit);
  if (by > 0) return fill(EXPLORE.guessDeep, { guess, by }, unit);
  const obtainable = obtainableThread(guess, {
    pitch: thread.pitch,
    chamferThreads: chamfer.threads.max,
    centre: 0,
    clearance: STOP_CLEARANCE.synchronous,
  });
  return fill(EXPLORE.guessShallow, { guess, obtainable }, unit);
}

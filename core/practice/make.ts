/** Exercises and sheets of them from a seed: the same seed gives the same sheet for ever. */

import { seeded, type Draw } from '../seeded';
import { makeChoose } from './choose';
import { makeDiagnose } from './diagnose';
import { makeDrawing } from './drawing';
import { makeDrill } from './drill';
import { makeGauges } from './gauges';
import { makeOrder } from './order';
import { makeReach } from './reach';
import { makeError } from './sheet-error';
import { EXERCISE_KINDS, type Exercise, type ExerciseKind, type Level, type Made } from './types';

const MAKERS: Record<ExerciseKind, (draw: Draw, level: Level) => Made> = {
  reach: makeReach,
  drill: makeDrill,
  choose: makeChoose,
  error: makeError,
  order: makeOrder,
  gauges: makeGauges,
  diagnose: makeDiagnose,
  drawing: makeDrawing,
};

/** Draws that come to nothing are drawn again; no kind needs nearly so many. */
const PATIENCE = 400;

/** Keeps the kinds of one seed apart. */
const apart = (seed: number, kind: ExerciseKind, level: Level): number =>
  (Math.imul(seed | 0, 0x01000193) ^ (EXERCISE_KINDS.indexOf(kind) * 977 + level * 7919)) >>> 0;

/**
 * One exercise.
 *
 * @param seed any whole number; the same seed, kind and level give the same exercise. Lengths in it are mm.
 * @returns data only; the words are the page's. Source: each kind's own.
 */
export function makeExercise(kind: ExerciseKind, seed: number, level: Level): Exercise {
  const draw = seeded(apart(seed, kind, level));
  for (let attempt = 0; attempt < PATIENCE; attempt += 1) {
    const made = MAKERS[kind](draw, level);
    if (made) return { kind, seed, level, ...made };
  }
  throw new Error(`No exercise of the kind ${kind} came of seed ${seed}.`);
}

/**
 * A sheet: `count` exercises (1 to 40) that take the kinds in turn, each from a seed of its own. Source: as
 * `makeExercise`; no unit.
 */
export function makeSheet(
  seed: number,
  kinds: readonly ExerciseKind[],
  count: number,
  level: Level,
): Exercise[] {
  const chosen = kinds.length > 0 ? kinds : EXERCISE_KINDS;
  return Array.from({ length: Math.min(40, Math.max(1, count)) }, (_, at) =>
    makeExercise(chosen[at % chosen.length]!, seed * 64 + at, level),
  );
}

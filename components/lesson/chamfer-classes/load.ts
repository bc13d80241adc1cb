/** The charts of torque and tooth load against the length of a chamfer, from the core's own curve. */

import { CHAMFER_CLASSES } from '../../../core/chamfer/chamfer';
import { chamferOf } from '../../../core/chamfer/classes';
import {
  chamferCurve,
  chamferPoint,
  type ChamferCurveInput,
  type ChamferPoint,
} from '../../../core/load/chamfer-curve';
import type { MaterialId } from '../../../core/material/material';
import type { TorqueChartModel, TorqueLine } from '../../chart/torqueModel';
import { LOAD } from '../../words/en/chamfers';
import { CHAMFERS, MATERIALS_SHORT } from '../../words/en/names';
import { length, type Unit } from '../../words/format';
import { fill } from '../../words/template';

/** What the study needs of a hole and of the materials to try, read while the page is built. */
export interface LoadCase {
  thread: string;
  major: number;
  pitch: number;
  hole: number;
  drill: string;
  flutes: number;
  system: 'metric' | 'inch';
  materials: { id: MaterialId; kc11: number; mc: number; friction: number }[];
}

export interface LoadTrial {
  /** Threads; mm; null while what was typed is no such number. */
  threads: number | null;
  thickness: number | null;
  material: MaterialId;
}

export const THREADS = { min: 1, max: 10, step: 0.5 } as const;

/** From plate of a quarter diameter to work two diameters thick. */
export function thicknessLimits({ major }: LoadCase): { min: number; max: number } {
  return { min: 0.25 * major, max: 2 * major };
}

function inputFor(load: LoadCase, trial: LoadTrial, thickness: number): ChamferCurveInput {
  const material = load.materials.find(({ id }) => id === trial.material) ?? load.materials[0]!;
  const { major, pitch, hole, flutes } = load;
  const fullThread = trial.thickness ?? 2 * major;
  return { major, pitch, hole, flutes, material, fullThread, thickness, styleFactor: 1 };
}

function torqueLine(
  points: readonly ChamferPoint[],
  label: TorqueLine['label'],
  strong: boolean,
): TorqueLine {
  const data = points.map(({ threads, torque: { low, expected, high } }) => ({
    x: threads,
    low,
    mid: expected,
    high,
  }));
  return { label, strong, data };
}

/** One line alone needs no name: the axis has it. */
const UNNAMED = { short: '', long: '' } as const;

export interface Loaded {
  model: TorqueChartModel;
  sentence: string;
}

function sentenceOf(point: ChamferPoint, unit: Unit): string {
  const { threads, torque, toothLoad, engaged } = point;
  const numbers = {
    threads,
    load: toothLoad,
    torque: torque.expected,
    low: torque.low,
    high: torque.high,
  };
  // Where the two claims give the same torque, a range would read like a misprint.
  const claims = torque.high / torque.low < 1.02 ? LOAD.together : LOAD.apart;
  const told = fill(LOAD.sentence + claims, numbers, unit);
  return engaged < 0.995 ? `${told} ${fill(LOAD.thin, { engaged }, unit)}` : told;
}

/** The charts for a trial. Lengths mm, torque N·m, load N; words in the reader's unit. */
export function loadChart(load: LoadCase, trial: LoadTrial, unit: Unit): Loaded {
  const thickness = trial.thickness ?? 2 * load.major;
  const input = inputFor(load, trial, thickness);
  const curve = chamferCurve(input, THREADS.min, THREADS.max);
  const deep = chamferCurve({ ...input, thickness: Infinity }, THREADS.min, THREADS.max);
  const bend = thickness / load.pitch;
  const thin = curve.some(({ engaged }) => engaged < 0.995);
  const point = trial.threads === null ? null : chamferPoint(input, trial.threads);
  const sentence = point ? sentenceOf(point, unit) : '';
  const own = {
    short: LOAD.work,
    long: fill(LOAD.workLong, { thickness: length(thickness, unit) }, unit),
  };
  const thick = { short: LOAD.thickWork, long: LOAD.thickLong };
  const values = {
    thread: load.thread,
    hole: load.drill,
    material: MATERIALS_SHORT[trial.material],
    flutes: String(load.flutes),
    sentence,
  };
  return {
    sentence,
    model: {
      title: thin ? LOAD.titleThin : LOAD.title,
      subtitle: fill(LOAD.subtitle, values, unit),
      description: fill(LOAD.description, values, unit),
      torque: thin
        ? [torqueLine(curve, own, true), torqueLine(deep, thick, false)]
        : [torqueLine(curve, UNNAMED, true)],
      // How thick the work is does not change what one tooth takes.
      load: [
        {
          label: UNNAMED,
          strong: true,
          data: curve.map(({ threads, toothLoad }) => ({ x: threads, mid: toothLoad })),
        },
      ],
      classes: CHAMFER_CLASSES.map((name) => ({
        threads: chamferOf(name, load.system).threads,
        name: CHAMFERS[name],
      })),
      ...(thin && bend > THREADS.min && bend < THREADS.max && { thinFrom: bend }),
      ...(point && {
        here: { threads: point.threads, torque: point.torque.expected, load: point.toothLoad },
      }),
      unit,
    },
  };
}

/** Load on the heaviest tooth with each of two chamfers, N, and the share that is left. */
export function loadShare(
  load: LoadCase,
  trial: LoadTrial,
  from: number,
  to: number,
): { from: number; to: number; share: number } {
  const input = inputFor(load, trial, Infinity);
  const [before, after] = [from, to].map((threads) => chamferPoint(input, threads).toothLoad);
  return { from: before!, to: after!, share: after! / before! };
}

/** The chart of thread depth against hole depth for one thread, from the core's own chain of depths. */

import { CHAMFER_CLASSES, type Chamfer, type ChamferClass } from '../../../core/chamfer/chamfer';
import { chamferOf, middleThreads } from '../../../core/chamfer/classes';
import {
  obtainableThread,
  roomBelowThread,
  STOP_CLEARANCE,
  type DepthChain,
} from '../../../core/hole/depth';
import { inchToMm, mmToInch, roundUp } from '../../../core/units';
import type { DepthChartModel } from '../../chart/depthModel';
import { EXPLORE } from '../../words/en/explore';
import { CHAMFERS } from '../../words/en/names';
import { length, threadRange, type Unit } from '../../words/format';
import { fill } from '../../words/template';

/** A thread to try, read by the core while the page is built. mm. */
export interface ThreadOption {
  designation: string;
  diameter: number;
  pitch: number;
  system: 'metric' | 'inch';
}

export interface Trial {
  thread: ThreadOption;
  chamfer: ChamferClass;
  /** mm; null while what was typed is no such length. */
  fullThread: number | null;
  /** Deepest shoulder the drawing allows, mm; undefined when the drawing sets none. */
  limit?: number | null | undefined;
}

/** Least and most full thread worth trying, in diameters: less holds nothing, more is rarely asked. */
const DIAMETERS = { min: 0.5, max: 2.5 } as const;

export function threadLimitsFor({ diameter }: ThreadOption): { min: number; max: number } {
  return { min: DIAMETERS.min * diameter, max: DIAMETERS.max * diameter };
}

function chainFor({ pitch }: ThreadOption, chamferThreads: number): DepthChain {
  return { pitch, chamferThreads, centre: 0, clearance: STOP_CLEARANCE.synchronous };
}

/** Needed shoulder depth, mm: promised with the longest chamfer, and at the middle of the class. */
export function neededShoulder(
  thread: ThreadOption,
  chamfer: Chamfer,
  fullThread: number,
): { promised: number; middle: number } {
  const at = (threads: number) => fullThread + roomBelowThread(chainFor(thread, threads));
  return { promised: at(chamfer.threads.max), middle: at(middleThreads(chamfer)) };
}

/** Hole depths on the x axis, mm: from where every class leaves some thread, in steps of the reader's unit. */
export function depthSteps(thread: ThreadOption, unit: Unit): number[] {
  const room = (name: ChamferClass) =>
    roomBelowThread(chainFor(thread, chamferOf(name, thread.system).threads.max));
  const from = room('taper');
  const to = threadLimitsFor(thread).max + room('plug');
  const sizes = unit === 'mm' ? [0.5, 1, 2, 5, 10] : [0.025, 0.05, 0.1, 0.2, 0.5].map(inchToMm);
  const step = sizes.find((size) => (to - from) / size <= 7) ?? sizes[sizes.length - 1]!;
  const first = roundUp(from, step);
  return Array.from({ length: Math.ceil((to - first) / step) + 1 }, (_, i) => first + i * step);
}

/** Lengths the limit may take: the chart's own span. */
export function limitSpan(thread: ThreadOption): { min: number; max: number } {
  const steps = depthSteps(thread, 'mm');
  return { min: steps[0]!, max: steps[steps.length - 1]! };
}

/** What the axes span, in the reader's unit: fixed for a thread, so that only the point moves. */
export function chartSpan(
  thread: ThreadOption,
  unit: Unit,
): { x: [number, number]; y: [number, number] } {
  const show = (mm: number) => (unit === 'mm' ? mm : mmToInch(mm));
  const steps = depthSteps(thread, unit);
  const last = steps[steps.length - 1]!;
  const shortest = chamferOf('bottoming', thread.system);
  const top = obtainableThread(last, chainFor(thread, shortest.threads.min));
  const [first, second] = [steps[0]!, steps[1]!];
  // A little air on the left, for a guess that is too shallow.
  return { x: [show(Math.max(0, 2 * first - second)), show(last)], y: [0, show(top)] };
}

export interface Explored {
  model: DepthChartModel;
  /** What the chart says about this trial, for those who cannot see it and for everyone else. */
  sentence: string;
  fits: boolean;
}

function bandOf(thread: ThreadOption, name: ChamferClass, steps: readonly number[]) {
  const chamfer = chamferOf(name, thread.system);
  const at = (shoulder: number, threads: number) =>
    obtainableThread(shoulder, chainFor(thread, threads));
  return {
    threads: chamfer.threads,
    name: CHAMFERS[name],
    data: steps.map((x) => ({
      x,
      low: at(x, chamfer.threads.max),
      mid: at(x, middleThreads(chamfer)),
      high: at(x, chamfer.threads.min),
    })),
  };
}

function sentenceOf(trial: Trial, fullThread: number, unit: Unit): { text: string; fits: boolean } {
  const { thread, limit } = trial;
  const chamfer = chamferOf(trial.chamfer, thread.system);
  const { promised, middle } = neededShoulder(thread, chamfer, fullThread);
  const values = {
    threads: threadRange(chamfer.threads),
    fullThread,
    promised,
    middle,
    ...(typeof limit === 'number' && { limit }),
  };
  const needs = fill(EXPLORE.needs, values, unit);
  if (typeof limit !== 'number') return { text: needs, fits: true };
  if (promised <= limit + 1e-9) {
    return {
      text: `${needs} ${fill(EXPLORE.fits, { spare: limit - promised }, unit)}`,
      fits: true,
    };
  }
  const obtainable = obtainableThread(limit, chainFor(thread, chamfer.threads.max));
  const short = fill(EXPLORE.short, { short: promised - limit, obtainable }, unit);
  return { text: `${needs} ${short}`, fits: false };
}

/** What the chart shows for a trial. Lengths mm; words in the reader's unit. */
export function explore(trial: Trial, unit: Unit): Explored {
  const { thread, fullThread, limit } = trial;
  const steps = depthSteps(thread, unit);
  const chamfer = chamferOf(trial.chamfer, thread.system);
  const asked = fullThread ?? undefined;
  const told = asked === undefined ? null : sentenceOf(trial, asked, unit);
  const shoulder = asked === undefined ? 0 : neededShoulder(thread, chamfer, asked).promised;
  const values = { thread: thread.designation, sentence: told?.text ?? '' };
  return {
    sentence: told?.text ?? '',
    fits: told?.fits ?? false,
    model: {
      title: EXPLORE.title,
      subtitle: fill(EXPLORE.subtitle, values, unit),
      description: fill(EXPLORE.description, values, unit),
      unit,
      bands: CHAMFER_CLASSES.map((name) => bandOf(thread, name, steps)),
      chosen: CHAMFER_CLASSES.indexOf(trial.chamfer),
      ...(asked !== undefined && { asked, here: { shoulder, fullThread: asked } }),
      ...(typeof limit === 'number' && { limit }),
    },
  };
}

/** Labels of the chamfer classes for this thread's system: `2–3 threads`. */
export function chamferChoices(thread: ThreadOption): { value: ChamferClass; label: string }[] {
  return CHAMFER_CLASSES.map((value) => ({
    value,
    label: fill(
      EXPLORE.threads,
      { threads: threadRange(chamferOf(value, thread.system).threads) },
      'mm',
    ),
  }));
}

/** The reader's guess as words on the chart. */
export function guessLabel(mm: number, unit: Unit): string {
  return fill(EXPLORE.guessMark, { guess: length(mm, unit) }, unit);
}

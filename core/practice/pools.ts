/** What exercises are made of: threads and depths that a shop meets, the usual first. Common practice. */

import type { MaterialId } from '../material/material';
import { roundHalfUp } from '../units';
import type { Draw } from '../seeded';
import { readThread } from '../thread/read';
import type { Thread } from '../thread/thread';
import { oneOf } from './draw';
import type { Level } from './types';

const THREADS: Record<Level, readonly string[]> = {
  1: ['M6x1-6H', 'M8x1.25-6H', 'M10x1.5-6H', 'M12x1.75-6H', '1/4-20 UNC-2B', '3/8-16 UNC-2B'],
  2: ['M5x0.8-6H', 'M16x2-6H', 'M8x1-6H', '5/16-18 UNC-2B', '1/2-13 UNC-2B', 'M6x1-6H'],
  3: ['M4x0.7-6H', 'M20x2.5-6H', 'M12x1.25-6H', '#10-32 UNF-2B', '7/16-14 UNC-2B', '5/8-11 UNC-2B'],
};

export const MATERIALS: Record<Level, readonly MaterialId[]> = {
  1: ['steel-low', 'al-wrought', 'iron-grey'],
  2: ['steel-medium', 'stainless-austenitic', 'brass-free', 'al-wrought', 'iron-grey'],
  3: ['steel-alloy-30hrc', 'stainless-austenitic', 'titanium', 'iron-ductile', 'brass-free'],
};

/** A thread of the level, read. No unit. Source: common practice. */
export function drawThread(draw: Draw, level: Level): Thread {
  const read = readThread(oneOf(draw, THREADS[level]));
  if (!read.ok) throw new Error('A thread of the exercises cannot be read.');
  return read.value;
}

/** A depth that a drawing would give: whole mm, or sixteenths of an inch. mm; `diameters` above 0. Source: derived. */
export function drawnDepth(thread: Thread, diameters: number): number {
  const step = thread.system === 'unified' ? 25.4 / 16 : 1;
  return Math.max(step, roundHalfUp(thread.diameter * diameters, step));
}

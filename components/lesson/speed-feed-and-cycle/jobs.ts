/** The holes that the lesson on speed, feed and the cycle turns over. Lengths in mm. */

import type { MaterialId } from '../../../core/material/material';
import type { CycleQuestion } from '../../../core/plan/cycle-study';
import type { HoleRequest } from '../../../core/plan/types';
import { inchToMm } from '../../../core/units';

const SETUP = {
  substrate: 'hss',
  coating: 'plain',
  fluid: 'oil',
  drive: 'synchronous',
  mode: 'per-minute',
} as const;

/** A metric hole in a program that is written in inches. */
export const MANIFOLD = {
  ...SETUP,
  thread: 'M8x1.25-6H',
  fullThread: 20,
  material: 'al-cast',
  unit: 'in',
  rpm: 500,
} as const satisfies CycleQuestion;

/** The feed somebody wrote there, inches a minute. */
export const MANIFOLD_FEED = 25;

/** An inch hole in an inch program: the pitch never comes out even. */
export const HUB = {
  ...SETUP,
  thread: '1/2-13 UNC-2B',
  fullThread: inchToMm(1),
  material: 'steel-alloy',
  unit: 'in',
  rpm: 300,
} as const satisfies CycleQuestion;

/** A small hole in soft metal, where a chart promises a high speed. */
export const COVER = {
  ...SETUP,
  thread: 'M5x0.8-6H',
  fullThread: 8,
  material: 'al-wrought',
  unit: 'mm',
  /** rev/s². A spindle of an ordinary machining centre; invented, measure yours. */
  acceleration: 20,
} as const satisfies CycleQuestion;

/** For the reader to work out. */
export const LEVER = {
  ...SETUP,
  thread: 'M10x1.5-6H',
  fullThread: 15,
  material: 'steel-medium',
  unit: 'mm',
  rpm: 400,
} as const satisfies CycleQuestion;

/** Materials of the table of speeds, for one thread. */
export const SPEED_MATERIALS = [
  'al-wrought',
  'steel-low',
  'steel-medium',
  'iron-grey',
  'stainless-austenitic',
  'titanium',
] as const satisfies readonly MaterialId[];

/** One material, threads from small to large: what grows, torque or power? */
export const POWER_THREADS = ['M6x1-6H', 'M12x1.75-6H', 'M20x2.5-6H', 'M30x3.5-6H'] as const;

/** The large thread on the small machining centre, whose spindle gives 30 N·m at tapping speed. */
export const BEARING: HoleRequest = {
  thread: 'M30x3.5-6H',
  hole: { kind: 'through', thickness: 45 },
  material: 'steel-medium',
  spindle: { drive: 'synchronous', torque: 30 },
};
